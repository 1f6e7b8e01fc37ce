import type { Dimension, UnitPreference } from '@chargewright/quantity'
import type { RefObject } from 'preact'
import { isSigned } from '../session/signed.ts'
import { offeredUnits } from '../session/unit-key.ts'
import { turnSign, withUnit } from '../session/with-unit.ts'
import { t } from '../words/t.ts'
import { typeWhole } from './keypad-field.ts'

interface Props {
  readonly dimension: Dimension
  readonly units: UnitPreference
  readonly input: RefObject<HTMLInputElement | null>
  /** Takes the value that stood there before. */
  readonly asBefore?: (() => void) | undefined
  /** Goes on to the next field; left out where there is none. */
  readonly next?: () => void
}

/**
 * The keys beside a field for a mouse; a finger gets the keypad. They are no stops of the Tab key: with a real keyboard
 * the unit is typed.
 */
export function EntryKeys({ dimension, units, input, asBefore, next }: Props) {
  const change = (by: (text: string) => string) => () =>
    input.current && typeWhole(input.current, by(input.current.value))
  return (
    // Pressing a key must not take the focus from the field.
    <fieldset class="keys" aria-label={t('Keys')} onMouseDown={(event) => event.preventDefault()}>
      {isSigned(dimension) && <Key label="±" name={t('Turn the sign')} press={change(turnSign)} />}
      {offeredUnits(dimension, units).map(({ symbol }) => (
        <Key key={symbol} label={symbol} press={change((text) => withUnit(text, symbol))} />
      ))}
      {asBefore && <Key label={t('As before')} press={asBefore} />}
      {next && <Key label={t('Next')} press={next} strong />}
    </fieldset>
  )
}

interface KeyProps {
  readonly label: string
  readonly name?: string
  readonly strong?: boolean
  readonly press: () => void
}

function Key({ label, name, strong = false, press }: KeyProps) {
  return (
    <button
      type="button"
      tabIndex={-1}
      class={strong ? 'key key-strong' : 'key'}
      aria-label={name ?? label}
      onClick={press}
    >
      {label}
    </button>
  )
}
