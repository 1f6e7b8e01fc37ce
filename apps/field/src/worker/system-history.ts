import type { FindingKind } from '@chargewright/charging'
import { PAGE, PHONE, type Picture, type TrendPoint, visitTrend } from '@chargewright/picture'
import { inQuadrature, type Quantity, quantity, say, type UnitPreference, type Words } from '@chargewright/quantity'
import { fold, type Move } from '@chargewright/visit'
import { assessedKnowing, type Known, taughtAfter } from './assessed.ts'
import type { VisitEvents } from './protocol.ts'

/** A visit to be told of, and what it is called: when it was, in words. */
export interface NamedVisit extends VisitEvents {
  readonly called: string
  /** What those before it taught was forgotten before it. */
  readonly beginsAnew: boolean
}

/** What a visit came to. */
export interface VisitOutcome {
  readonly id: string
  readonly finding: FindingKind
  readonly superheat?: Quantity
  readonly subcooling?: Quantity
  /** Net of what went in and came out; absent where nothing was weighed. */
  readonly weighed?: Quantity
}

export interface SystemHistory {
  /** In the order of the visits. One that cannot be read is left out. */
  readonly outcomes: readonly VisitOutcome[]
  readonly pictures: readonly Picture[]
}

const TRENDS = [
  ['superheat', say`superheat`],
  ['subcooling', say`subcooling`],
  ['weighed', say`refrigerant weighed in`],
] as const

/** The visits to one system, the first one first: what each came to, and how it changed from one to the next. */
export function systemHistory(visits: readonly NamedVisit[], units: UnitPreference, words: Words): SystemHistory {
  let known: Known
  const told = visits.flatMap((visit, i) => {
    if (visit.beginsAnew) known = undefined
    const outcome = outcomeOf(visit, known)
    known = taughtAfter(visit, known)
    return outcome ? [{ outcome, visit: i + 1, called: visit.called }] : []
  })
  const sheet = { ...PHONE, palette: PAGE }
  return {
    outcomes: told.map(({ outcome }) => outcome),
    pictures: TRENDS.flatMap(([what, name]) => {
      const points = told.flatMap(({ outcome, visit, called }): readonly TrendPoint[] => {
        const value = outcome[what]
        return value ? [{ visit, called, value }] : []
      })
      return visitTrend(name, points, units, sheet, words) ?? []
    }),
  }
}

function outcomeOf(visit: VisitEvents, known: Known): VisitOutcome | undefined {
  try {
    const { finding, measures } = assessedKnowing(visit, known).assessment
    const { moves } = fold(visit)
    const [superheat, subcooling] = [measures.superheat?.quantity, measures.subcooling?.quantity]
    return {
      id: visit.id,
      finding: finding.kind,
      ...(superheat && { superheat }),
      ...(subcooling && { subcooling }),
      ...(moves.length > 0 && { weighed: netOf(moves) }),
    }
  } catch {
    return undefined
  }
}

function netOf(moves: readonly Move[]): Quantity {
  const signed = moves.map(({ fact, mass }) => (fact.direction === 'into-system' ? mass.si : -mass.si))
  return quantity(
    'mass',
    signed.reduce((sum, mass) => sum + mass, 0),
    inQuadrature(...moves.map(({ mass }) => mass.u)),
  )
}
