import { type Fact, fold, type SystemStatement } from '@chargewright/visit'
import { expect, test } from 'vitest'
import { weighInOfVisit } from './weigh-in-of-visit.ts'

const at = '2026-02-03T10:00:00Z'
const visitOf = (facts: SystemStatement, ...others: readonly Fact[]) =>
  fold({
    id: 'v',
    events: [{ kind: 'system-described', facts } as const, ...others].map((fact, i) => ({ id: `e${i}`, at, ...fact })),
  })
const plate: SystemStatement = { refrigerant: 'R-410A', meteringDevice: 'thermostatic', nameplateCharge: '6 lb' }
const evacuated: Fact = { kind: 'observation', what: 'charge-state', answer: 'evacuated' }
const LB = 0.45359237

function answer(...given: Parameters<typeof visitOf>) {
  const found = weighInOfVisit(visitOf(...given))
  if (!found.ok) throw new Error(JSON.stringify(found.error))
  return found.value
}

test('[property] a system that still holds a charge is asked about as it will be: emptying is part of it', () => {
  const charged = answer(plate)
  expect(charged.stillCharged).toBe(true)
  expect(charged.toGoIn?.si).toBeCloseTo(6 * LB, 9)
  expect(charged.procedure.map(({ id }) => id)).toContain('empty')
  const empty = answer(plate, evacuated)
  expect(empty.stillCharged).toBe(false)
  expect(empty.procedure.map(({ id }) => id)).not.toContain('empty')
})

test('[property] what went in is counted off, and what was weighed before it is emptied is not', () => {
  const moved: Fact = {
    kind: 'refrigerant-moved',
    direction: 'into-system',
    mass: '2 lb',
    phase: 'liquid',
    port: 'liquid-line',
    compressor: 'stopped',
  }
  const rested: Fact = { kind: 'wait', purpose: 'equalise', duration: '10 min' }
  expect(answer(plate, evacuated, moved, rested).toGoIn?.si).toBeCloseTo(4 * LB, 9)
  expect(answer(plate, moved, rested).toGoIn?.si).toBeCloseTo(6 * LB, 9)
})

test('[property] added parts that the visit states are filled too', () => {
  const part = { name: 'accumulator', volume: '90 in³', liquidPercent: 100 }
  const [without, full] = [answer(plate, evacuated), answer({ ...plate, accessories: [part] }, evacuated)]
  // 90 in³ of liquid R-410A at 100 °F, about 0.97 kg/L (COMPUTED from the equation of state).
  expect(full.toGoIn!.si - without.toGoIn!.si).toBeGreaterThan(1.3)
  expect(full.toGoIn!.si - without.toGoIn!.si).toBeLessThan(1.6)
})

test('[limit] one whose volume cannot be read is left out and told', () => {
  const part = { name: 'accumulator', volume: 'large', liquidPercent: 10 }
  const { toGoIn, assessment } = answer({ ...plate, accessories: [part] }, evacuated)
  expect(toGoIn?.si).toBeCloseTo(6 * LB, 9)
  expect(assessment.problems).toMatchObject([{ problem: { field: 'accumulator, inside volume', value: 'large' } }])
})

test('[limit] what is missing for it is named', () => {
  const fields = (facts: SystemStatement) => {
    const found = weighInOfVisit(visitOf(facts, evacuated))
    return found.ok ? [] : found.error.map(({ field }) => field)
  }
  expect(fields({})).toEqual(['refrigerant'])
  expect(fields({ refrigerant: 'R-410A', meteringDevice: 'capillary' })).toEqual(['Nameplate charge'])
})
