import type { DeviceKind } from './case.ts'
import type { Around, Device } from './device-law.ts'
import type { Family } from './family.ts'
import type { Random } from './random.ts'

/** A device of area 1, to be scaled to the flow it shall feed in these surroundings. */
export function drawDevice(kind: DeviceKind, random: Random, around: Around, flow: number, family: Family): Device {
  const { uniform, chance } = random
  const drawnLaw = chance(0.6) ? 'late-flash' : 'homogeneous'
  const law = family.deviceLaw ?? drawnLaw
  switch (kind) {
    case 'fixed-orifice':
      return { kind, law, area: 1, stretch: law === 'late-flash' ? uniform(0.7, 0.88) : uniform(0.85, 0.97) }
    case 'capillary': {
      const massFlux = uniform(2500, 5000)
      return { kind, law, area: flow / massFlux, friction: uniform(25, 60), massFlux, stretch: uniform(0.9, 0.98) }
    }
    case 'thermostatic': {
      const { fluid, bulb_K, equaliser_Pa } = around
      const bulb = chance(0.6) ? 1 : uniform(0.9, 1.05)
      const band = fluid.dewPressure(bulb_K + 0.5 * uniform(4, 8)) - fluid.dewPressure(bulb_K)
      const rate_Pa = 2 * bulb * band
      const open = uniform(0.45, 0.75)
      return {
        kind,
        law,
        area: 1,
        rated: open,
        most: 1,
        rate_Pa,
        bulb,
        spring_Pa: bulb * fluid.dewPressure(bulb_K) - equaliser_Pa - open * rate_Pa,
        highest_Pa: chance(0.3) ? bulb * fluid.dewPressure(bulb_K + uniform(8, 14)) : Infinity,
        bulbToAir: uniform(0, 0.03),
        stuck_Pa: 0,
      }
    }
  }
}
