import { INCH_POUND } from '@chargewright/quantity'
import { describe, expect, test } from 'vitest'
import { pressureTest } from './pressure-test.ts'
import { pressureTestJson } from './pressure-test-json.ts'
import { pressureTestText } from './pressure-test-text.ts'

describe('pressure-test', () => {
  const START = '0 h, 300 psig, 90 degF'
  const STEPS = { gaugeStep: '1 psi', thermometerStep: '0.1 degF' }

  function found(...args: Parameters<typeof pressureTest>) {
    const answer = pressureTest(...args)
    if (!answer.ok) throw new Error(JSON.stringify(answer.error))
    return answer.value
  }

  // COMPUTED by the gas law: (300 + 14.696) psia · (60 + 459.67)/(90 + 459.67) = 297.5 psia, 282.8 psig.
  test('[oracle] what the cold took is not a leak; ten psi more are', () => {
    const kept = found([START, '12 h, 282.8 psig, 60 degF'], STEPS).last
    expect(kept.kind).toBe('no-leak-seen')
    expect(Math.abs(kept.change.si)).toBeLessThan(700)
    expect(found([START, '12 h, 272.8 psig, 60 degF'], STEPS).last.kind).toBe('leak')
  })

  test('[property] each later reading is held against the first, and the last one is the finding', () => {
    const answer = found([START, '1 h, 300 psig, 90 degF', '12 h, 250 psig, 60 degF'], STEPS)
    expect(answer.findings.map(({ finding }) => finding.kind)).toEqual(['no-leak-seen', 'leak'])
    expect(pressureTestText(answer, INCH_POUND, 80)).toMatch(/^leak .*After 60 min: No leak seen/s)
    expect(pressureTestJson(answer, INCH_POUND)).toMatchObject({
      kind: 'leak',
      readings: [{ after_s: 3600, kind: 'no-leak-seen' }, { after_s: 43_200 }],
    })
  })

  test.each([
    [[], 'missing', 'readings'],
    [[START], 'missing', 'readings'],
    [[START, '12 h, 283 psig'], 'unreadable', 'reading 2'],
    [[START, '12 h, 283, 60 degF'], 'unreadable', 'reading 2, pressure'],
    [[START, START], 'out-of-range', 'duration of the test'],
  ])('[limit] readings %j are refused', (readings, kind, field) => {
    expect(pressureTest(readings, {})).toMatchObject({ error: [{ kind, field }] })
  })

  test('[limit] the step of one instrument alone is not enough', () => {
    const readings = [START, '12 h, 283 psig, 60 degF']
    expect(pressureTest(readings, { gaugeStep: '1 psi' })).toMatchObject({ error: [{ field: 'thermometer-step' }] })
  })
})
