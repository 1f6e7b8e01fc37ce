import { type Dimension, preferredUnit, type UnitPreference, unitsOf } from '@chargewright/quantity'
import { turnSign, withUnit } from '../session/with-unit.ts'

/** Units that no instrument of the trade shows get no key; typed, they are read all the same. */
const WITHOUT_KEY: readonly string[] = ['Pa g', 'Pa a']

const SIGNED: readonly Dimension[] = ['temperature', 'temperature difference', 'elevation']

interface Props {
  readonly dimension: Dimension
  readonly units: UnitPreference
  readonly lettered: boolean
  readonly text: string
  readonly type: (text: string) => void
  readonly turnLetters: () => void
  /** Enters once more what stands there; only where that would tell anything. */
  readonly sameAgain?: (() => void) | undefined
  /** Goes on to the next field; left out where there is none. */
  readonly next?: () => void
}

/**
 * The keys that a phone's number pad lacks, for gloves. They are no stops of the Tab key: with a real keyboard the
 * unit is typed.
 */
export function EntryKeys({ dimension, units, lettered, text, type, turnLetters, sameAgain, next }: Props) {
  const preferred = preferredUnit(dimension, units)
  const offered = [
    preferred,
    ...unitsOf(dimension).filter((unit) => unit !== preferred && !WITHOUT_KEY.includes(unit.symbol)),
  ]
  return (
    // Pressing a key must not take the focus from the field.
    <fieldset class="keys" aria-label="Keys" onMouseDown={(event) => event.preventDefault()}>
      {SIGNED.includes(dimension) && <Key label="±" name="Turn the sign" press={() => type(turnSign(text))} />}
      {offered.map(({ symbol }) => (
        <Key key={symbol} label={symbol} press={() => type(withUnit(text, symbol))} />
      ))}
      <Key label={lettered ? '123' : 'ABC'} name={lettered ? 'Number pad' : 'Letters'} press={turnLetters} />
      {sameAgain && <Key label="Same again" press={sameAgain} />}
      {next && <Key label="Next" press={next} strong />}
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
