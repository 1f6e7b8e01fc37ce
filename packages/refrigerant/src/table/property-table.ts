/**
 * The properties of one composition as spline surfaces over pressure and enthalpy, built from the equations of state
 * on the device that uses them. Over pressure everything runs in ξ = √ln(p_c/p), in which the saturation lines are
 * smooth up to the critical point; over enthalpy each region has its own coordinate y from 0 on its saturation line
 * to 1 at its far end, so that no cell lies across a phase boundary and no kink lies inside a cell.
 */
export interface PropertyTable {
  readonly name: string
  /** What it was built for, by mass. */
  readonly composition: readonly { readonly name: string; readonly massFraction: number }[]
  readonly lnCriticalPressure: number
  readonly minPressure_Pa: number
  readonly maxPressure_Pa: number
  readonly rows: number
  readonly xiStart: number
  readonly rowsPerXi: number
  /** Spline coefficients of the saturation lines over ξ, one run of `rows + 2` per entry of `CURVE`. */
  readonly curves: Float64Array
  readonly liquid: Surface
  readonly vapour: Surface
  /** Absent for a pure fluid, whose two-phase states lie on straight lines. */
  readonly dome?: Surface
}

/**
 * Splines over one region, all on the same grid: coefficients by rows, (rows + 2) × (columns + 2).
 * Single phases hold what they are called. The dome holds departures from the straight line between the saturated
 * phases at z = (h − h_l)/(h_v − h_l): of T and s in K and J/(kg·K), of the quality q − z, and of the specific volume
 * the factor (v − v_l)/(z·(v_v − v_l)).
 */
export interface Surface {
  /** Only every so many-th row of the table is a row of this surface. */
  readonly every: number
  readonly columns: number
  /** y and the share of the enthalpy range, in the dome z, are tied by share = stretch·y/(1 + stretch − y). */
  readonly stretch: number
  readonly temperature: Float64Array
  /** ρ of the liquid, p/ρ of the vapour, which hardly changes with p. */
  readonly volume: Float64Array
  readonly entropy: Float64Array
  /** Of the dome only; empty elsewhere. */
  readonly quality: Float64Array
}

/** Saturation curves. Ranges are those over which y of the single phases runs from 0 to 1. */
export const CURVE = {
  bubbleTemperature: 0,
  dewTemperature: 1,
  liquidEnthalpy: 2,
  vapourEnthalpy: 3,
  liquidEntropy: 4,
  vapourEntropy: 5,
  liquidDensity: 6,
  /** p/ρ: of a vapour nearly constant where ρ is not. */
  vapourPressureVolume: 7,
  liquidRange: 8,
  vapourRange: 9,
} as const

export const CURVE_COUNT = 10
