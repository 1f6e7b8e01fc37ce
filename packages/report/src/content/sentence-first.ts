import { type Evidence, evidence, say } from '@chargewright/quantity'
import type { Check } from './check.ts'

/** The first of what was found is the sentence of a check; what it rests on and the others follow. */
export function sentenceFirst([first, ...others]: readonly Evidence[]): Pick<Check, 'sentence' | 'reasons'> {
  if (!first) return { sentence: say`nothing to judge`, reasons: [] }
  const { statement, source, from } = first
  const behind = source === undefined ? from : [evidence(say`The limit is that of the source`, source), ...from]
  return { sentence: statement, reasons: [...behind, ...others] }
}
