import type { UnitPreference } from '@chargewright/quantity'
import { assessJson } from '../commands/assess-json.ts'
import { assessText } from '../commands/assess-text.ts'
import type { ExitCode } from '../failure.ts'
import { print } from '../print.ts'
import type { Terminal } from '../terminal.ts'
import { type Language, wordsOf } from '../words/language.ts'
import { assessedVisit } from './assessed-visit.ts'

/** Assesses the visit file at a path, or the one on stdin for `-`, and prints what was found. */
export async function answerAssess(
  path: string | undefined,
  flags: {
    readonly units: UnitPreference
    readonly language: Language
    readonly json?: boolean
    readonly earlier?: readonly string[]
  },
  terminal: Terminal,
): Promise<ExitCode> {
  const words = await wordsOf(flags.language)
  const answer = await assessedVisit(path, flags.earlier ?? [], terminal)
  return flags.json
    ? print(answer, { kind: 'json', write: (a) => assessJson(a, flags.units, words) }, terminal)
    : print(answer, { kind: 'text', write: (a) => assessText(a, flags.units, terminal.columns, words) }, terminal)
}
