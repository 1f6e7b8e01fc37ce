import type { Dose } from '@chargewright/charging'
import type { Dimension, Quantity, UnitPreference } from '@chargewright/quantity'
import { useSignal } from '@preact/signals'
import { Choices } from '../parts/choices.tsx'
import { EntryBlank } from '../parts/entry-blank.tsx'
import { MOVED_MASS } from '../parts/reveal.ts'
import { Trouble } from '../parts/trouble.tsx'
import { understand } from '../session/understand.ts'
import { problemInWords } from '../words/problem-in-words.ts'
import { t } from '../words/t.ts'
import type { Perform } from './bench-panel.tsx'
import type { Practised } from './practised.ts'

interface Props {
  readonly bench: Practised
  readonly asked: Dose | undefined
  readonly units: UnitPreference
  readonly isBusy: boolean
  readonly perform: Perform
}

const WAYS = { vapour: 'Add, as vapour', liquid: 'Add, as liquid', out: 'Recover' } as const
type Way = keyof typeof WAYS
const EMPTY = {
  'recover-evacuate-recharge': 'evacuate only',
  'replace-compressor': 'a new compressor and drier',
} as const
const FAN_SHARES = [0.7, 0.85, 1, 1.15] as const
const STEM_TURNS = [-1, -0.5, 0.5, 1] as const

/** Everything that can be done to the system on the bench, the unwise among it. */
export function BenchActs({ bench, asked, units, isBusy, perform }: Props) {
  const chosen = useSignal<Way | undefined>(undefined)
  // Until another is chosen it is the way that the finding asks for.
  const way = chosen.value ?? (asked?.direction === 'out-of-system' ? 'out' : 'vapour')
  const empty = useSignal<keyof typeof EMPTY>('recover-evacuate-recharge')
  return (
    <>
      <details class="group">
        <summary>
          <h3>{t('Weigh refrigerant in or out')}</h3>
        </summary>
        <p class="hint">
          {t(
            'As vapour through the suction port, compressor running. Liquid there breaks valves: the bench lets you, and counts it. Recover into the cylinder; nothing is ever vented.',
          )}
        </p>
        <Choices label={t('Which way')} choices={WAYS} chosen={way} choose={(to) => (chosen.value = to)} />
        <MassForm
          id={MOVED_MASS}
          label={t('Mass by the scale')}
          submit="Weigh it"
          units={units}
          isBusy={isBusy}
          perform={async ({ si }, typed) => {
            const done = await perform(
              way === 'out' ? { kind: 'recover', mass_kg: si } : { kind: 'add', mass_kg: si, phase: way },
              typed,
            )
            if (done) chosen.value = undefined
            return done
          }}
        />
      </details>
      <details class="group">
        <summary>
          <h3>{t('Mend, clean, adjust')}</h3>
        </summary>
        <div class="bench-keys">
          <Key
            isBusy={isBusy}
            label={t('Clean the indoor coil and filter')}
            press={() => perform({ kind: 'clean-indoor-coil' }, '')}
          />
          <Key
            isBusy={isBusy}
            label={t('Clean the condenser')}
            press={() => perform({ kind: 'clean-condenser' }, '')}
          />
          <Key
            isBusy={isBusy}
            label={t('Change the filter-drier')}
            press={() => perform({ kind: 'change-drier' }, '')}
          />
          <Key
            isBusy={isBusy}
            label={t('Open the doors, for a load')}
            press={() => perform({ kind: 'open-doors' }, '')}
          />
          {!bench.isRunning && (
            <Key isBusy={isBusy} label={t('Restart it')} press={() => perform({ kind: 'restart' }, '')} />
          )}
        </div>
        <fieldset class="bench-keys">
          <legend class="form-label">{t('Indoor fan, of its rated airflow')}</legend>
          {FAN_SHARES.map((share) => {
            const words = `${Math.round(100 * share)} %`
            return (
              <Key
                key={share}
                isBusy={isBusy}
                label={words}
                press={() => perform({ kind: 'indoor-fan', share }, words)}
              />
            )
          })}
        </fieldset>
        {bench.hasStem && (
          <fieldset class="bench-keys">
            <legend class="form-label">{t('Valve stem, turns clockwise')}</legend>
            {STEM_TURNS.map((turns) => {
              const words = `${turns > 0 ? '+' : '−'}${Math.abs(turns)}`
              return (
                <Key
                  key={turns}
                  isBusy={isBusy}
                  label={words}
                  press={() => perform({ kind: 'turn-stem', turns }, words)}
                />
              )
            })}
          </fieldset>
        )}
      </details>
      <details class="group">
        <summary>
          <h3>{t('Recover all, evacuate, weigh in')}</h3>
        </summary>
        <p class="hint">
          {t('It takes air and other non-condensables out of the circuit, and any doubt about the charge with it.')}
        </p>
        <Choices
          label={t('While it is empty')}
          choices={EMPTY}
          chosen={empty.value}
          choose={(to) => (empty.value = to)}
        />
        <MassForm
          id="recharged-mass"
          label={t('Mass to weigh in')}
          submit="Recover, evacuate, weigh in"
          units={units}
          isBusy={isBusy}
          perform={({ si }, typed) => perform({ kind: empty.value, mass_kg: si }, typed)}
        />
      </details>
      <button type="button" class="key" aria-disabled={isBusy} onClick={() => void perform({ kind: 'debrief' }, '')}>
        {t('End, and see what it was')}
      </button>
    </>
  )
}

interface KeyProps {
  readonly label: string
  readonly isBusy: boolean
  readonly press: () => Promise<boolean>
}

function Key({ label, isBusy, press }: KeyProps) {
  return (
    <button type="button" class="key" aria-disabled={isBusy} onClick={() => void press()}>
      {label}
    </button>
  )
}

interface MassProps {
  readonly id: string
  readonly label: string
  readonly submit: string
  readonly units: UnitPreference
  readonly isBusy: boolean
  readonly perform: (mass: Quantity, typed: string) => Promise<boolean>
}

const ACCEPTS: readonly Dimension[] = ['mass']

function MassForm({ id, label, submit, units, isBusy, perform }: MassProps) {
  const text = useSignal('')
  const trouble = useSignal<string | undefined>(undefined)
  const send = async () => {
    const understood = understand(text.value, { label, accepts: ACCEPTS }, units)
    if (!understood.ok) {
      trouble.value = problemInWords(understood.error)
      return
    }
    if (await perform(understood.value.quantity, understood.value.text)) text.value = ''
  }
  return (
    <form
      class="form"
      onSubmit={(event) => {
        event.preventDefault()
        void send()
      }}
    >
      <EntryBlank
        id={id}
        label={label}
        accepts={ACCEPTS}
        units={units}
        example={t('for example 5 oz')}
        text={text.value}
        type={(to) => {
          text.value = to
          trouble.value = undefined
        }}
      />
      {trouble.value !== undefined && <Trouble key={trouble.value}>{trouble.value}</Trouble>}
      <button type="submit" class="act" aria-disabled={isBusy}>
        {t(submit)}
      </button>
    </form>
  )
}
