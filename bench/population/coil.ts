import type { VoidLaw } from './void-law.ts'

/** A finned coil that air crosses row by row while the refrigerant runs through it cell by cell. */
export interface Coil {
  readonly rows: number
  /** Cells along one row. */
  readonly perRow: number
  /** The refrigerant begins at the row that the air leaves last (counter) or at the one it meets first (along). */
  readonly order: 'counter' | 'along'
  readonly circuits: number
  readonly bore_m: number
  /** Of all tubes together. */
  readonly length_m: number
  /** Air side conductance of a metre of tube with its fins at rated airflow, W/(m·K). */
  readonly fin_W_mK: number
  /** Conductance goes with airflow to this power. */
  readonly finExponent: number
  /** What grooves in the bore add to the smooth tube's film. */
  readonly grooves: number
  /** Boiling only: share of nucleate boiling, and the quality from which the wall dries. */
  readonly nucleate: number
  readonly dryFrom: number
  /** Share of the air that each slab of the coil gets; each slab gets the same refrigerant. */
  readonly slabs: readonly number[]
  /** Pressure lost, Pa per kg/m³ of vapour's specific volume at 1 kg/s; goes with flow^1.75. */
  readonly drop: number
  readonly voidLaw: VoidLaw
  /** Inner volume beside the tubes' own: headers and bends, and what production adds. Factor. */
  readonly roomy: number
}

export const volumeOf = (coil: Coil) => 0.25 * Math.PI * coil.bore_m ** 2 * coil.length_m * coil.roomy
