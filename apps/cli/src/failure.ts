import type { Problem } from '@chargewright/quantity'
import { shorten } from './shorten.ts'

/** The exit codes of every verb; `chargewright --help` lists them in these words. */
export const EXIT_CODES = {
  0: 'answered; of a batch, every line, if only with its error',
  1: 'the input is at fault: a file, a value or a refrigerant',
  2: 'wrong usage: a verb, an option or a combination of options',
  3: 'an error inside the program',
} as const

export type ExitCode = keyof typeof EXIT_CODES

/** Why a verb gave no answer, and the code it ends with. */
export interface Failure {
  readonly exitCode: Exclude<ExitCode, 0>
  readonly problems: readonly Problem[]
}

export const atFault = (problems: readonly Problem[]): Failure => ({ exitCode: 1, problems })

export const wrongUsage = (problems: readonly Problem[]): Failure => ({ exitCode: 2, problems })

/** What is caught at the outermost place only: nothing that a user typed should lead here. */
export function internalError(error: unknown): Failure {
  const value = error instanceof Error ? `${error.name}: ${error.message}` : String(error)
  return {
    exitCode: 3,
    problems: [{ kind: 'unsolved', field: 'chargewright', value, accepted: 'this is a fault of the program' }],
  }
}

export const missing = (field: string, accepted: string): Problem => ({
  kind: 'missing',
  field,
  value: 'nothing',
  accepted,
})

export const unreadable = (field: string, value: string, accepted: string): Problem => ({
  kind: 'unreadable',
  field,
  value: shorten(value),
  accepted,
})

/** Why the platform refused, by its own code, such as `ENOENT`. */
export const codeOf = (error: unknown): string => (error instanceof Error && 'code' in error ? String(error.code) : '')
