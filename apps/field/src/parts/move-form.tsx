import { describeProblem, type UnitPreference } from '@chargewright/quantity'
import type { FactOf } from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import { useId } from 'preact/hooks'
import { COMPRESSOR, MOVED, PHASES, PORTS } from '../session/fact-in-words.ts'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Kept } from '../session/session.ts'
import { understand } from '../session/understand.ts'
import { Choices } from './choices.tsx'

type Move = FactOf<'refrigerant-moved'>

interface Props {
  /** Id of the field of the mass. */
  readonly massId: string
  /** What stands in the form at first: the step that was asked for, or the entry to correct. */
  readonly initial: Partial<Move>
  readonly units: UnitPreference
  readonly keep: (move: Move) => Kept
}

const MASS = { label: 'Mass by the scale', accepts: ['mass'] } as const

/** Refrigerant that went in or out, weighed. */
export function MoveForm({ massId, initial, units, keep }: Props) {
  const id = useId()
  const move = useSignal<Partial<Move>>(initial)
  const trouble = useSignal<string | undefined>(undefined)
  const { mass = '', direction, phase, port, compressor, cylinder = '' } = move.value
  const set = (part: Partial<Move>) => {
    move.value = { ...move.value, ...part }
    trouble.value = undefined
  }
  const submit = async () => {
    const missing = missingChoice(move.value)
    if (missing !== undefined || !direction || !phase || !port || !compressor) {
      trouble.value = missing
      return
    }
    const weighed = understand(mass, MASS, units)
    if (!weighed.ok) {
      trouble.value = describeProblem(weighed.error)
      return
    }
    const { cylinder: _, ...rest } = initial
    const named = cylinder.trim() === '' ? {} : { cylinder: cylinder.trim() }
    const entry = {
      ...rest,
      kind: 'refrigerant-moved',
      direction,
      mass: weighed.value.text,
      phase,
      port,
      compressor,
    } as const
    const kept = await keep({ ...entry, ...named })
    trouble.value = kept.ok ? undefined : notKeptInWords(kept.error)
    if (kept.ok) move.value = initial
  }
  return (
    <div class="form">
      <Choices label="Direction" choices={MOVED} chosen={direction} choose={(to) => set({ direction: to })} />
      <label class="form-label" for={massId}>
        {MASS.label}
      </label>
      <input
        id={massId}
        class="form-blank"
        autoComplete="off"
        placeholder="for example 6.25 oz or 180 g"
        value={mass}
        onInput={(event) => set({ mass: event.currentTarget.value })}
      />
      <Choices label="Phase" choices={PHASES} chosen={phase} choose={(to) => set({ phase: to })} />
      <Choices label="At the" choices={PORTS} chosen={port} choose={(to) => set({ port: to })} />
      <Choices label="With the" choices={COMPRESSOR} chosen={compressor} choose={(to) => set({ compressor: to })} />
      <label class="form-label" for={`${id}-cylinder`}>
        Cylinder
      </label>
      <input
        id={`${id}-cylinder`}
        class="form-blank"
        autoComplete="off"
        placeholder="its mark, if you keep a cylinder book"
        value={cylinder}
        onInput={(event) => set({ cylinder: event.currentTarget.value })}
      />
      {trouble.value !== undefined && (
        <p class="trouble" role="alert">
          {trouble.value}
        </p>
      )}
      <button type="button" class="act" onClick={() => void submit()}>
        Keep this move
      </button>
    </div>
  )
}

function missingChoice(move: Partial<Move>): string | undefined {
  const choices = { direction: MOVED, phase: PHASES, port: PORTS, compressor: COMPRESSOR } as const
  for (const [field, words] of Object.entries(choices)) {
    if (move[field as keyof typeof choices] === undefined) {
      return describeProblem({ kind: 'missing', field, value: 'nothing', accepted: Object.values(words).join(', ') })
    }
  }
  return undefined
}
