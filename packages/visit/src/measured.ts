import {
  type Dimension,
  fail,
  ok,
  type ParseOptions,
  type Problem,
  parse,
  type Quantity,
  quantity,
  type Result,
} from '@chargewright/quantity'
import type { Instrument } from './event.ts'
import type { Accuracy } from './reading-kind.ts'

const DIFFERENCE: Readonly<Partial<Record<Dimension, Dimension>>> = {
  temperature: 'temperature difference',
  'gauge pressure': 'pressure difference',
  'absolute pressure': 'pressure difference',
}

/** A typed value with its standard uncertainty, and where the uncertainty comes from. */
export interface Measured {
  readonly quantity: Quantity
  readonly uncertaintySource: string
}

/**
 * Parses a typed value and gives it the standard uncertainty of its instrument.
 *
 * A stated accuracy is taken as a 95 % band (u = a/2); a gauge class as a limit of error, class % of span, evenly
 * likely inside (u = a/√3, JCGM 100:2008, 4.3.7); a resolution adds d/√12 (ibid., F.2.2.1). Without an instrument the
 * plain one of its sort is assumed.
 */
export function measured(
  typed: string,
  accepts: readonly Dimension[],
  plain: Accuracy,
  instrument: Instrument | undefined,
  options: ParseOptions & { readonly field: string },
): Result<Measured, Problem> {
  const value = parse(typed, accepts, options)
  if (!value.ok) return value
  const { dimension, si } = value.value
  const amount = (text: string, name: string) =>
    parse(text, DIFFERENCE[dimension] ?? dimension, { field: `${options.field}.instrument.${name}` })

  const parts: number[] = []
  let source = plain.source
  if (instrument?.accuracy !== undefined) {
    const accuracy = amount(instrument.accuracy, 'accuracy')
    if (!accuracy.ok) return accuracy
    parts.push(accuracy.value.si / 2)
    source = `stated accuracy ${instrument.accuracy}`
  } else if (instrument?.class !== undefined && instrument.span !== undefined) {
    const span = amount(instrument.span, 'span')
    if (!span.ok) return span
    parts.push((instrument.class * span.value.si) / 100 / Math.sqrt(3))
    source = `class ${instrument.class} gauge, span ${instrument.span} (EN 837-1)`
  } else if (instrument?.class !== undefined) {
    const field = `${options.field}.instrument.span`
    return fail({
      kind: 'missing',
      field,
      value: 'nothing',
      accepted: 'the span of the gauge, because its class is given',
    })
  } else {
    parts.push((plain.limit + plain.fraction * Math.abs(si)) / 2)
  }
  if (instrument?.resolution !== undefined) {
    const resolution = amount(instrument.resolution, 'resolution')
    if (!resolution.ok) return resolution
    parts.push(resolution.value.si / Math.sqrt(12))
  }
  return ok({ quantity: quantity(dimension, si, Math.hypot(...parts)), uncertaintySource: source })
}
