import type { Saturated } from './fluid.ts'

/**
 * Film of a single phase in a smooth tube, W/(m²·K).
 *
 * @source Dittus and Boelter 1930, turbulent
 */
export function singlePhase(G: number, D: number, mu: number, k: number, cp: number): number {
  return ((0.023 * k) / D) * ((G * D) / mu) ** 0.8 * ((cp * mu) / k) ** 0.4
}

/**
 * Condensing film over that of all the flow as liquid.
 *
 * @source Shah 1979, REMEMBERED
 */
export function condensingShape(x: number, { p_Pa }: Saturated): number {
  const inside = Math.min(Math.max(x, 1e-4), 0.9999)
  return (1 - inside) ** 0.8 + (3.8 * inside ** 0.76 * (1 - inside) ** 0.04) / (p_Pa / CRITICAL_Pa) ** 0.38
}

/** Near enough for a film, of all the refrigerants that are drawn (4.06 to 5.78 MPa). */
const CRITICAL_Pa = 4.9e6

/**
 * Boiling conductance of a cell: convective and nucleate over the liquid's own film, falling to the vapour's where the
 * wall dries.
 *
 * @param nucleate 3000·Bo^0.86 at the coil's usual heat flux
 * @source Gungor and Winterton 1987, REMEMBERED; the dry end is a straight line, our own
 */
export function boilingShape(
  x: number,
  liquid: number,
  vapour: number,
  { nucleate, dryFrom }: { readonly nucleate: number; readonly dryFrom: number },
  densities: number,
): number {
  const wet = Math.min(Math.max(x, 0), dryFrom)
  const convective = 1.12 * (wet / (1 - wet)) ** 0.75 * densities ** 0.41
  const film = liquid * (1 - wet) ** 0.8 * (1 + nucleate + convective)
  if (x <= dryFrom) return film
  const dried = (Math.min(x, 1) - dryFrom) / (1 - dryFrom)
  return film + dried * (vapour - film)
}
