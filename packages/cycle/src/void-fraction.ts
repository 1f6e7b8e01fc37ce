import type { Saturated } from './refrigerant/properties.ts'

export const VOID_FRACTIONS = ['zivi', 'baroczy', 'rouhani-axelsson', 'hughmark'] as const

export type VoidFraction = (typeof VOID_FRACTIONS)[number]

/** How fast and how wide the flow is, for the correlations that ask. */
export interface TubeFlow {
  /** Mass flow per cross-section, kg/(s·m²). */
  readonly massFlux: number
  readonly diameter_m: number
}

/** Share of the cross-section filled by vapour, over quality from 0 to 1; 0 at 0 and 1 at 1. */
export type VoidLaw = (quality: number) => number

/** The law of a correlation at one pressure and flow, its constants worked out once. */
export function voidLaw(kind: VoidFraction, at: Saturated, flow: TubeFlow): VoidLaw {
  const between = lawBetween(kind, at, flow)
  return (quality) => (quality <= 0 ? 0 : quality >= 1 ? 1 : between(quality))
}

function lawBetween(kind: VoidFraction, at: Saturated, flow: TubeFlow): VoidLaw {
  switch (kind) {
    case 'zivi':
      return zivi(at.vapourDensity_kg_m3 / at.liquidDensity_kg_m3)
    case 'baroczy':
      return baroczy(at)
    case 'rouhani-axelsson':
      return rouhaniAxelsson(at, flow)
    case 'hughmark':
      return hughmark(at, flow)
  }
}

/**
 * Slip by least entropy production, S = (ρf/ρg)^⅓.
 *
 * @source Zivi 1964; form READ in the documentation of an open heat-pump model
 */
export function zivi(densityRatio: number): VoidLaw {
  const slipped = densityRatio ** (2 / 3)
  return (x) => 1 / (1 + ((1 - x) / x) * slipped)
}

/**
 * 1/(1 + ((1 − x)/x)^0.74 (ρg/ρf)^0.65 (µf/µg)^0.13), its powers by logarithms: a power costs as much as three of them.
 *
 * @source Baroczy 1965 in the form of Butterworth 1975, REMEMBERED
 */
function baroczy(at: Saturated): VoidLaw {
  const densities = at.vapourDensity_kg_m3 / at.liquidDensity_kg_m3
  const viscosities = at.liquidViscosity_Pas / at.vapourViscosity_Pas
  const lnFactor = 0.65 * Math.log(densities) + 0.13 * Math.log(viscosities)
  return (x) => 1 / (1 + Math.exp(0.74 * Math.log((1 - x) / x) + lnFactor))
}

/** @source Rouhani and Axelsson 1970, drift flux with C0 = 1 + 0.12(1 − x), REMEMBERED */
function rouhaniAxelsson(at: Saturated, { massFlux: G }: TubeFlow): VoidLaw {
  const { vapourDensity_kg_m3: rhoG, liquidDensity_kg_m3: rhoF } = at
  const sigma = at.surfaceTension_N_m
  const drift = (1.18 * (GRAVITY * sigma * (rhoF - rhoG)) ** 0.25) / (G * Math.sqrt(rhoF))
  return (x) => x / rhoG / ((1 + 0.12 * (1 - x)) * (x / rhoG + (1 - x) / rhoF) + drift * (1 - x))
}

/**
 * K(Z) times the homogeneous void fraction. Z holds the void fraction itself through the mean viscosity; four
 * substitutions settle it, because it enters by the power 1/6.
 *
 * @source Hughmark 1962, K as tabulated, REMEMBERED
 */
function hughmark(at: Saturated, { massFlux: G, diameter_m: D }: TubeFlow): VoidLaw {
  const { vapourDensity_kg_m3: rhoG, liquidDensity_kg_m3: rhoF, liquidViscosity_Pas, vapourViscosity_Pas } = at
  return (x) => {
    const homogeneous = 1 / (1 + ((1 - x) / x) * (rhoG / rhoF))
    const froude = (G * x) ** 2 / (GRAVITY * D * (homogeneous * rhoG) ** 2)
    const shape = froude ** (1 / 8) * (1 - homogeneous) ** (-1 / 4)
    let alpha = homogeneous
    for (let i = 0; i < 4; i++) {
      const viscosity = liquidViscosity_Pas + alpha * (vapourViscosity_Pas - liquidViscosity_Pas)
      alpha = homogeneous * flowParameter(((D * G) / viscosity) ** (1 / 6) * shape)
    }
    return alpha
  }
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
