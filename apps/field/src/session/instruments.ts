import {
  type Fact,
  INSTRUMENT_IDS,
  type Instrument,
  type InstrumentId,
  readInstrument,
  readingKind,
} from '@chargewright/visit'
import { t } from '../words/t.ts'

/** The instruments of this device's owner; of a sort that is missing a plain one is assumed. */
export type MyInstruments = Readonly<Partial<Record<InstrumentId, Instrument>>>

/** A fact with the instrument it was read with: mine, unless it names one itself. */
export function withInstrument(fact: Fact, mine: MyInstruments): Fact {
  if ((fact.kind !== 'reading' && fact.kind !== 'refrigerant-moved') || fact.instrument !== undefined) return fact
  const instrument = mine[fact.kind === 'reading' ? readingKind(fact.what).instrument : 'charging-scale']
  return instrument ? { ...fact, instrument } : fact
}

/** What is known of an instrument, in a few words. */
export function instrumentInWords({ name, accuracy, class: gaugeClass, span, resolution }: Instrument): string {
  const parts = [
    name,
    accuracy === undefined ? undefined : `± ${accuracy.replace(/^\s*(±|\+\/?-)\s*/, '')}`,
    gaugeClass === undefined ? undefined : t('class {0}', gaugeClass),
    span === undefined ? undefined : t('span {0}', span),
    resolution === undefined ? undefined : t('steps of {0}', resolution),
  ]
  return parts.filter((part) => part !== undefined).join(', ')
}

/** What a device kept, as far as this version can read it. */
export function readInstruments(kept: unknown): MyInstruments {
  if (typeof kept !== 'object' || kept === null) return {}
  const found: Partial<Record<InstrumentId, Instrument>> = {}
  for (const id of INSTRUMENT_IDS) {
    const instrument = readInstrument(kept[id as keyof typeof kept])
    if (instrument) found[id] = instrument
  }
  return found
}
