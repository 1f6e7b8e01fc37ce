import type { Random } from './random.ts'

/** Lines of this site. @param rho of the liquid at rating, kg/m³ */
export function drawLines({ uniform, normal }: Random, capacity: number, flow: number, rho: number) {
  const length = uniform(4, 18)
  const bore = capacity > 15e3 ? 0.0111 : 0.0079
  const area = 0.25 * Math.PI * bore ** 2
  return {
    liquid_m3: area * length,
    suction_m3: 0.25 * Math.PI * (0.0165 + 0.45e-6 * capacity) ** 2 * length,
    drop: ((uniform(2500, 4500) * length * rho) / flow ** 2) * (flow / 0.05) ** 1.8 * (0.0079 / bore) ** 4.8 * 0.4,
    drierDrop: (uniform(3e3, 1.2e4) * rho) / flow ** 2,
    /** The technician's idea of the length is off by some, and so is what he adds to the nameplate for it. */
    misjudged_kg: area * length * normal(0, 0.08) * rho,
  }
}
