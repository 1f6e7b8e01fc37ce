import {
  type Addition,
  type ApplianceUse,
  type Coverage,
  judgeLeakRate,
  leakRateAfter,
  leakRepairCoverage,
  repairClocks,
} from '@chargewright/ledger'
import { fail, inQuadrature, ok, type Problem, type Quantity, quantity } from '@chargewright/quantity'
import { fold } from '@chargewright/visit'
import type { LeakRateAnswer, Tasks, VisitEvents } from './protocol.ts'

const METHODS = ['annualizing', 'rolling'] as const

/** The leak rate of a system after its last addition, from what its visits weighed in and out. */
export const leakRateOf: Tasks['leakRate'] = (visits, use) => {
  const { facts, figures } = fold({ id: 'system', events: visits.flatMap(({ events }) => events) }).system
  const fullCharge = figures.nameplateCharge?.quantity as Quantity<'mass'> | undefined
  if (!fullCharge) return fail(missing('Full charge', 'the nameplate charge'))
  if (facts.refrigerant === undefined) return fail(missing('Refrigerant', 'the one on the nameplate'))
  const additions = visits.flatMap(additionOf).toSorted((a, b) => a.on.localeCompare(b.on))
  const on = additions.at(-1)?.on.slice(0, 10)
  if (on === undefined) return fail(missing('Additions', 'a visit in which more went in than came out'))
  const coverage = leakRepairCoverage({ refrigerant: facts.refrigerant, fullCharge }, on)
  if (!coverage.ok) return coverage
  const covering = coverage.value.filter(({ verdict }) => verdict !== 'does-not-apply')
  return ok({
    on,
    fullCharge,
    additions,
    laws: covering.map((each) => underLaw(each, { fullCharge, additions, on }, use)),
  })
}

/** Net of a visit: what came out of the system and went back leaked nowhere. */
function additionOf(events: VisitEvents): readonly Addition[] {
  const { moves } = fold(events)
  const si = moves.reduce((sum, { fact, mass }) => sum + (fact.direction === 'into-system' ? mass.si : -mass.si), 0)
  const last = moves.at(-1)
  return last && si > 0
    ? [{ on: last.at, mass: quantity('mass', si, inQuadrature(...moves.map(({ mass }) => mass.u))) }]
    : []
}

function underLaw(
  coverage: Coverage,
  history: Pick<LeakRateAnswer, 'fullCharge' | 'additions' | 'on'>,
  use: ApplianceUse,
): LeakRateAnswer['laws'][number] {
  const { law } = coverage
  const rates = METHODS.map((method) => {
    const rate = leakRateAfter(history, method, law)
    return rate.ok ? ok(judgeLeakRate(rate.value, law, use)) : rate
  })
  const isOver = rates.some((rate) => rate.ok && rate.value.over)
  const clocks = isOver ? repairClocks({ use, fullCharge: history.fullCharge, exceededOn: history.on }, law) : ok([])
  return { coverage, rates, clocks: clocks.ok ? clocks.value : [] }
}

const missing = (field: string, accepted: string): Problem => ({ kind: 'missing', field, value: 'nothing', accepted })
