import type { Readings } from '../readings.ts'
import type { Conditions } from '../system.ts'

/** Readings that can teach, with the error that even a well-adjusted model keeps in each: structural, one standard deviation. */
export const OBSERVABLES = {
  superheat_K: 1.2,
  subcooling_K: 0.7,
  evaporating_K: 0.7,
  condensing_K: 0.8,
  dischargeTemperature_K: 5,
  supplyAir_K: 1.2,
  power_W: 0.05,
} as const satisfies Partial<Readonly<Record<keyof Readings, number>>>

export type Observable = keyof typeof OBSERVABLES

export const OBSERVABLE_NAMES = Object.keys(OBSERVABLES) as readonly Observable[]

/** One value read, with the standard uncertainty of its instrument. */
export interface Reading {
  readonly value: number
  readonly sd: number
}

/** A settled set of readings at known conditions. */
export interface Observation {
  readonly conditions: Conditions
  /** Refrigerant added since the first set, kg; negative when recovered. */
  readonly added_kg: number
  readonly readings: Readonly<Partial<Record<Observable, Reading>>>
}

/** Structural error as a difference in the unit of the reading; of power it is a share. */
export const structuralSd = (name: Observable, value: number): number =>
  name === 'power_W' ? OBSERVABLES[name] * value : OBSERVABLES[name]
