import type { Dimension } from '@chargewright/quantity'

const SIGNED: readonly Dimension[] = ['temperature', 'temperature difference', 'gauge pressure', 'elevation']

/** Whether a quantity can lie below zero in some unit that the trade uses. */
export const isSigned = (dimension: Dimension): boolean => SIGNED.includes(dimension)
