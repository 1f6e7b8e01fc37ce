import type { Weather } from './unit.ts'

/** The point at which makers rate: 95 °F outdoors, 80 °F and 67 °F wet bulb indoors. */
export const RATING: Weather = { outdoor_K: 308.15, returnAir_K: 299.82, returnWetBulb_K: 292.59 }
