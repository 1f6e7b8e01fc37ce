import type { UnitPreference } from '@chargewright/quantity'
import { useSignal } from '@preact/signals'
import { fileName } from '../session/saved-file.ts'
import type { StoredVisit } from '../store/visit-store.ts'
import { useEngine } from '../worker/engine-context.ts'
import { download } from './download.ts'

interface Props {
  readonly stored: StoredVisit
  /** Of the system. */
  readonly name: string | undefined
  readonly units: UnitPreference
}

type State = 'idle' | 'writing' | 'failed'

/** Makes the service record, on this device. */
export function RecordKey({ stored: { id, events, about }, name, units }: Props) {
  const engine = useEngine()
  const state = useSignal<State>('idle')
  const write = async () => {
    state.value = 'writing'
    const created = new Date().toISOString()
    const options = { preference: units, created, ...(about !== undefined && { about }) }
    const record = await engine.ask({}, 'record', { id, events }, options)
    try {
      if (record.ok) download({ name: fileName(name, 'record.pdf'), type: 'application/pdf', content: record.value })
      state.value = record.ok ? 'idle' : 'failed'
    } catch {
      state.value = 'failed'
    }
  }
  return (
    <>
      <button type="button" class="key" disabled={state.value === 'writing'} onClick={() => void write()}>
        {state.value === 'writing' ? 'Writing …' : 'Record to sign (PDF)'}
      </button>
      {state.value === 'failed' && (
        <p class="trouble" role="alert">
          The record could not be written. Nothing is lost: print this page, or export the visit.
        </p>
      )}
    </>
  )
}
