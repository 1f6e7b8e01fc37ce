import { type Dimension, format, type Quantity, type UnitPreference } from '@chargewright/quantity'
import { useSignal } from '@preact/signals'
import { useRef } from 'preact/hooks'
import { understand } from '../session/understand.ts'
import { isUnitAlone } from '../session/unit-key.ts'
import { t } from '../words/t.ts'
import { afterPress } from './after-press.ts'
import { EntryKeys } from './entry-keys.tsx'
import { isTouched, useKeypad } from './keypad-field.ts'
import { focusNextBlank } from './reveal.ts'

interface Props {
  readonly id: string
  readonly label: string
  readonly accepts: readonly Dimension[]
  readonly units: UnitPreference
  readonly example: string
  /** What stood there before, where there is something. */
  readonly before?: string | undefined
  /** What is doubtful about it, in words. */
  readonly question?: ((quantity: Quantity) => string | undefined) | undefined
  readonly text: string
  readonly type: (text: string) => void
  /** How the typed text is read, where it means more than it says. */
  readonly readAs?: ((typed: string) => string) | undefined
}

/** A blank for one quantity inside a form that is kept as a whole. */
export function EntryBlank({ id, label, accepts, units, example, before, question, text, type, readAs }: Props) {
  const input = useRef<HTMLInputElement>(null)
  const focused = useSignal(false)
  const [dimension] = accepts as readonly [Dimension]
  const asBefore = before === undefined ? undefined : () => type(before)
  const keypad = useKeypad(input, {
    dimension,
    units,
    text,
    asBefore,
    next: () => input.current && focusNextBlank(input.current),
  })
  const understood = understand(readAs ? readAs(text) : text, { label, accepts }, units)
  const doubt = understood.ok && question?.(understood.value.quantity)
  return (
    <div
      class="form-entry"
      onFocusIn={() => {
        focused.value = true
      }}
      onFocusOut={({ currentTarget }) =>
        afterPress(() => {
          focused.value = currentTarget.contains(document.activeElement)
        })
      }
    >
      <label class="form-label" for={id}>
        {t(label)}
      </label>
      <input
        ref={input}
        id={id}
        data-blank
        class="form-blank"
        autoComplete="off"
        placeholder={t(example)}
        aria-describedby={`${id}-says`}
        {...keypad}
        value={text}
        onFocus={({ currentTarget: blank }) => {
          // What is typed replaces what stands there; a unit alone waits for its number.
          if (isUnitAlone(text, dimension)) blank.setSelectionRange(0, 0)
          else blank.select()
        }}
        onInput={(event) => type(event.currentTarget.value)}
      />
      <div class="form-says" id={`${id}-says`}>
        {understood.ok && (
          <p>
            {t('reads as')} <strong>{format(understood.value.quantity, units)}</strong>
          </p>
        )}
        {doubt && <p class="doubt">{doubt}</p>}
      </div>
      {focused.value && !isTouched.value && <EntryKeys {...{ dimension, units, input, asBefore }} />}
    </div>
  )
}
