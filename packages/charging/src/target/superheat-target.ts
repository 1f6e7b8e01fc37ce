import {
  evidence,
  fail,
  type Measure,
  ok,
  type Problem,
  type Quantity,
  quantity,
  type Result,
  type Statement,
  say,
} from '@chargewright/quantity'
import type { MakersChart, Visit } from '@chargewright/visit'
import { LIMITS } from '../limit.ts'
import type { Measures } from '../measures/measures.ts'
import { typedIn } from '../measures/typed-in.ts'
import { gridOf, lookUp, spread } from './chart.ts'
import { twinTarget } from './twin-target.ts'

/** A target superheat, or why there is none at these conditions. */
export type SuperheatTarget =
  | {
      readonly kind: 'target'
      readonly source: 'makers-chart' | 'twin' | 'rule-of-thumb'
      readonly measure: Measure<Quantity<'temperature difference'>>
      /** How far the target itself may be off beyond the instruments; decides only whether there is a valid test. */
      readonly departure: number
    }
  | { readonly kind: 'none'; readonly because: Statement; readonly source: string }
  | {
      readonly kind: 'missing'
      readonly what: 'condenser-entering-air' | 'return-air-wet-bulb' | 'return-air-dry-bulb'
    }

const F = 5 / 9
const ZERO_F_IN_K = 459.67 * F

/**
 * The target superheat in the order of trust: the maker's own chart if it was entered; else what the model of this very
 * system has at its nameplate charge, where its facts make one; else the trade's rule of thumb. Where the one that is
 * trusted gives no value or does not reach, there is none: a rule never fills in for the maker.
 */
export function superheatTarget(visit: Visit, measures: Measures): Result<SuperheatTarget, Problem> {
  const chart = visit.system.facts.makersChart
  if (chart) return fromChart(chart, visit, measures)
  return ok(twinTarget(visit, measures) ?? ruleOfThumb(visit, measures))
}

function fromChart(chart: MakersChart, visit: Visit, measures: Measures): Result<SuperheatTarget, Problem> {
  const grid = gridOf(chart)
  if (!grid.ok) return fail(grid.error)
  const outdoor = visit.readings['condenser-entering-air']
  if (!outdoor) return ok({ kind: 'missing', what: 'condenser-entering-air' })
  const indoorReading = visit.readings['return-air-dry-bulb']
  const indoor =
    chart.indoor === 'wet-bulb'
      ? measures.returnWetBulb
      : indoorReading && { quantity: indoorReading.quantity, evidence: typedIn(indoorReading) }
  if (!indoor)
    return ok({ kind: 'missing', what: chart.indoor === 'wet-bulb' ? 'return-air-wet-bulb' : 'return-air-dry-bulb' })

  const [scale, offset] = chart.unit === '°F' ? [F, ZERO_F_IN_K] : [1, 273.15]
  const inChart = (T: Quantity) => (T.si - offset) / scale
  const [row, column] = [inChart(outdoor.quantity), inChart(indoor.quantity)]
  const found = lookUp(grid.value, row, column)
  switch (found.kind) {
    case 'outside': {
      const edge = (x: number) => quantity('temperature', x * scale + offset)
      const axis = found.axis === 'row' ? 'outdoor' : `indoor ${chart.indoor === 'wet-bulb' ? 'wet bulb' : 'dry bulb'}`
      const because = say`The maker's chart covers ${axis} temperatures from ${edge(found.min)} to ${edge(found.max)}; this visit lies outside it`
      return ok({ kind: 'none', because, source: 'maker' })
    }
    case 'no-value':
      return ok({ kind: 'none', because: say`The maker's chart gives no value at these temperatures`, source: 'maker' })
    case 'value': {
      const u = spread(grid.value, row, (outdoor.quantity.u ?? 0) / scale, column, (indoor.quantity.u ?? 0) / scale)
      const value = quantity('temperature difference', found.value * scale, u * scale)
      const measure = {
        quantity: value,
        evidence: evidence(say`Target superheat ${value}`, "maker's chart, as entered", [
          typedIn(outdoor),
          indoor.evidence,
        ]),
      }
      return ok({ kind: 'target', source: 'makers-chart', measure, departure: 0 })
    }
  }
}

/**
 * (3·WB − 80 − DB)/2 in °F.
 *
 * @source *common practice*; no authority
 */
function ruleOfThumb(visit: Visit, measures: Measures): SuperheatTarget {
  const outdoor = visit.readings['condenser-entering-air']
  if (!outdoor) return { kind: 'missing', what: 'condenser-entering-air' }
  const wetBulb = measures.returnWetBulb
  if (!wetBulb) return { kind: 'missing', what: 'return-air-wet-bulb' }
  const DB = (outdoor.quantity.si - ZERO_F_IN_K) / F
  const WB = (wetBulb.quantity.si - ZERO_F_IN_K) / F
  const u = Math.hypot(1.5 * (wetBulb.quantity.u ?? 0), 0.5 * (outdoor.quantity.u ?? 0))
  const value = quantity('temperature difference', ((3 * WB - 80 - DB) / 2) * F, u)
  return {
    kind: 'target',
    source: 'rule-of-thumb',
    departure: LIMITS.ruleOfThumbDeparture.quantity.si,
    measure: {
      quantity: value,
      evidence: evidence(
        say`Target superheat ${value}`,
        'rule of thumb (3·WB − 80 − DB)/2 °F, common practice; no maker’s chart entered',
        [typedIn(outdoor), wetBulb.evidence],
      ),
    },
  }
}
