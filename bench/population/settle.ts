import type { Design } from './design.ts'
import { operate, type Running, type Unknowns } from './operate.ts'
import { RATING } from './rating.ts'
import type { Unit, Weather } from './unit.ts'

/**
 * The steady state of a unit of this design with this charge in this weather. Tried from the design's own state shifted
 * to the weather, from several condensing temperatures around it, and last by steps from the rating point.
 */
export function settle(unit: Unit, design: Design, weather: Weather, charge_kg: number): Running | undefined {
  for (const [condensing_K, superheat_K] of STARTS) {
    const found = operate(unit, weather, charge_kg, start(unit, design, weather, charge_kg, condensing_K, superheat_K))
    if (found) return found
  }
  return byDegrees(unit, design, weather, charge_kg)
}

/** Above what is first thought of. A start with too warm a condenser is safe: all the liquid it then has is subcooled. */
const STARTS: readonly (readonly [condensing_K: number, superheat_K: number])[] = [
  [0, 0],
  [5, 0],
  [12, 0],
  [0, 12],
  [-4, 25],
  [4, -6],
]

/**
 * Condensing follows the outdoor air, the air that is missing and gas that takes up pressure; evaporating follows the
 * wet bulb by a part of it; a lean charge lowers both.
 */
function start(
  unit: Unit,
  { rated, right_kg }: Design,
  weather: Weather,
  charge_kg: number,
  condensing_K: number,
  superheat_K: number,
): Unknowns {
  const { fluid, condenserFan, evaporatorFan, gas_Pa } = unit
  const off = charge_kg / right_kg - 1
  const hotter = weather.outdoor_K - RATING.outdoor_K
  const wetter = weather.returnWetBulb_K - RATING.returnWetBulb_K
  const split = (rated.condensing_K - RATING.outdoor_K) * (1 - condenserFan.missing) ** -0.8
  const condensing = weather.outdoor_K + split - 0.08 * hotter + 0.25 * wetter + 8 * off + condensing_K
  const starved = 10 * evaporatorFan.missing + 12 * Math.max(-off, 0)
  const suction = fluid.dewPressure(rated.evaporating_K + 0.5 * wetter + 0.1 * hotter - starved)
  const drop = rated.discharge_Pa / rated.liquid_Pa
  const discharge = Math.min(fluid.dewPressure(condensing) * drop + 3 * gas_Pa, 0.88 * fluid.critical_Pa)
  return [Math.log(suction), Math.log(discharge), rated.unknowns[2] + superheat_K / 110]
}

function byDegrees(unit: Unit, design: Design, weather: Weather, charge_kg: number): Running | undefined {
  let [at, from, stride] = [0, design.rated.unknowns, 0.25]
  while (stride > 0.03) {
    const next = Math.min(at + stride, 1)
    const charge = design.right_kg * (charge_kg / design.right_kg) ** next
    const there = operate(unit, toward(weather, next), charge, from)
    if (there && next === 1) return there
    if (there) {
      at = next
      from = there.unknowns
    } else stride /= 2
  }
  return undefined
}

function toward(weather: Weather, share: number): Weather {
  const mix = (key: keyof Weather) => RATING[key] + share * (weather[key] - RATING[key])
  return { outdoor_K: mix('outdoor_K'), returnAir_K: mix('returnAir_K'), returnWetBulb_K: mix('returnWetBulb_K') }
}
