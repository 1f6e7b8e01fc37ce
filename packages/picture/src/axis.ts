import { type Dimension, preferredUnit, type UnitPreference } from '@chargewright/quantity'
import { scaleLinear, scaleLog } from 'd3-scale'

/** One axis of a plot, in the numbers that the reader sees. */
export interface Axis {
  readonly title: string
  readonly kind: 'linear' | 'log'
  readonly from: number
  readonly to: number
  readonly ticks: readonly number[]
}

/** An axis from one whole tick to another that holds all values; about `count` ticks. */
export function linearAxis(title: string, values: readonly number[], count: number): Axis {
  const [low, high] = [Math.min(...values), Math.max(...values)]
  const apart = high - low > 1e-9 ? 0 : Math.max(1, Math.abs(high) * 0.1)
  const scale = scaleLinear([low - apart, high + apart], [0, 1]).nice(count)
  const [from, to] = scale.domain() as [number, number]
  return { title, kind: 'linear', from, to, ticks: scale.ticks(count) }
}

/** An axis over exactly this range, with about `count` ticks inside it. */
export function exactAxis(title: string, from: number, to: number, count: number): Axis {
  return { title, kind: 'linear', from, to, ticks: scaleLinear([from, to], [0, 1]).ticks(count) }
}

/** A logarithmic axis over exactly this range, ticked at 1, 2, 3, 5 and 7 of every decade. */
export function logAxis(title: string, from: number, to: number): Axis {
  const lead = (value: number) => Math.round(value / 10 ** Math.floor(Math.log10(value * (1 + 1e-9))))
  const ticks = scaleLog([from, to], [0, 1])
    .ticks()
    .filter((tick) => [1, 2, 3, 5, 7].includes(lead(tick)))
  return { title, kind: 'log', from, to, ticks }
}

/** `superheat, °F` */
export const axisTitle = (name: string, dimension: Dimension, preference: UnitPreference): string =>
  `${name}, ${preferredUnit(dimension, preference).symbol}`

/** A tick as it is written: a true minus, and no digits that only rounding made. */
export const tickText = (value: number): string => String(Number(value.toPrecision(6))).replace('-', '−')
