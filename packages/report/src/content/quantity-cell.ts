import {
  COVERAGE,
  format,
  INCH_POUND,
  METRIC,
  preferredUnit,
  type Quantity,
  type UnitPreference,
  type Words,
} from '@chargewright/quantity'

/** A value as every part of the record shows it: in the reader's units, in those of the other trade, and in SI. */
export interface QuantityCell {
  /** With ± where it is known. */
  readonly shown: string
  readonly other: string
  readonly dimension: string
  /** Pa, K, kg, m, m³, m³/s, W, A, V, s; relative humidity as a fraction. */
  readonly si: number
  /** About 95 %, in SI. */
  readonly expandedUncertainty?: number
}

export function quantityCell(q: Quantity, preference: UnitPreference, words?: Words): QuantityCell {
  const inches = preferredUnit('temperature', preference).symbol === '°F'
  const cell = {
    shown: format(q, preference, true, words),
    other: format(q, inches ? METRIC : INCH_POUND, false, words),
    dimension: q.dimension,
    si: q.si,
  }
  return q.u === undefined ? cell : { ...cell, expandedUncertainty: COVERAGE * q.u }
}
