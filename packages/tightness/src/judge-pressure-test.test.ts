import { type Quantity, quantity, STANDARD_ATMOSPHERE } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { judgePressureTest, type PressureTest, type PressureTestFinding } from './judge-pressure-test.ts'
import { pressureAtTemperature, pressureChange } from './pressure-change.ts'

const PSI = 6894.757293168
const ATM_PSI = 14.696
const fahrenheit = (t: number, u?: number) => quantity('temperature', (t + 459.67) / 1.8, u)
const psig = (p: number, u?: number) => quantity('gauge pressure', p * PSI, u)
const hours = (h: number) => quantity('duration', h * 3600)
const INSTRUMENTS = {
  pressure: quantity('pressure difference', PSI),
  temperature: quantity('temperature difference', 0.1 / 1.8),
}

// COMPUTED with (P + 14.696)·T2/T1 in another program, to the digits given: perfect gas, no published table.
const EXPECTED = [
  [150, 70, 60, 146.89],
  [150, 70, 80, 153.11],
  [150, 90, 60, 141.01],
  [150, 50, 85, 161.31],
  [300, 70, 60, 294.06],
  [300, 70, 80, 305.94],
  [300, 90, 60, 282.82],
  [300, 50, 85, 321.61],
  [450, 70, 60, 441.23],
  [450, 70, 80, 458.77],
  [450, 90, 60, 424.64],
  [450, 50, 85, 481.91],
  [500, 70, 60, 490.28],
  [500, 70, 80, 509.72],
  [500, 90, 60, 471.91],
  [500, 50, 85, 535.35],
  [600, 70, 60, 588.39],
  [600, 70, 80, 611.61],
  [600, 90, 60, 566.45],
  [600, 50, 85, 642.21],
] as const

const absolute = (p: number, t: number) => ({
  pressure: quantity('absolute pressure', (p + ATM_PSI) * PSI),
  temperature: fahrenheit(t),
})

test.each(EXPECTED)('[oracle] %d psig at %d °F is at %d °F %f psig', (p1, t1, t2, p2) => {
  const expected = pressureAtTemperature(absolute(p1, t1), fahrenheit(t2))
  expect(Math.abs(expected.si / PSI - ATM_PSI - p2)).toBeLessThan(0.006)
})

// UFGS 15182 (READ) corrects by 0.3 psi per °F whatever the pressure. That is a perfect gas at about 150 psig only.
test('[published] 0.3 psi per °F at 150 psig, to its digit', () => {
  const slope = pressureAtTemperature(absolute(150, 70), fahrenheit(71)).si / PSI - ATM_PSI - 150
  expect(Math.abs(slope - 0.3)).toBeLessThan(0.05)
})

test('[published] 0.3 psi per °F is half of what 300 psig changes: the specification disagrees with a perfect gas there', () => {
  const slope = pressureAtTemperature(absolute(300, 70), fahrenheit(71)).si / PSI - ATM_PSI - 300
  expect(slope).toBeCloseTo(0.594, 2)
})

const base: PressureTest = {
  start: { pressure: psig(300, 3 * PSI), temperature: fahrenheit(70, 0.4) },
  end: { pressure: psig(300, 3 * PSI), temperature: fahrenheit(70, 0.4) },
  duration: hours(24),
  atmosphere: STANDARD_ATMOSPHERE,
  sameInstruments: INSTRUMENTS,
}

function judged(change: Partial<PressureTest>): PressureTestFinding {
  const result = judgePressureTest({ ...base, ...change })
  if (!result.ok) throw new Error(result.error.field)
  return result.value
}

