import type { Saturated } from './fluid.ts'

export const VOID_LAWS = [
  'zivi',
  'smith',
  'rouhani-axelsson',
  'lockhart-martinelli',
  'hughmark',
  'constant-slip',
] as const

/** How much of a tube's cross-section the vapour takes; drawn per plant, because no two makers' coils agree on one. */
export type VoidLaw = (typeof VOID_LAWS)[number]

/**
 * Share of the cross-section filled by vapour at a quality between 0 and 1.
 *
 * @param massFlux kg/(s·m²)
 * @param diameter_m of the bore
 * @source Zivi 1964 (READ in the documentation of an open heat-pump model); Smith 1969 with K = 0.4; Rouhani and
 *   Axelsson 1970 for horizontal tubes; Lockhart and Martinelli 1949 as 1/(1 + 0.28 X^0.71) (Butterworth 1975);
 *   Hughmark 1962 with his table; slip of 2 (Rigot). All but Zivi REMEMBERED.
 */
export function voidShare(law: VoidLaw, x: number, at: Saturated, massFlux: number, diameter_m: number): number {
  if (x <= 0) return 0
  if (x >= 1) return 1
  const ratio = at.rhoVapour / at.rhoLiquid
  const wet = (1 - x) / x
  switch (law) {
    case 'zivi':
      return 1 / (1 + wet * ratio * ratio ** (-1 / 3))
    case 'smith': {
      const slip = 0.4 + 0.6 * Math.sqrt((1 / ratio + 0.4 * wet) / (1 + 0.4 * wet))
      return 1 / (1 + wet * ratio * slip)
    }
    case 'rouhani-axelsson': {
      const spread = 1 + 0.12 * (1 - x)
      const volume = x / at.rhoVapour + (1 - x) / at.rhoLiquid
      const rise = (9.81 * at.sigma * (at.rhoLiquid - at.rhoVapour)) ** 0.25 / Math.sqrt(at.rhoLiquid)
      return x / at.rhoVapour / (spread * volume + (1.18 * (1 - x) * rise) / massFlux)
    }
    case 'lockhart-martinelli': {
      const X = wet ** 0.9 * ratio ** 0.5 * (at.muLiquid / at.muVapour) ** 0.1
      return 1 / (1 + 0.28 * X ** 0.71)
    }
    case 'hughmark':
      return hughmark(x, at, massFlux, diameter_m)
    case 'constant-slip':
      return 1 / (1 + wet * ratio * 2)
  }
}

/** ln Z against Hughmark's flow parameter, between which it is straight. */
const LN_Z = [1.3, 1.5, 2, 3, 4, 5, 6, 8, 10, 15, 20, 40, 70, 130].map(Math.log)
const K = [0.185, 0.225, 0.325, 0.49, 0.605, 0.675, 0.72, 0.767, 0.78, 0.808, 0.83, 0.88, 0.93, 0.98]

function hughmark(x: number, at: Saturated, G: number, D: number): number {
  const flat = 1 / (1 + ((1 - x) / x) * (at.rhoVapour / at.rhoLiquid))
  const froude = (G * x) ** 2 / (9.81 * D * (flat * at.rhoVapour) ** 2)
  // Twice through is enough: the void share enters its own viscosity by the power 1/6 only.
  let alpha = 0.8 * flat
  for (let k = 0; k < 2; k++) {
    const mu = at.muLiquid + alpha * (at.muVapour - at.muLiquid)
    const lnZ = Math.log((D * G) / mu) / 6 + Math.log(froude) / 8 - Math.log(1 - Math.min(flat, 0.9999)) / 4
    alpha = flat * flowParameter(lnZ)
  }
  return alpha
}

function flowParameter(lnZ: number): number {
  const last = K.length - 1
  if (lnZ <= LN_Z[0]!) return K[0]!
  if (lnZ >= LN_Z[last]!) return K[last]!
  let i = 1
  while (LN_Z[i]! < lnZ) i++
  const share = (lnZ - LN_Z[i - 1]!) / (LN_Z[i]! - LN_Z[i - 1]!)
  return K[i - 1]! + share * (K[i]! - K[i - 1]!)
}
