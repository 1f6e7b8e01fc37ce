import type { Coil } from './coil.ts'

/** Of the air side of a whole coil, W/K. @param share of the rated airflow */
export const conductance = (coil: Coil, share: number) => coil.fin_W_mK * coil.length_m * share ** coil.finExponent