describe('the verdict', () => {
  test('[property] a night 30 °F colder explains a loss of 17 psi: no leak', () => {
    const finding = judged({
      start: { pressure: psig(300, 3 * PSI), temperature: fahrenheit(90, 0.4) },
      end: { pressure: psig(283, 3 * PSI), temperature: fahrenheit(60, 0.4) },
    })
    expect(finding.kind).toBe('no-leak-seen')
  })

  test('[property] the same loss at one temperature is a leak', () => {
    const finding = judged({ end: { pressure: psig(283, 3 * PSI), temperature: fahrenheit(70, 0.4) } })
    expect(finding.kind).toBe('leak')
    expect(finding.change.si / PSI).toBeCloseTo(-17, 6)
  })

  test('[property] a gain beyond the instruments says that the temperature was not that of the gas', () => {
    expect(judged({ end: { pressure: psig(310, 3 * PSI), temperature: fahrenheit(70, 0.4) } }).kind).toBe('not-settled')
  })

  test('[property] at the smallest detectable loss a leak is called, at a quarter of it none', () => {
    const { detectable } = judged({})
    const lost = (share: number) => ({
      pressure: quantity('gauge pressure', 300 * PSI - share * detectable.si, 3 * PSI),
      temperature: fahrenheit(70, 0.4),
    })
    expect(judged({ end: lost(1) }).kind).toBe('leak')
    expect(judged({ end: lost(0.25) }).kind).toBe('no-leak-seen')
  })

  test('[property] one gauge for both ends finds a smaller leak than two', () => {
    const { sameInstruments: _, ...changed } = base
    const two = judgePressureTest(changed)
    expect(two.ok && two.value.detectable.si).toBeGreaterThan(3 * judged({}).detectable.si)
  })

  test('[property] an atmosphere read again makes the test finer, and its change is allowed for', () => {
    const lower = quantity('absolute pressure', 98_325)
    const finding = judged({
      atmosphereAtEnd: lower,
      end: { pressure: quantity('gauge pressure', 300 * PSI + 3000, 3 * PSI), temperature: fahrenheit(70, 0.4) },
    })
    expect(finding.change.si).toBeCloseTo(0, 3)
    expect(finding.detectable.si).toBeLessThan(judged({}).detectable.si)
  })

  test('[property] half an hour is said to be less than a full test', () => {
    const texts = (f: PressureTestFinding) => f.reasons.map((r) => r.statement.template).join('|')
    expect(texts(judged({ duration: hours(0.5) }))).toContain('of a full test')
    expect(texts(judged({}))).not.toContain('of a full test')
  })

  test('[property] of 2000 tight tests few are called leaking, and of as many with a detectable leak few are missed', () => {
    let state = 99
    const uniform = () => {
      state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
      return (state + 0.5) / 2 ** 32
    }
    const normal = () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform())
    const { change, detectable } = pressureTestWithoutCommonErrors(0)
    const u = change.u ?? 0
    const calls = (loss: number) =>
      Array.from({ length: 2000 }, () => pressureTestWithoutCommonErrors(normal() * u - loss).kind).filter(
        (k) => k === 'leak',
      ).length
    expect(calls(0)).toBeLessThan(0.07 * 2000)
    expect(calls(detectable.si)).toBeGreaterThan(0.93 * 2000)
  })
})

/** The test with its end moved by an error as large as it says it could be. */
function pressureTestWithoutCommonErrors(error_Pa: number): PressureTestFinding {
  return judged({ end: { pressure: quantity('gauge pressure', 300 * PSI + error_Pa), temperature: fahrenheit(70) } })
}

describe('hostile readings', () => {
  const at = (pressure: Quantity<'gauge pressure'>, temperature: Quantity<'temperature'>) => ({ pressure, temperature })
  test.each<[string, Partial<PressureTest>, string]>([
    ['no pressure', { start: at(psig(Number.NaN), fahrenheit(70)) }, 'test pressure at the start'],
    ['a vacuum', { end: at(psig(-12), fahrenheit(70)) }, 'test pressure at the end'],
    ['an oven', { end: at(psig(300), fahrenheit(400)) }, 'temperature at the end'],
    ['no temperature', { start: at(psig(300), fahrenheit(Number.NaN)) }, 'temperature at the start'],
    ['no time', { duration: hours(0) }, 'duration of the test'],
    ['no atmosphere', { atmosphere: quantity('absolute pressure', 0) }, 'atmospheric pressure at the start'],
    [
      'an uncertainty that is no number',
      { start: at(psig(300, Number.NaN), fahrenheit(70)) },
      'uncertainty of the readings',
    ],
    [
      'a display without a step',
      { sameInstruments: { ...INSTRUMENTS, pressure: quantity('pressure difference', Number.NaN) } },
      'resolution of the gauge',
    ],
  ])('[limit] %s', (_, change, field) => {
    expect(judgePressureTest({ ...base, ...change })).toMatchObject({ ok: false, error: { field } })
  })
})

test('[property] a perfect correction leaves no change, up or down in temperature', () => {
  for (const t of [-20, 40, 70, 110]) {
    const start = absolute(400, 70)
    const end = { pressure: pressureAtTemperature(start, fahrenheit(t)), temperature: fahrenheit(t) }
    expect(Math.abs(pressureChange(start, end).si)).toBeLessThan(1e-6)
  }
})
