import type { Saturated } from './refrigerant/properties.ts'

export const VOID_FRACTIONS = ['zivi', 'baroczy', 'rouhani-axelsson', 'hughmark'] as const

export type VoidFraction = (typeof VOID_FRACTIONS)[number]

/** How fast and how wide the flow is, for the correlations that ask. */
export interface TubeFlow {
  /** Mass flow per cross-section, kg/(s·m²). */
  readonly massFlux: number
  readonly diameter_m: number
}

/**
 * Share of the cross-section filled by vapour.
 *
 * @param quality vapour share of the mass flow, 0 to 1
 * @returns 0 to 1; 0 at quality 0 and 1 at quality 1
 */
export function voidFraction(kind: VoidFraction, quality: number, at: Saturated, flow: TubeFlow): number {
  if (quality <= 0) return 0
  if (quality >= 1) return 1
  switch (kind) {
    case 'zivi':
      return zivi(quality, at.vapourDensity_kg_m3 / at.liquidDensity_kg_m3)
    case 'baroczy':
      return baroczy(quality, at)
    case 'rouhani-axelsson':
      return rouhaniAxelsson(quality, at, flow)
    case 'hughmark':
      return hughmark(quality, at, flow)
  }
}

/**
 * Slip by least entropy production, S = (ρf/ρg)^⅓.
 *
 * @source Zivi 1964; form READ in the documentation of an open heat-pump model
 */
export function zivi(x: number, densityRatio: number): number {
  return 1 / (1 + ((1 - x) / x) * densityRatio ** (2 / 3))
}

/** @source Baroczy 1965 in the form of Butterworth 1975, REMEMBERED */
function baroczy(x: number, at: Saturated): number {
  const densities = at.vapourDensity_kg_m3 / at.liquidDensity_kg_m3
  const viscosities = at.liquidViscosity_Pas / at.vapourViscosity_Pas
  return 1 / (1 + ((1 - x) / x) ** 0.74 * densities ** 0.65 * viscosities ** 0.13)
}

/** @source Rouhani and Axelsson 1970, drift flux with C0 = 1 + 0.12(1 − x), REMEMBERED */
function rouhaniAxelsson(x: number, at: Saturated, { massFlux: G }: TubeFlow): number {
  const { vapourDensity_kg_m3: rhoG, liquidDensity_kg_m3: rhoF } = at
  const sigma = at.surfaceTension_N_m
  const drift = 1.18 * (1 - x) * (GRAVITY * sigma * (rhoF - rhoG)) ** 0.25
  return x / rhoG / ((1 + 0.12 * (1 - x)) * (x / rhoG + (1 - x) / rhoF) + drift / (G * Math.sqrt(rhoF)))
}

/**
 * K(Z) times the homogeneous void fraction. Z holds the void fraction itself through the mean viscosity; four
 * substitutions settle it, because it enters by the power 1/6.
 *
 * @source Hughmark 1962, K as tabulated, REMEMBERED
 */
function hughmark(x: number, at: Saturated, { massFlux: G, diameter_m: D }: TubeFlow): number {
  const { vapourDensity_kg_m3: rhoG, liquidDensity_kg_m3: rhoF } = at
  const homogeneous = 1 / (1 + ((1 - x) / x) * (rhoG / rhoF))
  const froude = (G * x) ** 2 / (GRAVITY * D * (homogeneous * rhoG) ** 2)
  let alpha = homogeneous
  for (let i = 0; i < 4; i++) {
    const viscosity = at.liquidViscosity_Pas + alpha * (at.vapourViscosity_Pas - at.liquidViscosity_Pas)
    const Z = ((D * G) / viscosity) ** (1 / 6) * froude ** (1 / 8) * (1 - homogeneous) ** (-1 / 4)
    alpha = homogeneous * flowParameter(Z)
  }
  return alpha
}

const HUGHMARK_Z = [0, 1.3, 1.5, 2, 3, 4, 5, 6, 8, 10, 15, 20, 40, 70, 130]
const HUGHMARK_K = [0, 0.185, 0.225, 0.325, 0.49, 0.605, 0.675, 0.72, 0.767, 0.78, 0.808, 0.83, 0.88, 0.93, 0.98]

function flowParameter(Z: number): number {
  const i = HUGHMARK_Z.findIndex((z) => z >= Z)
  if (i === -1) return 0.98 + 0.02 * (1 - 130 / Z)
  if (i === 0) return 0
  const share = (Z - HUGHMARK_Z[i - 1]!) / (HUGHMARK_Z[i]! - HUGHMARK_Z[i - 1]!)
  return HUGHMARK_K[i - 1]! + share * (HUGHMARK_K[i]! - HUGHMARK_K[i - 1]!)
}

const GRAVITY = 9.80665
