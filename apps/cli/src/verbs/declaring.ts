import type { Problem, Result, UnitPreference } from '@chargewright/quantity'
import type { Command } from 'commander'
import type { BatchVerb } from '../batch/answer-line.ts'
import { atFault, type ExitCode, type Failure, wrongUsage } from '../failure.ts'
import { UNIT_SYSTEMS } from '../options.ts'
import { print } from '../print.ts'
import type { Terminal } from '../terminal.ts'

/** What a verb needs to declare itself: where it is hung, where it writes, and what takes its exit code. */
export interface Declaring {
  readonly chargewright: Command
  readonly terminal: Terminal
  readonly end: (ended: Promise<ExitCode>) => Promise<void>
  /** Answers every line of stdin in place of one question. */
  readonly batch: (command: Command, verb: BatchVerb) => Promise<ExitCode>
}

/** The flags that every verb with sentences has. */
export interface FormFlags {
  readonly units: keyof typeof UNIT_SYSTEMS
  readonly json?: boolean
  readonly batch?: boolean
}

/** The two forms of one answer, both in the reader's units. */
export interface Forms<Answer> {
  readonly text: (answer: Answer, units: UnitPreference, width: number) => string
  readonly json: (answer: Answer, units: UnitPreference) => object
}

export function printIn<Answer>(
  { units, json }: FormFlags,
  answer: Result<Answer, Failure>,
  forms: Forms<Answer>,
  terminal: Terminal,
): Promise<ExitCode> {
  const preference = UNIT_SYSTEMS[units]
  return json
    ? print(answer, { kind: 'json', write: (a) => forms.json(a, preference) }, terminal)
    : print(answer, { kind: 'text', write: (a) => forms.text(a, preference, terminal.columns) }, terminal)
}

/** What was not given at all is wrong usage; what was given and cannot be used is at fault. */
export const badFlags = (problems: readonly Problem[]): Failure =>
  problems.every(({ kind }) => kind === 'missing') ? wrongUsage(problems) : atFault(problems)
