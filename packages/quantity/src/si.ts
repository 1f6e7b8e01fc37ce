declare const dimension: unique symbol

/**
 * A number in a coherent SI unit, marked at the boundary of a package with what it measures. Inside a formula it is a
 * plain `number`; the mark stops a gauge pressure from being handed where an absolute one is expected.
 */
type Si<Name extends string> = number & { readonly [dimension]: Name }

/** Absolute pressure, Pa. */
export type Pascal = Si<'absolute pressure'>
/** Thermodynamic temperature, K. */
export type Kelvin = Si<'temperature'>

export const pascal = (value: number): Pascal => value as Pascal
export const kelvin = (value: number): Kelvin => value as Kelvin
