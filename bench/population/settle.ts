import type { Design } from './design.ts'
import { RATING } from './design.ts'
import { operate, type Running, type Unknowns } from './operate.ts'
import type { Unit, Weather } from './unit.ts'

/**
 * The steady state of a unit of this design with this charge in this weather. Tried at once from the design's own state
 * shifted with the weather; where that fails, by steps from the sound unit at its rating point.
 */
export function settle(unit: Unit, design: Design, weather: Weather, charge_kg: number): Running | undefined {
  const direct = operate(unit, weather, charge_kg, shifted(design, weather, charge_kg))
  if (direct) return direct
  let [at, start, stride] = [0, design.rated.unknowns, 0.25]
  while (at < 1) {
    const next = Math.min(at + stride, 1)
    const there = operate(unit, toward(weather, next), design.right_kg * (charge_kg / design.right_kg) ** next, start)
    if (there) {
      if (next === 1) return there
      at = next
      start = there.unknowns
    } else {
      stride /= 2
      if (stride < 0.03) return undefined
    }
  }
  return undefined
}

function toward(weather: Weather, share: number): Weather {
  const mix = (key: keyof Weather) => RATING[key] + share * (weather[key] - RATING[key])
  return { outdoor_K: mix('outdoor_K'), returnAir_K: mix('returnAir_K'), returnWetBulb_K: mix('returnWetBulb_K') }
}

/** Condensing follows the outdoor air, evaporating the wet bulb by a part of it; a lean charge lowers both. */
function shifted({ unit, rated, right_kg }: Design, weather: Weather, charge_kg: number): Unknowns {
  const off = charge_kg / right_kg - 1
  const hotter = weather.outdoor_K - RATING.outdoor_K
  const wetter = weather.returnWetBulb_K - RATING.returnWetBulb_K
  const discharge = unit.fluid.dewPressure(rated.condensing_K + 0.92 * hotter + 0.25 * wetter + 8 * off)
  const suction = unit.fluid.dewPressure(rated.evaporating_K + 0.5 * wetter + 0.1 * hotter + 12 * Math.min(off, 0))
  return [Math.log(suction), Math.log((discharge * rated.discharge_Pa) / rated.liquid_Pa), rated.unknowns[2]]
}
