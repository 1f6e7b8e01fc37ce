import { outOfRange, type Problem } from '@chargewright/quantity'
import type { Nameplate } from './nameplate.ts'

/** The first figure on a nameplate that no system of these applications has, before anything is sized from it. */
export function nameplateProblem(plate: Nameplate): Problem | undefined {
  const { efficiency } = plate
  const figures: readonly (readonly [
    field: string,
    value: number | undefined,
    min: number,
    max: number,
    unit: string,
  ])[] = [
    ['capacity', plate.capacity_W, 100, 1e6, 'W'],
    ['nameplate charge', plate.charge_kg, 0.01, 1000, 'kg'],
    ['rated superheat', plate.superheat_K, 0, 40, 'K'],
    ['rated subcooling', plate.subcooling_K, 0, 40, 'K'],
    ['line length', plate.lineLength_m, 0, 200, 'm'],
    ['box temperature', plate.boxTemperature_K, 223.15, 293.15, 'K'],
    ['receiver volume', plate.receiver?.volume_m3, 1e-5, 1, 'm³'],
    ['rated efficiency', efficiency?.kind === 'cop' ? efficiency.cop : undefined, 0.3, 15, 'W/W'],
    ['compressor power', efficiency?.kind === 'compressor-power' ? efficiency.power_W : undefined, 10, 1e6, 'W'],
    [
      'rated-load current',
      efficiency?.kind === 'rated-load-current' ? efficiency.current_A : undefined,
      0.1,
      2000,
      'A',
    ],
  ]
  for (const [field, value, min, max, unit] of figures) {
    const problem = value === undefined ? undefined : outOfRange(field, value, min, max, unit)
    if (problem) return problem
  }
  return undefined
}
