import { useSignal } from '@preact/signals'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Preferences } from '../session/preference.ts'
import type { Session } from '../session/session.ts'
import { nextUndo } from '../session/undo.ts'
import { visitFileOf } from '../session/visit-file-of.ts'
import type { StoredVisit } from '../store/visit-store.ts'
import { DeviceSwitches } from './device-switches.tsx'
import { KeptState } from './kept-state.tsx'

interface Props {
  readonly stored: StoredVisit
  /** Name of the system, for the name of the file. */
  readonly system: string | undefined
  readonly session: Session
  readonly preferences: Preferences
}

/** What can be done with the visit as a whole. */
export function VisitTools({ stored, system, session, preferences }: Props) {
  const trouble = useSignal<string | undefined>(undefined)
  const undo = async () => {
    const undone = await session.undo(stored.id)
    trouble.value = undone.ok ? undefined : notKeptInWords(undone.error)
  }
  return (
    <div class="tools">
      <DeviceSwitches preferences={preferences} />
      <button type="button" class="key" disabled={nextUndo(stored.events) === undefined} onClick={() => void undo()}>
        Undo
      </button>
      <button type="button" class="key" onClick={() => download(visitFileOf(stored, system))}>
        Export
      </button>
      <KeptState keeping={session.keeping.value} />
      {trouble.value !== undefined && (
        <p class="trouble" role="alert">
          {trouble.value}
        </p>
      )}
    </div>
  )
}

function download({ name, json }: { readonly name: string; readonly json: string }): void {
  const address = URL.createObjectURL(new Blob([json], { type: 'application/json' }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  URL.revokeObjectURL(address)
}
