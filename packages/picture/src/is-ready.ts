import type { Assessment } from '@chargewright/charging'

/** Whether the method may speak: where a condition does not hold, a distance to the target would say what it cannot. */
export const isReady = ({ conditions }: Assessment): boolean => conditions.every(({ state }) => state !== 'unmet')
