import { type Assessment, assess, LIMITS } from '@chargewright/charging'
import { preferredUnit, type Quantity, quantity, toSi, type UnitPreference } from '@chargewright/quantity'
import type { Reading, ReadingId, Visit } from '@chargewright/visit'
import { type Axis, tickText } from './axis.ts'
import { shown } from './in-unit.ts'
import type { Point } from './svg.ts'

/** The target over the outdoor temperature at one indoor temperature, in the reader's units. */
export interface Curve {
  readonly name: string
  readonly points: readonly Point[]
}

/** What the target hangs on indoors. */
export const indoorKind = ({ system }: Visit): 'wet bulb' | 'dry bulb' =>
  system.facts.makersChart?.indoor === 'dry-bulb' ? 'dry bulb' : 'wet bulb'

export function indoorOf(visit: Visit, { measures }: Assessment): Quantity<'temperature'> | undefined {
  return indoorKind(visit) === 'dry bulb'
    ? (visit.readings['return-air-dry-bulb']?.quantity as Quantity<'temperature'> | undefined)
    : measures.returnWetBulb?.quantity
}

/** Indoor temperatures to either side of this system's own, in steps that keep the lines apart, K. */
const STEP_K = { 'wet bulb': 3 * (5 / 9), 'dry bulb': 5 * (5 / 9) } as const
const TO_EITHER_SIDE = 3

/** Curves for this indoor temperature, in the middle, and for others beside it; each only as far as a test is valid. */
export function targetFamily(
  visit: Visit,
  indoor: Quantity<'temperature'>,
  outdoorAxis: Axis,
  preference: UnitPreference,
): readonly Curve[] {
  const unit = preferredUnit('temperature', preference)
  const refused = shown(LIMITS.outdoorRefused.quantity, preference)
  const outdoors = between(outdoorAxis).filter((x) => x >= refused)
  const steps = Array.from({ length: 2 * TO_EITHER_SIDE + 1 }, (_, i) => i - TO_EITHER_SIDE)
  return steps.map((step) => {
    const at = quantity('temperature', indoor.si + step * STEP_K[indoorKind(visit)])
    const points = outdoors.flatMap((x) => {
      const target = targetAt(visit, toSi(x, unit), at.si)
      return target && target.si >= LIMITS.lowestTargetSuperheat.quantity.si
        ? [{ x, y: shown(target, preference) }]
        : []
    })
    return { name: `${tickText(Number(shown(at, preference).toFixed(1)))}°`, points }
  })
}

/** The ticks of an axis and four places between each two, close enough for the bends of a printed chart. */
function between({ ticks }: Axis): readonly number[] {
  return ticks.flatMap((tick, i) => {
    const next = ticks[i + 1]
    return next === undefined ? [tick] : [0, 0.2, 0.4, 0.6, 0.8].map((share) => tick + share * (next - tick))
  })
}

/**
 * The target superheat of this system in other weather, as the assessment itself would set it: the same system is
 * assessed with these two temperatures in place of all readings, so that the picture cannot differ from the rule or
 * the maker's chart that decided. Undefined where there is no target.
 */
function targetAt(visit: Visit, outdoor_K: number, indoor_K: number): Quantity | undefined {
  const indoor = indoorKind(visit) === 'dry bulb' ? 'return-air-dry-bulb' : 'return-air-wet-bulb'
  const own = visit.readings['return-air-dry-bulb']
  // A model of the system asks for both; air is never wetter than its own dry bulb allows.
  const beside = indoor === 'return-air-wet-bulb' && own ? { [own.what]: warmEnough(own, indoor_K) } : {}
  const readings = {
    ...beside,
    'condenser-entering-air': assumed('condenser-entering-air', outdoor_K),
    [indoor]: assumed(indoor, indoor_K),
  }
  return assess({ ...visit, readings, history: [], moves: [], observations: {} }).target?.quantity
}

const warmEnough = (own: Reading, wetBulb_K: number): Reading =>
  own.quantity.si > wetBulb_K ? own : assumed(own.what, wetBulb_K)

function assumed(what: ReadingId, temperature_K: number): Reading {
  const origin = { eventId: '', at: '', position: 0 }
  return { ...origin, what, typed: '', quantity: quantity('temperature', temperature_K), uncertaintySource: '' }
}
