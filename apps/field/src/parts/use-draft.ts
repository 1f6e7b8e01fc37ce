import type { Result } from '@chargewright/quantity'
import { useSignal } from '@preact/signals'
import { useRef } from 'preact/hooks'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Kept } from '../session/session.ts'

interface Field {
  readonly label: string
  /** The text that is kept, as it was typed. */
  readonly kept: string | undefined
  /** What is kept is from before the last change to the system: the same text, typed again, is a new entry. */
  readonly outdated?: boolean | undefined
  /** The text to keep for what was typed, or why it cannot be. */
  readonly check: (typed: string) => Result<string, string>
  readonly keep: (text: string) => Kept
  /** What emptying the field does; without it the field goes back to what is kept. */
  readonly clear?: (() => Kept) | undefined
}

/**
 * What is being typed into a field. It becomes an entry on Enter or on leaving the field, and is let go only when the
 * store has it: until then, or when it cannot be read, it stays where it was typed.
 */
export function useDraft(field: Field) {
  const draft = useSignal<string | undefined>(undefined)
  const trouble = useSignal<string | undefined>(undefined)
  const sending = useRef<string | undefined>(undefined)

  async function send(typed: string, write: () => Kept): Promise<void> {
    sending.current = typed
    const written = await write()
    sending.current = undefined
    if (!written.ok) trouble.value = notKeptInWords(written.error, field.label)
    else if (draft.value === typed) draft.value = undefined
  }

  async function commit(): Promise<void> {
    const typed = draft.value
    if (typed === undefined || typed === sending.current) return
    trouble.value = undefined
    const isSame = typed === field.kept
    if (typed.trim() === '' || (isSame && !field.outdated)) {
      if (field.kept !== undefined && !isSame && field.clear) return send(typed, field.clear)
      draft.value = undefined
      return
    }
    const checked = field.check(typed)
    if (checked.ok) await send(typed, () => field.keep(checked.value))
    else trouble.value = checked.error
  }

  return {
    draft,
    trouble,
    commit,
    type: (text: string) => {
      draft.value = text
      trouble.value = undefined
    },
    letGo: () => {
      draft.value = undefined
      trouble.value = undefined
    },
  }
}
