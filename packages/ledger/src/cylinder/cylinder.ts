import type { Quantity } from '@chargewright/quantity'

export type Mass = Quantity<'mass'>

/** A cylinder as its stamps describe it, and its weight when it came into the book. */
export interface Cylinder {
  readonly id: string
  /** Designation, however it is spelt. */
  readonly refrigerant: string
  /** `new`: as bought, or reclaimed. `recovered`: taken from a system. The two never share a cylinder. */
  readonly holds: 'new' | 'recovered'
  /** False for one that was sold filled and may only be emptied. */
  readonly refillable: boolean
  /** Stamped TW: the empty cylinder with its valve. */
  readonly tare: Mass
  /** Stamped WC: the water that would fill it. */
  readonly waterCapacity: Mass
  readonly firstWeighing: Mass
}
