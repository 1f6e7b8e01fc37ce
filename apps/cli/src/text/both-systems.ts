import { format, INCH_POUND, METRIC, type Quantity, quantity, subtract } from '@chargewright/quantity'

/** A value in the units of both systems, one cell each. */
const inBoth = (q: Quantity): readonly [string, string] => [format(q, INCH_POUND), format(q, METRIC)]

export const temperatureInBoth = (temperature_K: number) => inBoth(quantity('temperature', temperature_K))

/** An absolute pressure as a gauge at the site would show it. */
export const gaugeInBoth = (pressure_Pa: number, atmosphere: Quantity<'absolute pressure'>) =>
  inBoth(quantity('gauge pressure', pressure_Pa - atmosphere.si))

export const absoluteInBoth = (pressure_Pa: number) => inBoth(quantity('absolute pressure', pressure_Pa))

/** b − a of two temperatures. */
export const differenceInBoth = (a_K: number, b_K: number) =>
  inBoth(subtract(quantity('temperature', b_K), quantity('temperature', a_K)))

/** A property that only engineers ask for, in the SI multiple of the handbooks. */
export const property = (value: number, unit: string, digits = 5) => `${Number(value.toPrecision(digits))} ${unit}`
