import { INCH_POUND, kelvin, quantity, render } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { HOLD_CRITERIA } from './hold-criterion.ts'
import { type EvacuationFinding, type EvacuationOptions, judgeEvacuation } from './judge-evacuation.ts'
import { type PressureLog, pressureLog } from './pressure-log.ts'
import { vacuumUnits } from './vacuum-units.ts'

const MICRON = 101_325 / 760_000
const UNITS = vacuumUnits(INCH_POUND)

/** One reading every `step` minutes, in micron, as a gauge shows them. */
function log(step: number, microns: readonly number[]): PressureLog {
  const result = pressureLog(microns.map((p, i) => ({ elapsed_s: 60 * step * i, pressure_Pa: p * MICRON })))
  if (!result.ok) throw new Error(result.error.field)
  return result.value
}

function judged(readings: PressureLog, options?: EvacuationOptions): EvacuationFinding {
  const result = judgeEvacuation(readings, { resolution: quantity('absolute pressure', MICRON), ...options })
  if (!result.ok) throw new Error(result.error.field)
  return result.value
}

const every = (step: number, minutes: number, p: (t: number) => number) =>
  log(
    step,
    Array.from({ length: minutes / step + 1 }, (_, i) => Math.round(p(step * i) + [0, 1, -1, 0, 1, 0, -1][i % 7]!)),
  )

// UFGS 15182 (READ): evacuate to 300 micron, close, wait one hour; at most 500 micron, else again.
describe('the published criterion, 300 micron to at most 500 in an hour', () => {
  test.each([
    [300, 500, 'pass'],
    [300, 501, 'not-held'],
    [301, 400, 'not-deep-enough'],
  ])('[published] shut off at %d, after an hour %d: %s', (first, last, kind) => {
    expect(judged(log(60, [first, last])).kind).toBe(kind)
  })

  test('[published] half an hour is not an hour', () => {
    expect(judged(log(30, [280, 320])).kind).toBe('keep-watching')
  })

  test('[property] above 500 on the way is not held, whatever the end', () => {
    expect(judged(log(20, [280, 520, 480, 470])).kind).toBe('not-held')
  })

  test('[property] what happens after the hour does not count', () => {
    expect(judged(log(30, [280, 330, 360, 700])).kind).toBe('pass')
  })

  test('[property] between two readings the hour is on the straight line', () => {
    expect(judged(log(40, [280, 380, 480])).kind).toBe('pass')
    expect(judged(log(50, [280, 480, 700])).kind).toBe('not-held')
  })
})

test('[property] the habit of ten minutes says itself to be one', () => {
  const finding = judged(log(10, [240, 400]), { criterion: HOLD_CRITERIA.habit })
  expect(finding.kind).toBe('pass')
  expect(finding.reasons[0]!.source).toContain('common practice')
})

describe('the cause', () => {
  test('[property] a straight rise is a leak, and the leak is to be found', () => {
    const finding = judged(every(2, 60, (t) => 250 + 10 * t))
    expect(finding).toMatchObject({ kind: 'not-held', cause: 'leak' })
    expect(finding.steps.map((s) => render(s, UNITS)).join(' ')).toContain('find the leak and repair it')
    expect(render(finding.reasons[1]!.statement, UNITS)).toMatch(/would make it 8[45]\d ± \d+ micron after 60 min/)
  })

  test('[property] a rise that levels is moisture, and is dried out', () => {
    const finding = judged(every(2, 60, (t) => 250 + 900 * (1 - Math.exp(-t / 8))))
    expect(finding).toMatchObject({ kind: 'not-held', cause: 'moisture' })
    expect(finding.steps.map((s) => render(s, UNITS)).join(' ')).toContain('take up the moisture')
  })

  test('[property] both at once are both named', () => {
    const finding = judged(every(2, 60, (t) => 250 + 8 * t + 300 * (1 - Math.exp(-t / 6))))
    expect(finding).toMatchObject({ kind: 'not-held', cause: 'leak-and-moisture' })
  })

  test('[property] a leak that passes is named all the same', () => {
    const finding = judged(every(2, 60, (t) => 200 + 3 * t))
    expect(finding).toMatchObject({ kind: 'pass', cause: 'leak' })
    expect(render(finding.steps[0]!, UNITS)).toContain('rises steadily')
  })

  test('[property] after twenty minutes a leak that will break the criterion need not be watched on, a lesser one is', () => {
    const steps = (rate: number) => {
      const finding = judged(every(2, 20, (t) => 250 + rate * t))
      expect(finding).toMatchObject({ kind: 'keep-watching', cause: 'leak' })
      return render(finding.steps[0]!, UNITS)
    }
    expect(steps(8)).toContain('No need to wait')
    expect(steps(2)).toContain('Leave it shut off')
  })

  test('[property] a dry, tight system is tight, and says how small a leak would have shown', () => {
    const finding = judged(every(2, 60, () => 250))
    expect(finding).toMatchObject({ kind: 'pass', cause: 'tight' })
    expect(render(finding.reasons[1]!.statement, UNITS)).toMatch(
      /a leak to 2[5-9]\d micron after 60 min would have shown/,
    )
  })

  test('[property] too few readings tell no cause', () => {
    const finding = judged(log(20, [250, 500, 700, 900]))
    expect(finding).toMatchObject({ kind: 'not-held', cause: 'cannot-tell' })
    expect(finding.fit).toBeUndefined()
    expect(render(finding.reasons[1]!.statement, UNITS)).toContain('Fewer than 8 readings')
  })

  test('[property] a pressure that falls is no test, and no pass', () => {
    expect(judged(every(2, 60, (t) => 290 - 2 * t))).toMatchObject({ kind: 'falling', cause: 'falling' })
  })
})

describe('the coldest spot', () => {
  // At −20 °F the vapour pressure over ice is 319.9 micron, at 32 °F 4 584.5 (COMPUTED): below 500 ice cannot show.
  test.each([
    [-20, 'too-cold'],
    [32, 'pass'],
  ])('[oracle] %d °F: %s', (t, kind) => {
    const coldestSpot = kelvin((t + 459.67) / 1.8)
    expect(
      judged(
        every(2, 60, () => 250),
        { coldestSpot },
      ).kind,
    ).toBe(kind)
  })

  test('[limit] a coldest spot that is no number is a problem', () => {
    expect(judgeEvacuation(log(60, [250, 260]), { coldestSpot: kelvin(Number.NaN) })).toMatchObject({ ok: false })
  })

  test('[limit] a resolution that is no number is a problem', () => {
    const resolution = quantity('absolute pressure', Number.NaN)
    expect(judgeEvacuation(log(60, [250, 260]), { resolution })).toMatchObject({ ok: false })
  })
})

test.each([
  ['start', Number.NaN],
  ['limit', Number.NaN],
  ['limit', 20],
  ['hold', 0],
] as const)('[limit] a criterion whose %s is %f is refused', (what, si) => {
  const specification = HOLD_CRITERIA.specification
  const criterion = { ...specification, [what]: { ...specification[what], si } }
  expect(judgeEvacuation(log(60, [250, 260]), { criterion })).toMatchObject({
    ok: false,
    error: { kind: 'out-of-range' },
  })
})
