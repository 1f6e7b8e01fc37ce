import type { Running } from '../operate.ts'
import { RATING } from '../rating.ts'
import { quantile, type Sample } from './sample.ts'

/** What a technician would find at sound units: 10 %, 50 % and 90 % of them lie below. */
export function atRating(all: readonly Sample[]): string[] {
  const line = (name: string, of: (r: Running, s: Sample) => number, digits = 1) => {
    const values = all.map((s) => of(s.sound, s))
    const at = [0.1, 0.5, 0.9].map((q) => quantile(values, q).toFixed(digits).padStart(7))
    return `  ${name.padEnd(34)}${at.join('')}`
  }
  return [
    line('superheat at the compressor, K', (r) => r.superheat_K),
    line('subcooling, K', (r) => r.subcooling_K),
    line('condensing above outdoor air, K', (r) => r.condensing_K - RATING.outdoor_K),
    line('evaporating, °C', (r) => r.evaporating_K - 273.15),
    line('discharge, °C', (r) => r.discharge_K - 273.15),
    line('condenser air warmed by, K', (r) => r.condenserLeaving_K - RATING.outdoor_K),
    line('indoor air cooled by, K', (r) => RATING.returnAir_K - r.supply_K),
    line('COP', (r) => r.capacity_W / r.power_W, 2),
    line('capacity, kW', (r) => r.capacity_W / 1000, 2),
    line('charge, kg per kW', (r, s) => (s.design.right_kg / r.capacity_W) * 1000, 3),
  ]
}

/** Median superheat and subcooling over outdoor air and return wet bulb. */
export function overWeather(all: readonly Sample[]): string[] {
  const outdoors = [295, 301.5, 308.15, 314.5]
  const wets = [288.7, 292.6, 296]
  const cell = (outdoor_K: number, returnWetBulb_K: number) => {
    const found = all.map((s) => s.now({ weather: { outdoor_K, returnWetBulb_K } })).filter((r) => r !== undefined)
    const median = (of: (r: Running) => number) => quantile(found.map(of), 0.5).toFixed(1)
    return `${median((r) => r.superheat_K)}/${median((r) => r.subcooling_K)}`.padStart(11)
  }
  const head = outdoors.map((T) => `${(T - 273.15).toFixed(0)} °C`.padStart(11)).join('')
  return [
    `  superheat/subcooling, K; outdoors ${head}`,
    ...wets.map(
      (w) => `  return wet bulb ${(w - 273.15).toFixed(1)} °C`.padEnd(36) + outdoors.map((T) => cell(T, w)).join(''),
    ),
  ]
}
