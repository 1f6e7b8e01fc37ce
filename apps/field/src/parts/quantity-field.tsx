import { type Dimension, fail, format, ok, type Quantity, type UnitPreference } from '@chargewright/quantity'
import { useSignal } from '@preact/signals'
import type { ComponentChildren } from 'preact'
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks'
import type { Kept } from '../session/session.ts'
import { namesItsUnit, shownQuantity } from '../session/shown-quantity.ts'
import { understand } from '../session/understand.ts'
import { isUnitAlone } from '../session/unit-key.ts'
import { problemInWords } from '../words/problem-in-words.ts'
import { t } from '../words/t.ts'
import { afterPress } from './after-press.ts'
import { EntryKeys } from './entry-keys.tsx'
import { EntryMessage } from './entry-message.tsx'
import { isTouched, useKeypad } from './keypad-field.ts'
import { focusNextEntry } from './reveal.ts'
import { useDraft } from './use-draft.ts'

interface Props {
  readonly id: string
  readonly label: string
  readonly accepts: readonly Dimension[]
  readonly kept: { readonly typed: string; readonly quantity: Quantity } | undefined
  /** Why what is kept no longer counts, in words. */
  readonly outdated?: string | undefined
  /** What stands there while nothing is entered. */
  readonly absent: string
  readonly remark?: string | undefined
  readonly units: UnitPreference
  /** How to read it well, while one reads it. */
  readonly howTo?: string
  /** What is doubtful about a value before it is kept. */
  readonly question?: ((quantity: Quantity, typed: string) => string | undefined) | undefined
  readonly keep: (typed: string) => Kept
  /** Told what stands there once the hand rests, before it is kept. */
  readonly foresee?: ((typed: string) => void) | undefined
  readonly clear?: (() => Kept) | undefined
  /** What the value means, under it. */
  readonly children?: ComponentChildren
}

/** Longer than between two digits that follow at once. */
const HAND_RESTS_ms = 150

/**
 * A blank for one quantity. It shows the kept value in the units of this device; while it has the focus it shows what
 * was typed, and takes any text with a unit or a bare number in the unit beside it.
 */
export function QuantityField(props: Props) {
  const { id, label, kept, outdated, units } = props
  const [dimension] = props.accepts as readonly [Dimension]
  const input = useRef<HTMLInputElement>(null)
  const focused = useSignal(false)
  const read = (typed: string) => understand(typed, props, units)
  const field = useDraft({
    id,
    label,
    kept: kept?.typed,
    outdated: outdated !== undefined,
    check: (typed) => {
      const understood = read(typed)
      return understood.ok ? ok(understood.value.text) : fail(problemInWords(understood.error))
    },
    isNothing: (typed) => isUnitAlone(typed, dimension),
    keep: props.keep,
    clear: props.clear,
  })
  const draft = field.draft.value
  const understood = draft?.trim() ? read(draft) : undefined
  const value = shownQuantity(kept?.quantity, dimension, units)
  const text = draft ?? (focused.value ? (kept?.typed ?? '') : value.number)
  // An entry that the store takes late changes the text under the cursor: it stays marked, so that typing replaces it.
  useLayoutEffect(() => {
    if (draft === undefined && document.activeElement === input.current) input.current?.select()
  }, [text, draft])
  const foreseen = props.foresee && understood?.ok ? understood.value.text : undefined
  useEffect(() => {
    if (foreseen === undefined) return
    const timer = setTimeout(() => props.foresee?.(foreseen), HAND_RESTS_ms)
    return () => clearTimeout(timer)
  }, [foreseen])
  const next = () => {
    const typed = field.draft.value
    const isReadable = !typed?.trim() || isUnitAlone(typed, dimension) || read(typed).ok
    void field.commit()
    if (isReadable && input.current) focusNextEntry(input.current)
  }
  const asBefore =
    kept &&
    (() => {
      field.type(kept.typed)
      next()
    })
  const keypad = useKeypad(input, { dimension, units, text, asBefore, next })
  return (
    <div
      class="entry"
      data-kept={kept !== undefined}
      data-outdated={outdated !== undefined}
      data-focused={focused.value}
      onFocusIn={({ target }) => {
        focused.value = target === input.current
        if (!focused.value) void field.commit()
      }}
      onFocusOut={(event) => {
        const entry = event.currentTarget
        const isStaying = input.current?.dataset.staying !== undefined
        if (isStaying || entry.contains(event.relatedTarget as Node | null)) return
        afterPress(() => {
          if (entry.contains(document.activeElement)) return
          focused.value = false
          void field.commit()
        })
      }}
    >
      <label class="entry-label" for={id}>
        {t(label)}
      </label>
      <div class="entry-blank">
        <input
          ref={input}
          id={id}
          data-entry
          class="entry-value"
          type="text"
          {...keypad}
          autoComplete="off"
          autoCapitalize="off"
          spellcheck={false}
          enterKeyHint="next"
          aria-describedby={`${id}-unit ${id}-within ${id}-says`}
          aria-invalid={field.trouble.value !== undefined}
          value={text}
          onFocus={({ currentTarget: blank }) => {
            // At once and not with the next drawing, so that no key falls in between.
            blank.value = draft ?? kept?.typed ?? ''
            if (field.isLeftOver.value) blank.setSelectionRange(blank.value.length, blank.value.length)
            else blank.select()
          }}
          onInput={(event) => field.type(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key === 'Escape') field.letGo()
            if (event.key !== 'Enter') return
            // Else the same press would also take the answer that gets the focus.
            event.preventDefault()
            next()
          }}
        />
        <span class="entry-unit">
          <span id={`${id}-unit`}>{namesItsUnit(text) ? '' : value.unit}</span>
          {value.within !== undefined && draft === undefined && !focused.value && (
            <span class="entry-within" id={`${id}-within`}>
              ± {value.within}
            </span>
          )}
        </span>
      </div>
      <div class="entry-says" id={`${id}-says`}>
        <EntryMessage
          trouble={field.trouble.value}
          stillCounts={kept?.typed}
          isLeftOver={field.isLeftOver.value}
          understood={understood?.ok ? format(understood.value.quantity, units) : undefined}
          question={understood?.ok && props.question?.(understood.value.quantity, understood.value.text)}
          remark={props.remark}
          outdated={outdated}
          absent={kept ? undefined : props.absent}
        >
          {focused.value && props.howTo !== undefined && <p class="how-to">{t(props.howTo)}</p>}
          {props.children}
        </EntryMessage>
      </div>
      {focused.value && !isTouched.value && <EntryKeys {...{ dimension, units, input, asBefore, next }} />}
    </div>
  )
}
