import type { Dimension, UnitPreference } from '@chargewright/quantity'
import type { Instrument } from '@chargewright/visit'
import { understand } from './understand.ts'

/** The description of an instrument while it is typed: every field a text. */
export type InstrumentDraft = Readonly<Record<keyof Instrument, string>>

export const draftOf = (instrument: Instrument | undefined): InstrumentDraft => ({
  name: instrument?.name ?? '',
  accuracy: instrument?.accuracy ?? '',
  class: instrument?.class === undefined ? '' : String(instrument.class),
  span: instrument?.span ?? '',
  resolution: instrument?.resolution ?? '',
})

/**
 * The instrument that was described, without what was left empty. A bare number gets its unit, as the form read it to
 * whoever typed it; what cannot be read stays as it was typed.
 *
 * @param accepts dimensions of its error, its span and its steps
 */
export function describedBy(draft: InstrumentDraft, accepts: readonly Dimension[], units: UnitPreference): Instrument {
  const withUnit = (text: string) => {
    const read = understand(text, { label: '', accepts }, units)
    return read.ok ? read.value.text : text
  }
  const filled = Object.entries(draft)
    .map(([field, text]) => [field, text.trim()] as const)
    .filter(([, text]) => text !== '')
    .map(([field, text]) => [field, field === 'name' || field === 'class' ? text : withUnit(text)] as const)
  const { class: gaugeClass, ...others } = Object.fromEntries(filled)
  const number = Number(gaugeClass?.replace(',', '.'))
  return { ...others, ...(gaugeClass !== undefined && { class: number }) }
}
