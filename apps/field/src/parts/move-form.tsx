import { type Assessment, type Dose, doubtStep } from '@chargewright/charging'
import { bookUnits } from '@chargewright/ledger'
import { fail, ok, type Problem, type Quantity, type Result, type UnitPreference } from '@chargewright/quantity'
import type { FactOf } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import { useId, useRef } from 'preact/hooks'
import { COMPRESSOR, MOVED, PHASES, PORTS } from '../session/fact-in-words.ts'
import { inWords } from '../session/in-words.ts'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Kept } from '../session/session.ts'
import { understand } from '../session/understand.ts'
import { unitsLike } from '../session/units-like.ts'
import { problemInWords } from '../words/problem-in-words.ts'
import { t } from '../words/t.ts'
import { CautionList } from './caution-list.tsx'
import { Choices } from './choices.tsx'
import { EntryBlank } from './entry-blank.tsx'
import { Trouble } from './trouble.tsx'

type Move = FactOf<'refrigerant-moved'>

interface Props {
  /** Id of the field of the mass. */
  readonly massId: string
  /** What stands in the form at first: the step that was asked for, or the entry to correct. */
  readonly initial: Partial<Move>
  /** What to mind when refrigerant goes in, or comes out. */
  readonly beside?: Assessment['beside'] | undefined
  /** The step that was asked for, where it is one. */
  readonly dose?: Dose | undefined
  readonly units: UnitPreference
  readonly keepLabel?: string
  readonly keep: (move: Move) => Kept
}

const MASS = { label: 'Mass by the scale', accepts: ['mass'] } as const
const PARTS = {
  direction: { label: 'Direction', choices: MOVED },
  phase: { label: 'Phase', choices: PHASES },
  port: { label: 'Port', choices: PORTS },
  compressor: { label: 'Compressor', choices: COMPRESSOR },
} as const
type Part = keyof typeof PARTS

/** Gross weights, for a cylinder of which a book is kept. */
const WEIGHTS = {
  cylinderBefore: { label: 'The cylinder before', accepts: ['mass'], example: 'on the scale, if it was weighed' },
  cylinderAfter: { label: 'The cylinder after', accepts: ['mass'], example: 'on the scale, if it was weighed' },
  hoses: { label: 'Kept by the hoses', accepts: ['mass'], example: 'if it was recovered or lost: 0.5 oz or 15 g' },
} as const
type Weight = keyof typeof WEIGHTS

/** Refrigerant that went in or out, weighed. */
export function MoveForm({ massId, initial, beside, dose, units, keepLabel = 'Enter in the log', keep }: Props) {
  const id = useId()
  const move = useSignal<Partial<Move>>(initial)
  const trouble = useSignal<string | undefined>(undefined)
  const set = (part: Partial<Move>) => {
    move.value = { ...move.value, ...part }
    trouble.value = undefined
  }
  const sending = useRef(false)
  const submit = async () => {
    // A second press with a thick glove is no second step.
    if (sending.current) return
    const whole = wholeMove(move.value, initial, units)
    if (!whole.ok) {
      trouble.value = problemInWords(whole.error)
      return
    }
    sending.current = true
    const kept = await keep(whole.value)
    sending.current = false
    trouble.value = kept.ok ? undefined : notKeptInWords(kept.error)
    if (kept.ok) move.value = initial
  }
  const questionOf = (mass: Quantity<'mass'>) => {
    if (!dose || move.value.direction !== dose.direction) return undefined
    const doubt = doubtStep(mass, dose)
    return doubt && t('Doubtful. {0}', inWords(doubt, units))
  }
  const weight = (name: Weight) => ({
    ...WEIGHTS[name],
    id: `${id}-${name}`,
    units: unitsLike(initial[name], MASS.accepts, bookUnits(units)),
    before: initial[name],
    text: move.value[name] ?? '',
    type: (text: string) => set({ [name]: text }),
  })
  const choices = (part: Part) => (
    <Choices<string>
      label={PARTS[part].label}
      choices={PARTS[part].choices}
      chosen={move.value[part]}
      choose={(to) => set({ [part]: to })}
    />
  )
  return (
    <form
      class="form"
      onSubmit={(event) => {
        event.preventDefault()
        void submit()
      }}
    >
      {choices('direction')}
      {move.value.direction && <CautionList cautions={beside?.[move.value.direction] ?? []} units={units} />}
      <EntryBlank
        {...MASS}
        id={massId}
        units={unitsLike(initial.mass, MASS.accepts, units)}
        example={t('for example 6.25 oz or 180 g')}
        before={initial.mass}
        question={(mass) => questionOf(mass as Quantity<'mass'>)}
        text={move.value.mass ?? ''}
        type={(mass) => set({ mass })}
      />
      {choices('phase')}
      {choices('port')}
      {choices('compressor')}
      <label class="form-label" for={`${id}-cylinder`}>
        {t('Cylinder')}
      </label>
      <input
        id={`${id}-cylinder`}
        class="form-blank"
        autoComplete="off"
        placeholder={t('its mark, if you keep a cylinder book')}
        value={move.value.cylinder ?? ''}
        onInput={(event) => set({ cylinder: event.currentTarget.value })}
      />
      {move.value.cylinder !== undefined && move.value.cylinder.trim() !== '' && (
        <>
          <EntryBlank {...weight('cylinderBefore')} />
          <EntryBlank {...weight('cylinderAfter')} />
          <EntryBlank {...weight('hoses')} />
        </>
      )}
      {trouble.value !== undefined && <Trouble>{trouble.value}</Trouble>}
      <button type="submit" class="act">
        {t(keepLabel)}
      </button>
    </form>
  )
}

/** The move as an entry, or the first part that is missing or cannot be read. A bare number has the unit of what stood there. */
function wholeMove(typed: Partial<Move>, before: Partial<Move>, units: UnitPreference): Result<Move, Problem> {
  const { direction, phase, port, compressor, mass = '', cylinder = '', ...others } = typed
  const { cylinderBefore, cylinderAfter, hoses, ...rest } = others
  if (!direction) return fail(missing('direction'))
  if (!phase) return fail(missing('phase'))
  if (!port) return fail(missing('port'))
  if (!compressor) return fail(missing('compressor'))
  const weighed = understand(mass, MASS, unitsLike(before.mass, MASS.accepts, units))
  if (!weighed.ok) return weighed
  const marked = cylinder.trim() === '' ? {} : { cylinder: cylinder.trim() }
  const weights: Partial<Record<Weight, string>> = {}
  for (const [name, text = ''] of Object.entries({ cylinderBefore, cylinderAfter, hoses }) as [Weight, string?][]) {
    if (text.trim() === '') continue
    const read = understand(text, WEIGHTS[name], unitsLike(before[name], MASS.accepts, bookUnits(units)))
    if (!read.ok) return read
    weights[name] = read.value.text
  }
  const parts = { direction, mass: weighed.value.text, phase, port, compressor, ...marked, ...weights }
  return ok({ ...rest, kind: 'refrigerant-moved', ...parts })
}

function missing(part: Part): Problem {
  const { label, choices } = PARTS[part]
  return {
    kind: 'missing',
    field: label,
    value: 'nothing',
    accepted: Object.values(choices)
      .map((one) => t(one))
      .join(', '),
  }
}
