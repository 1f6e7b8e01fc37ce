import type { Result } from '@chargewright/quantity'
import { useSignal } from '@preact/signals'
import { useEffect, useRef } from 'preact/hooks'
import { useDraftOf } from '../session/draft-place.ts'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Kept } from '../session/session.ts'

interface Field {
  readonly id: string
  readonly label: string
  /** The text that is kept, as it was typed. */
  readonly kept: string | undefined
  /** What is kept is from before the last change to the system: the same text, typed again, is a new entry. */
  readonly outdated?: boolean | undefined
  /** The text to keep for what was typed, or why it cannot be. */
  readonly check: (typed: string) => Result<string, string>
  readonly keep: (text: string) => Kept
  /** Whether a text that is not blank says nothing yet. */
  readonly isNothing?: (typed: string) => boolean
  /** What emptying the field does; without it the field goes back to what is kept. */
  readonly clear?: (() => Kept) | undefined
}

/**
 * What is being typed into a field. It becomes an entry on Enter or on leaving the field, and is let go only when the
 * store has it: until then, or when it cannot be read, it stays where it was typed, over a closed page and a restart too.
 */
export function useDraft(field: Field) {
  const { typedBefore, keep } = useDraftOf(field.id)
  // The page was closed between the entry and the end of its draft.
  const isEntered = useRef(typedBefore !== undefined && isKept(field, typedBefore)).current
  const leftOver = isEntered ? undefined : typedBefore
  const draft = useSignal(leftOver)
  /** What stands there was typed before this page was opened, and never entered. */
  const isLeftOver = useSignal(leftOver !== undefined)
  useEffect(() => {
    if (isEntered) keep(undefined)
  }, [])
  const trouble = useSignal<string | undefined>(undefined)
  const sending = useRef<string | undefined>(undefined)

  function put(text: string | undefined): void {
    draft.value = text
    isLeftOver.value = false
    keep(text)
  }

  async function send(typed: string, write: () => Kept): Promise<void> {
    sending.current = typed
    const written = await write()
    sending.current = undefined
    if (!written.ok) trouble.value = notKeptInWords(written.error, field.label)
    else if (draft.value === typed) put(undefined)
  }

  async function commit(): Promise<void> {
    const typed = draft.value
    if (typed === undefined || typed === sending.current) return
    trouble.value = undefined
    const isSame = typed === field.kept
    if (typed.trim() === '' || field.isNothing?.(typed) || (isSame && !field.outdated)) {
      if (field.kept !== undefined && !isSame && field.clear) return send(typed, field.clear)
      put(undefined)
      return
    }
    const checked = field.check(typed)
    if (checked.ok) await send(typed, () => field.keep(checked.value))
    else trouble.value = checked.error
  }

  return {
    draft,
    isLeftOver,
    trouble,
    commit,
    type: (text: string) => {
      put(text)
      trouble.value = undefined
    },
    letGo: () => {
      put(undefined)
      trouble.value = undefined
    },
  }
}

function isKept({ kept, outdated, check }: Field, typed: string): boolean {
  const checked = check(typed)
  return !outdated && checked.ok && checked.value === kept
}
