import type { Random } from './random.ts'
import type { Weather } from './unit.ts'

const kelvin = (F: number) => (F + 459.67) / 1.8

/**
 * Weather in which a technician charges: 62 to 110 °F outdoors, rooms from 68 to 84 °F with a return wet bulb from 57
 * to 74 °F, warmer and moister rooms when it is hotter outside.
 */
export function drawWeather({ uniform, normal }: Random): Weather {
  const outdoor = Math.min(Math.max(normal(86, 11), 62), 110)
  for (;;) {
    const indoor = normal(74.5 + 0.08 * (outdoor - 86), 3)
    const wet = indoor - uniform(5, 17)
    if (indoor >= 68 && indoor <= 84 && wet >= 57 && wet <= 74) {
      return { outdoor_K: kelvin(outdoor), returnAir_K: kelvin(indoor), returnWetBulb_K: kelvin(wet) }
    }
  }
}
