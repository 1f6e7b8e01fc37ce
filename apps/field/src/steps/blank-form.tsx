import { type Dimension, fail, ok, type Problem, type Result, type UnitPreference } from '@chargewright/quantity'
import { useSignal } from '@preact/signals'
import type { ComponentChildren } from 'preact'
import { useId, useRef } from 'preact/hooks'
import { EntryBlank } from '../parts/entry-blank.tsx'
import { Trouble } from '../parts/trouble.tsx'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Kept } from '../session/session.ts'
import { understand } from '../session/understand.ts'
import { unitsLike } from '../session/units-like.ts'
import { problemInWords } from '../words/problem-in-words.ts'
import { t } from '../words/t.ts'

/** One blank of a form: a quantity, or words where it accepts no dimension. */
export interface Blank {
  readonly label: string
  readonly accepts: readonly [] | readonly [Dimension, ...Dimension[]]
  readonly example: string
  /** May be left empty. */
  readonly optional?: boolean
  /** What stands in it at first. */
  readonly initial?: string | undefined
  /** How the typed text is read, where it means more than it says. */
  readonly readAs?: (typed: string) => string
}

/** What was typed into the blanks that were not left empty, each with its unit. */
export type Filled<Name extends string> = Readonly<Partial<Record<Name, string>>>

interface Props<Name extends string> {
  readonly blanks: Readonly<Record<Name, Blank>>
  readonly units: UnitPreference
  readonly keepLabel: string
  readonly keep: (filled: Filled<Name>) => Kept
  /** What was typed stays in the blanks when it was taken. */
  readonly stays?: boolean
  /** Choices and words above the blanks. */
  readonly children?: ComponentChildren
}

/** A few blanks that are kept together. A blank that must be filled, or cannot be read, is named; nothing is lost. */
export function BlankForm<Name extends string>({
  blanks,
  units,
  keepLabel,
  keep,
  stays = false,
  children,
}: Props<Name>) {
  const id = useId()
  const typed = useSignal<Filled<Name>>(NOTHING)
  const trouble = useSignal<string | undefined>(undefined)
  const sending = useRef(false)
  const names = Object.keys(blanks) as Name[]
  const textOf = (name: Name) => typed.value[name] ?? blanks[name].initial ?? ''
  const submit = async () => {
    if (sending.current) return
    const filled = filledIn(blanks, textOf, units)
    if (!filled.ok) {
      trouble.value = problemInWords(filled.error)
      return
    }
    sending.current = true
    const kept = await keep(filled.value)
    sending.current = false
    trouble.value = kept.ok ? undefined : notKeptInWords(kept.error)
    if (kept.ok && !stays) typed.value = NOTHING
  }
  return (
    <form
      class="form"
      onSubmit={(event) => {
        event.preventDefault()
        void submit()
      }}
    >
      {children}
      {names.map((name) => {
        const { label, accepts, example, readAs } = blanks[name]
        const type = (text: string) => {
          typed.value = { ...typed.value, [name]: text }
          trouble.value = undefined
        }
        const place = { id: `${id}-${name}`, label, example, type, text: textOf(name) }
        if (accepts.length === 0) return <WordsBlank key={name} {...place} />
        return (
          <EntryBlank key={name} {...place} accepts={accepts} units={unitsOf(blanks[name], units)} readAs={readAs} />
        )
      })}
      {trouble.value !== undefined && <Trouble>{trouble.value}</Trouble>}
      <button type="submit" class="act">
        {t(keepLabel)}
      </button>
    </form>
  )
}

const NOTHING: Filled<never> = {}

/** A number that takes the place of what stood in the blank at first has its unit. */
const unitsOf = ({ accepts, initial }: Blank, units: UnitPreference) => unitsLike(initial, accepts, units)

interface WordsProps {
  readonly id: string
  readonly label: string
  readonly example: string
  readonly text: string
  readonly type: (text: string) => void
}

function WordsBlank({ id, label, example, text, type }: WordsProps) {
  return (
    <div class="form-entry">
      <label class="form-label" for={id}>
        {t(label)}
      </label>
      <input
        id={id}
        class="form-blank"
        autoComplete="off"
        placeholder={t(example)}
        value={text}
        onInput={(event) => type(event.currentTarget.value)}
      />
    </div>
  )
}

function filledIn<Name extends string>(
  blanks: Readonly<Record<Name, Blank>>,
  textOf: (name: Name) => string,
  units: UnitPreference,
): Result<Filled<Name>, Problem> {
  const filled: Partial<Record<Name, string>> = {}
  for (const name of Object.keys(blanks) as Name[]) {
    const { label, accepts, example, optional = false, readAs = (text) => text } = blanks[name]
    const text = textOf(name).trim()
    if (text === '') {
      if (!optional) return fail({ kind: 'missing', field: label, value: 'nothing', accepted: example })
      continue
    }
    if (accepts.length === 0) {
      filled[name] = text
      continue
    }
    const read = understand(readAs(text), { label, accepts }, unitsOf(blanks[name], units))
    if (!read.ok) return read
    filled[name] = read.value.text
  }
  return ok(filled)
}
