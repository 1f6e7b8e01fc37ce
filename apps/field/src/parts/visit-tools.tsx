import type { Preferences } from '../session/preference.ts'
import type { Assessed } from '../session/record-file-of.ts'
import type { Keeping } from '../session/session.ts'
import { visitFileOf } from '../session/visit-file-of.ts'
import { DeviceSwitches } from './device-switches.tsx'
import { download } from './download.ts'
import { KeptState } from './kept-state.tsx'
import { RecordKey } from './record-key.tsx'

interface Props {
  readonly assessed: Assessed
  readonly keeping: Keeping
  readonly preferences: Preferences
}

/** What can be done with the visit as a whole. */
export function VisitTools({ assessed, keeping, preferences }: Props) {
  const { stored, visit } = assessed
  return (
    <div class="tools">
      <DeviceSwitches preferences={preferences} />
      <RecordKey {...assessed} />
      <button type="button" class="key" onClick={() => download(visitFileOf(stored, visit.system.facts.name))}>
        Export
      </button>
      <KeptState keeping={keeping} />
    </div>
  )
}
