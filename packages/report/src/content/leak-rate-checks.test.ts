import { INCH_POUND, render, say } from '@chargewright/quantity'
import { type Fact, fold, type SystemStatement, type VisitEvent } from '@chargewright/visit'
import { expect, test } from 'vitest'
import { leakRateChecks } from './leak-rate-checks.ts'

const visitOf = (day: string, facts: SystemStatement, ...masses: readonly string[]) => ({
  id: day,
  events: [{ kind: 'system-described', facts } as const, ...masses.map(added)].map(
    (fact, i): VisitEvent => ({ id: `${day}-${i}`, at: `${day}T10:00:00Z`, ...fact }),
  ),
})
const added = (mass: string): Fact => ({
  kind: 'refrigerant-moved',
  direction: 'into-system',
  mass,
  phase: 'vapour',
  port: 'suction',
  compressor: 'running',
})
const plate: SystemStatement = { refrigerant: 'R-22', nameplateCharge: '60 lb' }
const visit = visitOf('2026-02-03', plate, '5 lb')
const checksOf = (of: typeof visit, ...visits: readonly (typeof visit)[]) =>
  leakRateChecks(fold(of), visits, 'commercial-refrigeration')

// The worked example of the ledger: 5 lb of 60 lb after 120 days are 25.3472 % a year, over the 20 % of commercial refrigeration.
test('[property] after an addition the leak rate is told with what is due, counting the visits before', () => {
  const before = visitOf('2025-10-06', plate, '3 lb')
  const [law] = checksOf(visit, before, visit)
  expect(law?.verdict).toEqual(say`over the threshold`)
  expect(render(law!.title, INCH_POUND)).toMatch(/^Leak rate, /)
  expect(render(law!.sentence, INCH_POUND)).toContain('25.3')
  expect(law?.reasons.map(({ statement }) => render(statement, INCH_POUND)).join()).toContain(': by 2026-03-05')
})

test('[limit] nothing was added: nothing is told; what is missing for a rate is named', () => {
  const none = visitOf('2026-02-03', plate)
  expect(checksOf(none, none)).toEqual([])
  const unknown = visitOf('2026-02-03', { refrigerant: 'R-22' }, '1 lb')
  const [check] = checksOf(unknown, unknown)
  expect(check?.verdict).toEqual(say`not judged`)
  expect(render(check!.sentence, INCH_POUND)).toContain('Full charge: missing')
})
