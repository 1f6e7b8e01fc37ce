import type { Instrument } from '@chargewright/visit'

/** The description of an instrument while it is typed: every field a text. */
export type InstrumentDraft = Readonly<Record<keyof Instrument, string>>

export const draftOf = (instrument: Instrument | undefined): InstrumentDraft => ({
  name: instrument?.name ?? '',
  accuracy: instrument?.accuracy ?? '',
  class: instrument?.class === undefined ? '' : String(instrument.class),
  span: instrument?.span ?? '',
  resolution: instrument?.resolution ?? '',
})

/** The instrument that was described, without what was left empty. */
export function describedBy(draft: InstrumentDraft): Instrument {
  const filled = Object.entries(draft)
    .map(([field, text]) => [field, text.trim()] as const)
    .filter(([, text]) => text !== '')
  const { class: gaugeClass, ...others } = Object.fromEntries(filled)
  const number = Number(gaugeClass?.replace(',', '.'))
  return { ...others, ...(gaugeClass !== undefined && { class: number }) }
}
