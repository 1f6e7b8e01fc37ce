import type { UnitPreference } from '@chargewright/quantity'
import { useSignal } from '@preact/signals'
import { useState } from 'preact/hooks'
import { localTime } from '../session/local-time.ts'
import { fileName, type SavedFile } from '../session/saved-file.ts'
import type { SystemSoFar } from '../session/system-so-far.ts'
import { spoken } from '../words/speak.ts'
import { t } from '../words/t.ts'
import { useEngine } from '../worker/engine-context.ts'
import type { VisitEvents } from '../worker/protocol.ts'
import { download } from './download.ts'
import { canShare, share } from './share.ts'

interface Props {
  readonly visit: VisitEvents
  /** Asked for once a record is wanted. */
  readonly system: () => SystemSoFar | undefined
  /** The free words of the file that the visit came from. */
  readonly about: string | undefined
  /** Of the system. */
  readonly name: string | undefined
  readonly units: UnitPreference
}

const FORMS = {
  pdf: { ending: 'record.pdf', type: 'application/pdf' },
  csv: { ending: 'record.csv', type: 'text/csv' },
  json: { ending: 'record.json', type: 'application/json' },
} as const
type Form = keyof typeof FORMS

/** Makes the service record, on this device: to sign and to pass on, and as a table or data for other programs. */
export function RecordKey({ visit, system, about, name, units }: Props) {
  const engine = useEngine()
  const state = useSignal<'idle' | 'writing' | 'failed'>('idle')
  const [isShared] = useState(canShare)
  const contentOf = async (form: Form): Promise<SavedFile['content'] | undefined> => {
    const created = localTime(new Date())
    const wish = { preference: units, language: spoken.value, created, ...(about !== undefined && { about }) }
    const written =
      form === 'pdf'
        ? await engine.ask({}, 'record', visit, wish, system())
        : await engine.ask({}, 'recordText', visit, wish, system(), form)
    return written.ok ? written.value : undefined
  }
  const write = async (form: Form, handOver: (file: SavedFile) => unknown) => {
    if (state.value === 'writing') return
    state.value = 'writing'
    try {
      const content = await contentOf(form)
      const { ending, type } = FORMS[form]
      if (content !== undefined) await handOver({ name: fileName(name, ending), type, content })
      state.value = content === undefined ? 'failed' : 'idle'
    } catch {
      state.value = 'failed'
    }
  }
  const key = (label: string, form: Form, handOver: (file: SavedFile) => unknown = download) => (
    // Not disabled, which would take the focus from who pressed it by keyboard.
    <button
      type="button"
      class="key"
      aria-disabled={state.value === 'writing'}
      onClick={() => void write(form, handOver)}
    >
      {label}
    </button>
  )
  return (
    <>
      {key(state.value === 'writing' ? t('Writing …') : t('Record to sign (PDF)'), 'pdf')}
      {isShared && key(t('Share the record'), 'pdf', share)}
      {key(t('As a table (CSV)'), 'csv')}
      {key(t('As data (JSON)'), 'json')}
      {state.value === 'failed' && (
        <p class="trouble" role="alert">
          {t('The record could not be written. Nothing is lost: print this page, or export the visit.')}
        </p>
      )}
    </>
  )
}
