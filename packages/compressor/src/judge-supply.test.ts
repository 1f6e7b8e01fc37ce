import { INCH_POUND, quantity, render } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { deratingFactor } from './derating-factor.ts'
import { judgeSupply, type SupplyFinding } from './judge-supply.ts'
import { voltageUnbalance } from './voltage-unbalance.ts'

const volts = (v: number, u?: number) => quantity('voltage', v, u)
const judged = (voltages: readonly number[], nominal: number, u?: number): SupplyFinding => {
  const finding = judgeSupply(
    voltages.map((v) => volts(v, u)),
    volts(nominal),
  )
  if (!finding.ok) throw new Error(finding.error.field)
  return finding.value
}

describe('unbalance by the NEMA definition', () => {
  // READ, an engineers' forum that quotes NEMA MG-1: 462, 463 and 455 V, mean 460, printed 1.1 %.
  test('[published] 462, 463, 455 V: 1.1 %', () => {
    const { value } = voltageUnbalance([volts(462), volts(463), volts(455)])
    expect(Math.abs(value - 0.011)).toBeLessThan(0.0005)
    expect(value).toBeCloseTo(5 / 460, 9)
  })

  // READ, a monitoring trade page: 480, 476 and 472 V give 0.84 % by NEMA, and 1.68 % as highest less lowest.
  test('[published] 480, 476, 472 V: 0.84 %, not the 1.68 % of highest less lowest', () => {
    expect(Math.abs(voltageUnbalance([volts(480), volts(476), volts(472)]).value - 0.0084)).toBeLessThan(0.00005)
  })

  test('[property] neither the order of the phases nor the level of the voltage matters', () => {
    const { value } = voltageUnbalance([volts(462), volts(463), volts(455)])
    expect(voltageUnbalance([volts(455), volts(462), volts(463)]).value).toBeCloseTo(value, 12)
    expect(voltageUnbalance([volts(231), volts(231.5), volts(227.5)]).value).toBeCloseTo(value, 12)
  })

  test('[property] a voltmeter that is 1 V off makes the unbalance uncertain by up to 1 V in the mean', () => {
    const { u } = voltageUnbalance([volts(462, 1), volts(463, 1), volts(455, 1)])
    expect(u * 460).toBeGreaterThan(0.6)
    expect(u * 460).toBeLessThan(1)
  })
})

describe('derating', () => {
  // NEMA MG-1, derating curve, REMEMBERED; 0.90 at 3 % READ in a power-quality page. The curve is read to 0.02.
  test.each([
    [0, 1],
    [0.01, 1],
    [0.02, 0.95],
    [0.03, 0.9],
    [0.04, 0.82],
    [0.05, 0.75],
  ])('[published] %f: %f', (unbalance, factor) => {
    expect(Math.abs(deratingFactor(unbalance)! - factor)).toBeLessThan(0.02)
  })

  test('[limit] above 5 % there is none', () => {
    expect(deratingFactor(0.0501)).toBeUndefined()
    expect(deratingFactor(Number.NaN)).toBeUndefined()
  })
})

describe('the verdict', () => {
  test.each<[string, readonly number[], number, SupplyFinding['kind']]>([
    ['three even phases', [460, 460, 460], 460, 'sound'],
    ['1 % is little', [462, 458, 460], 460, 'sound'],
    ['1.1 % is doubtful', [462, 463, 455], 460, 'doubtful'],
    ['4.9 % is doubtful', [482.5, 448.8, 448.7], 460, 'doubtful'],
    ['5.1 % is a stop', [483.5, 448.3, 448.2], 460, 'stop'],
    ['a phase that is lost is a stop', [460, 230, 230], 460, 'stop'],
    ['even phases that are low are doubtful', [410, 410, 410], 460, 'doubtful'],
    ['single phase, 10 % low, is sound', [207], 230, 'sound'],
    ['single phase, 11 % low, is doubtful', [204.7], 230, 'doubtful'],
    ['single phase, 11 % high, is doubtful', [255.3], 230, 'doubtful'],
  ])('[property] %s', (_, voltages, nominal, kind) => {
    expect(judged(voltages, nominal).kind).toBe(kind)
  })

  test('[property] a stop is given to the meter: 4.9 % with a meter of 1 % is no licence to run', () => {
    expect(judged([482.5, 448.8, 448.7], 460, 2.7).kind).toBe('stop')
  })

  test('[property] a stop says to lock out, and why', () => {
    const { steps, reasons } = judged([483.5, 448.3, 448.2], 460)
    expect(render(steps[0]!, INCH_POUND)).toContain('lock it out')
    expect(reasons.map((r) => render(r.statement, INCH_POUND)).join('|')).toContain('Voltage unbalance 5.1 ± 0 %')
  })
})

test('[property] a doubtful unbalance says how far the motor may be loaded', () => {
  expect(
    judged([480, 450, 452], 460)
      .steps.map((s) => render(s, INCH_POUND))
      .join('|'),
  ).toMatch(/load the motor to 8\d(\.\d)? % at most/)
})

describe('hostile voltages', () => {
  test.each<[string, readonly number[], number]>([
    ['none', [], 230],
    ['two', [230, 230], 230],
    ['no number', [Number.NaN], 230],
    ['nothing', [0, 460, 460], 460],
    ['a nominal of nothing', [230], 0],
  ])('[limit] %s', (_, voltages, nominal) => {
    expect(
      judgeSupply(
        voltages.map((v) => volts(v)),
        volts(nominal),
      ).ok,
    ).toBe(false)
  })

  test('[limit] an uncertainty that is no number', () => {
    expect(judgeSupply([volts(230, Number.NaN)], volts(230)).ok).toBe(false)
  })
})
