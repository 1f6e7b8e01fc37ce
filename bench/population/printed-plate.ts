import type { DeviceKind, Plate } from './case.ts'
import type { Running } from './operate.ts'
import type { Random } from './random.ts'

/** What the maker prints, with his tolerance and rounding; the charge with what the technician adds for the lines. */
export function printedPlate(
  device: DeviceKind,
  refrigerant: string,
  rated: Running,
  misjudged_kg: number,
  { normal }: Random,
): Plate {
  const round = (x: number, to: number) => Number((Math.round(x / to) * to).toFixed(4))
  return {
    refrigerant,
    device,
    capacity_W: round(rated.capacity_W * (1 + normal(0, 0.015)), 100),
    charge_kg: round((rated.charge_kg + misjudged_kg) * (1 + normal(0, 0.01)), 0.01),
    cop: round((rated.capacity_W / rated.power_W) * (1 + normal(0, 0.015)), 0.05),
    ...(device === 'thermostatic' ? { subcooling_K: round(rated.subcooling_K, 5 / 9) } : {}),
  }
}
