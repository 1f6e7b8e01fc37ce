import { INSTRUMENT_IDS, instrumentSort } from '@chargewright/visit'
import { instrumentInWords } from '../session/instruments.ts'
import type { Preferences } from '../session/preference.ts'
import { t } from '../words/t.ts'
import { InstrumentForm } from './instrument-form.tsx'

/** What the owner of this device measures with. It goes with every reading of its kind from then on. */
export function DeviceInstruments({ preferences }: { readonly preferences: Preferences }) {
  const mine = preferences.instruments.value
  return (
    <>
      <p class="hint">
        {t(
          'Describe yours, and every reading with it carries its uncertainty from then on. Of a sort that is not described, a plain one is assumed.',
        )}
      </p>
      {INSTRUMENT_IDS.map((id) => (
        <details key={id} class="group instrument" id={`instrument-${id}`}>
          <summary>
            <span class="instrument-name">{t(instrumentSort(id).label)}</span>
            <span class="group-count">{mine[id] ? instrumentInWords(mine[id]) : t('plain')}</span>
          </summary>
          <InstrumentForm
            key={JSON.stringify(mine[id])}
            id={id}
            mine={mine[id]}
            units={preferences.units.value}
            keep={(instrument) => preferences.setInstrument(id, instrument)}
          />
        </details>
      ))}
    </>
  )
}
