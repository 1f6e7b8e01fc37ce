import { PLAIN_MANOMETER } from '@chargewright/moist-air'
import { type Dimension, type Problem, parse, type Quantity, quantity, type Result } from '@chargewright/quantity'
import { type InstrumentSort, instrumentSort } from '@chargewright/visit'

/** How far off a plain instrument may be. */
export type Accuracy = InstrumentSort['accuracy']

/** What is taken to have been read with, where no ± was typed. */
export const PLAIN = {
  thermometer: instrumentSort('air-thermometer').accuracy,
  suctionGauge: instrumentSort('low-side-gauge').accuracy,
  highSideGauge: instrumentSort('high-side-gauge').accuracy,
  ammeter: instrumentSort('clamp-ammeter').accuracy,
  voltmeter: instrumentSort('voltmeter').accuracy,
  wattmeter: { limit: 10, fraction: 0.03, source: 'clamp wattmeter, common practice' },
  flowmeter: { limit: 0, fraction: 0.05, source: 'clamped or fitted flow meter, common practice' },
  scale: instrumentSort('charging-scale').accuracy,
  manometer: PLAIN_MANOMETER,
} as const satisfies Readonly<Record<string, Accuracy>>

/**
 * A reading as typed, with the standard uncertainty of its instrument: half of what stands behind a ± (a 95 % band, as
 * it is printed), else that of a plain instrument of its sort; exact where there is neither. One unit does for both:
 * `21 ± 0.5 °F`, `240 V ± 2`.
 *
 * @source JCGM 100:2008, 4.3.4 for a stated 95 % band, 4.3.9 for limits that a checked instrument seldom reaches
 */
export function typedReading<D extends Dimension>(
  text: string,
  accepted: D | readonly D[],
  field: string,
  plain?: Accuracy,
): Result<Quantity<D>, Problem> {
  const [, before = '', after] = /^(.*?)(?:±|\+\/?-)(.*)$/s.exec(text) ?? [text, text]
  if (after === undefined) return withPlain(parse(text, accepted, { field }), plain)
  const value = parse(withUnitOf(before, after), accepted, { field })
  if (!value.ok) return value
  const { dimension, si } = value.value
  const band = parse(withUnitOf(after, before), [DIFFERENCE[dimension] ?? dimension, dimension], {
    field: `${field}, behind the ±`,
  })
  return band.ok ? { ok: true, value: quantity(dimension, si, Math.abs(band.value.si) / 2) } : band
}

function withPlain<D extends Dimension>(
  read: Result<Quantity<D>, Problem>,
  plain: Accuracy | undefined,
): Result<Quantity<D>, Problem> {
  if (!read.ok || !plain) return read
  const { dimension, si } = read.value
  const u = (plain.limit + plain.fraction * Math.abs(si)) / Math.sqrt(6)
  return { ok: true, value: quantity(dimension, si, u) }
}

/** A bare number takes the unit of its neighbour. */
function withUnitOf(text: string, neighbour: string): string {
  if (!/[\d.,]\s*$/.test(text)) return text
  return `${text.trim()} ${neighbour.replace(/^[\s\d.,+/−–-]*/, '')}`
}

const DIFFERENCE: Readonly<Partial<Record<Dimension, Dimension>>> = {
  temperature: 'temperature difference',
  'gauge pressure': 'pressure difference',
  'absolute pressure': 'pressure difference',
}
