import { fail, inQuadrature, ok, type Problem, type Quantity, quantity, type Result } from '@chargewright/quantity'
import { fold, type VisitEvent } from '@chargewright/visit'
import type { Addition } from './addition.ts'
import type { Clock } from './clock.ts'
import { type Coverage, leakRepairCoverage } from './coverage.ts'
import { judgeLeakRate, type LeakVerdict } from './judge-leak-rate.ts'
import { type LeakHistory, leakRateAfter } from './leak-rate-after.ts'
import type { ApplianceUse } from './leak-repair-law.ts'
import { repairClocks } from './repair-clocks.ts'

/** What the law asks of a system after its last addition. */
export interface SystemLeakRate extends LeakHistory {
  readonly laws: readonly {
    readonly coverage: Coverage
    /** By the annualizing and by the rolling method. */
    readonly rates: readonly Result<LeakVerdict, Problem>[]
    /** Run once a rate is over its threshold. */
    readonly clocks: readonly Clock[]
  }[]
}

/** The entries of a visit, or what was said of the system itself. */
type Log = Parameters<typeof fold>[0]

const METHODS = ['annualizing', 'rolling'] as const

/**
 * The leak rate of a system after its last addition, from what its visits weighed in and out.
 *
 * @param visits to this system, the earliest first
 * @returns else what is missing for a rate
 */
export function leakRateOfSystem(visits: readonly Log[], use: ApplianceUse): Result<SystemLeakRate, Problem> {
  const events: readonly VisitEvent[] = visits.flatMap((visit) => visit.events)
  const { facts, figures } = fold({ id: 'system', events }).system
  const fullCharge = figures.nameplateCharge?.quantity as Quantity<'mass'> | undefined
  if (!fullCharge) return fail(missing('Full charge', 'the nameplate charge'))
  if (facts.refrigerant === undefined) return fail(missing('Refrigerant', 'the one on the nameplate'))
  const additions = visits.flatMap(additionOf).toSorted((a, b) => dayOf(a).localeCompare(dayOf(b)))
  const last = additions.at(-1)
  if (!last) return fail(missing('Additions', 'a visit in which more went in than came out'))
  const on = dayOf(last)
  const coverage = leakRepairCoverage({ refrigerant: facts.refrigerant, fullCharge }, on)
  if (!coverage.ok) return coverage
  const covering = coverage.value.filter(({ verdict }) => verdict !== 'does-not-apply')
  const history = { on, fullCharge, additions }
  return ok({ ...history, laws: covering.map((each) => underLaw(each, history, use)) })
}

/** Where the system stands: two times of one day may be told with different zones. */
const dayOf = ({ on }: Addition) => on.slice(0, 10)

/** Net of a visit: what came out of the system and went back leaked nowhere. */
function additionOf(visit: Log): readonly Addition[] {
  const { moves } = fold(visit)
  const si = moves.reduce((sum, { fact, mass }) => sum + (fact.direction === 'into-system' ? mass.si : -mass.si), 0)
  const last = moves.at(-1)
  return last && si > 0
    ? [{ on: last.at, mass: quantity('mass', si, inQuadrature(...moves.map(({ mass }) => mass.u))) }]
    : []
}

function underLaw(coverage: Coverage, history: LeakHistory, use: ApplianceUse): SystemLeakRate['laws'][number] {
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
