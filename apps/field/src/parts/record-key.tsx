import { useSignal } from '@preact/signals'
import { type Assessed, recordFileOf } from '../session/record-file-of.ts'
import { download } from './download.ts'

type State = 'idle' | 'writing' | 'failed'

/** Makes the service record, on this device. */
export function RecordKey(assessed: Assessed) {
  const state = useSignal<State>('idle')
  const write = async () => {
    state.value = 'writing'
    try {
      download(await recordFileOf(assessed, new Date().toISOString()))
      state.value = 'idle'
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
