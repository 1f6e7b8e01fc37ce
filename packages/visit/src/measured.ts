import {
  type Dimension,
  fail,
  ok,
  type Problem,
  parse,
  type Quantity,
  quantity,
  type Result,
} from '@chargewright/quantity'
import type { Instrument } from './event.ts'
import type { Accuracy } from './plain-instrument.ts'

/** A typed value with its standard uncertainty, and where the uncertainty comes from. */
export interface Measured<D extends Dimension = Dimension> {
  readonly quantity: Quantity<D>
  readonly uncertaintySource: string
}

/**
 * Parses a typed value and gives it the standard uncertainty of its instrument: the error its maker or class allows,
 * else that of a plain instrument of its sort, and in quadrature the rounding of its display.
 *
 * @param plain the instrument that is assumed where none is described
 * @returns SI with standard uncertainty; else the problem with the value or with the description of the instrument
 * @source JCGM 100:2008: 4.3.4 (a stated 95 % band a gives u = a/2), 4.3.7 (limits ±a of a class give u = a/√3), 4.3.9
 * (limits ±a that a checked instrument seldom reaches give u = a/√6), F.2.2.1 (a display step d gives u = d/√12), eq. 10
 * (quadrature)
 */
export function measured<D extends Dimension>(
  typed: string,
  accepts: readonly D[],
  plain: Accuracy,
  instrument: Instrument | undefined,
  field: string,
): Result<Measured<D>, Problem> {
  const value = parse(typed, accepts, { field })
  if (!value.ok) return value
  const { dimension, si } = value.value
  const allowed = allowedError(value.value, plain, instrument ?? {}, field)
  if (!allowed.ok) return allowed
  const { u, source } = allowed.value
  if (instrument?.resolution === undefined) {
    return ok({ quantity: quantity(dimension, si, u), uncertaintySource: source })
  }
  const step = parseError(instrument.resolution, dimension, `${field}, resolution of the instrument`)
  if (!step.ok) return step
  return ok({
    quantity: quantity(dimension, si, Math.hypot(u, step.value / Math.sqrt(12))),
    uncertaintySource: `${source}, resolution ${instrument.resolution}`,
  })
}

/** Standard uncertainty before rounding. A stated accuracy goes before a gauge class, that before the plain instrument. */
function allowedError(
  { dimension, si }: Quantity,
  plain: Accuracy,
  { name, accuracy, class: gaugeClass, span }: Instrument,
  field: string,
): Result<{ readonly u: number; readonly source: string }, Problem> {
  if (accuracy !== undefined) {
    const band = parseError(accuracy, dimension, `${field}, accuracy of the instrument`)
    const source = `${name === undefined ? '' : `${name}: `}stated accuracy ${accuracy}`
    return band.ok ? ok({ u: band.value / 2, source }) : band
  }
  if (gaugeClass === undefined) {
    return ok({ u: (plain.limit + plain.fraction * Math.abs(si)) / Math.sqrt(6), source: plain.source })
  }
  const spanField = `${field}, span of the instrument`
  if (span === undefined) {
    const accepted = 'the span of the gauge, because its class is given'
    return fail({ kind: 'missing', field: spanField, value: 'nothing', accepted })
  }
  const width = parseError(span, dimension, spanField)
  if (!width.ok) return width
  const source = `class ${gaugeClass} gauge, span ${span} (EN 837-1)`
  return ok({ u: ((gaugeClass / 100) * width.value) / Math.sqrt(3), source })
}

/** An error is a difference: half a psi of a gauge, 0.3 K of a thermometer. Its sign, `±` or other, says nothing. */
function parseError(typed: string, dimension: Dimension, field: string): Result<number, Problem> {
  const size = parse(typed.replace(/^\s*(±|\+\/?-)/, ''), DIFFERENCE[dimension] ?? dimension, { field })
  return size.ok ? ok(Math.abs(size.value.si)) : size
}

const DIFFERENCE: Readonly<Partial<Record<Dimension, Dimension>>> = {
  temperature: 'temperature difference',
  'gauge pressure': 'pressure difference',
  'absolute pressure': 'pressure difference',
}
