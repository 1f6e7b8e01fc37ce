import { useEffect, useLayoutEffect, useRef } from 'preact/hooks'
import { erased, pressed } from '../session/keypad-edit.ts'
import { isSigned } from '../session/signed.ts'
import { unitKey } from '../session/unit-key.ts'
import { turnSign } from '../session/with-unit.ts'
import { t } from '../words/t.ts'
import {
  fingerKeys,
  followTouch,
  isTouched,
  type KeypadField,
  keypadField,
  typeInto,
  typeWhole,
} from './keypad-field.ts'
import { KeypadKey } from './keypad-key.tsx'
import { keepInSight, makeRoomFor } from './keypad-sight.ts'

const DIGITS = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '0'] as const

/** The keys for a finger in a glove: one keypad at the foot of the page, for whichever field has the focus. */
export function Keypad() {
  const keys = useRef<HTMLFieldSetElement>(null)
  useEffect(() => followTouch(window), [])
  const field = isTouched.value ? keypadField.value : undefined
  const layout = fingerKeys.value
  const isOpen = field !== undefined
  // From one field to the next the room stays as it is: to take it back and make it anew would lay out the page twice.
  useLayoutEffect(() => (isOpen && keys.current ? makeRoomFor(keys.current) : undefined), [isOpen])
  useLayoutEffect(
    () => (field && keys.current ? keepInSight(field.input, keys.current) : undefined),
    [field?.input, layout],
  )
  if (!field) return null
  return (
    // Pressing a key must not take the focus from the field.
    <fieldset
      ref={keys}
      class="keypad"
      data-layout={layout}
      aria-label={t('Keypad')}
      onMouseDown={(event) => event.preventDefault()}
    >
      {layout === 'keypad' ? <Keys field={field} /> : <KeysBesidePlatform field={field} />}
    </fieldset>
  )
}

function Keys({ field }: { readonly field: KeypadField }) {
  const { input, text, dimension } = field
  const edit = (change: typeof erased) => {
    const { selectionStart, selectionEnd } = input
    const end = selectionEnd ?? text.length
    const { text: edited, start } = change({ text: input.value, start: selectionStart ?? end, end })
    typeInto(input, edited, start)
  }
  const press = (character: string) => () => edit((marked) => pressed(marked, character))
  return (
    <>
      <KeypadKey place="letters" name={t('Letters, by the keyboard of this device')} press={() => turnKeys(field)}>
        ABC
      </KeypadKey>
      <AsBefore field={field} />
      <KeypadKey place="close" name={t('Close the keypad')} press={() => input.blur()}>
        <Drawn path="M5 9L12 16L19 9" />
      </KeypadKey>
      {DIGITS.map((digit) => (
        <KeypadKey key={digit} place={`digit-${digit}`} press={press(digit)}>
          {digit}
        </KeypadKey>
      ))}
      <KeypadKey place="point" name={t('Decimal point')} press={press('.')}>
        .
      </KeypadKey>
      <KeypadKey
        place="sign"
        name={t('Turn the sign')}
        disabled={!isSigned(dimension)}
        press={() => typeWhole(input, turnSign(input.value))}
      >
        ±
      </KeypadKey>
      <KeypadKey place="erase" name={t('Take back')} press={() => edit(erased)}>
        <Drawn path="M9 5H21V19H9L3 12ZM12 9L18 15M18 9L12 15" />
      </KeypadKey>
      <UnitKey field={field} />
      <NextKey field={field} />
    </>
  )
}

/** What the keyboard of a platform lacks. */
function KeysBesidePlatform({ field }: { readonly field: KeypadField }) {
  return (
    <>
      <KeypadKey place="letters" name={t('Keypad')} press={() => turnKeys(field)}>
        123
      </KeypadKey>
      <UnitKey field={field} />
      <AsBefore field={field} />
      <NextKey field={field} />
    </>
  )
}

interface FieldKeyProps {
  readonly field: KeypadField
}

function AsBefore({ field: { asBefore } }: FieldKeyProps) {
  return (
    <KeypadKey place="before" disabled={asBefore === undefined} press={() => asBefore?.()}>
      {t('As before')}
    </KeypadKey>
  )
}

function NextKey({ field: { next } }: FieldKeyProps) {
  return (
    <KeypadKey place="next" press={next}>
      {t('Next')}
    </KeypadKey>
  )
}

/** One key goes round all units: it shows the one that holds, and says which one comes. */
function UnitKey({ field: { input, text, dimension, units } }: FieldKeyProps) {
  const { now, next } = unitKey(text, dimension, units)
  const isOnly = next === now
  return (
    <KeypadKey
      place="unit"
      name={isOnly ? t('Unit {0}', now.symbol) : t('Unit {0}, press for {1}', now.symbol, next.symbol)}
      press={() => typeWhole(input, unitKey(input.value, dimension, units).press())}
    >
      <span class="keypad-unit">{now.symbol}</span>
      {!isOnly && <span class="keypad-next-unit">{t('then {0}', next.symbol)}</span>}
    </KeypadKey>
  )
}

function Drawn({ path }: { readonly path: string }) {
  return (
    <svg viewBox="0 0 24 24" aria-hidden="true">
      <path d={path} />
    </svg>
  )
}

/** Between our keys and those of the platform; a platform shows its own only to a field that gets the focus anew. */
function turnKeys({ input }: KeypadField): void {
  const to = fingerKeys.value === 'keypad' ? 'platform' : 'keypad'
  fingerKeys.value = to
  input.inputMode = to === 'keypad' ? 'none' : 'text'
  input.dataset.staying = ''
  input.blur()
  input.focus()
  delete input.dataset.staying
}
