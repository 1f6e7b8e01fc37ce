import type { Quantity } from '@chargewright/quantity'

/**
 * Largest departure of a phase from the mean of the three, over the mean, as a fraction.
 *
 * @param voltages three, between phases, above 0
 *
 * @source NEMA MG-1; not the difference of highest and lowest, which gives up to twice as much. The uncertainty takes
 *   the three readings as independent and moves each by its own (JCGM 100:2008, 5.1.3 note 2)
 */
export function voltageUnbalance(voltages: readonly Quantity<'voltage'>[]): {
  readonly value: number
  readonly u: number
} {
  const volts = voltages.map((v) => v.si)
  const value = unbalanceOf(volts)
  const moved = voltages.map(({ u = 0 }, i) => unbalanceOf(volts.map((v, k) => (k === i ? v + u : v))) - value)
  return { value, u: Math.hypot(...moved) }
}

function unbalanceOf(volts: readonly number[]): number {
  const mean = average(volts)
  return Math.max(...volts.map((v) => Math.abs(v - mean))) / mean
}

export function average(values: readonly number[]): number {
  return values.reduce((sum, v) => sum + v, 0) / values.length
}
