import { entryLabel, type NextEntry } from '@chargewright/charging'
import { t } from '../words/t.ts'
import { entryId, reveal } from './reveal.ts'

/** Jumps to the field of an entry. */
export function NextLink({ next: { entry } }: { readonly next: NextEntry }) {
  return (
    <button type="button" class="link" onClick={() => reveal(entryId(entry))}>
      {t(entryLabel(entry))}
    </button>
  )
}
