import { fail, type Result } from '@chargewright/quantity'
import { type LeakAnswer, leak } from '../commands/leak.ts'
import { leakText } from '../commands/leak-text.ts'
import { atFault, type ExitCode, type Failure, wrongUsage } from '../failure.ts'
import { print } from '../print.ts'
import { ifGiven, readFlags } from '../read-flags.ts'
import type { Terminal } from '../terminal.ts'
import { typedShare, typedTemperature } from '../typed-flag.ts'

/** The flags of `leak`, as typed. */
export interface LeakFlags {
  readonly lost?: string
  readonly at?: string
  readonly fill?: string
  readonly from?: string
  readonly topUpTo?: string
  readonly evaporating?: string
  readonly condensing?: string
  readonly json?: boolean
}

/** Tells what a leak makes of a blend. */
export async function answerLeak(
  refrigerant: string | undefined,
  flags: LeakFlags,
  terminal: Terminal,
): Promise<ExitCode> {
  const answer = readAndAsk(refrigerant, flags)
  return flags.json
    ? print(answer, { kind: 'json', write: (a) => a }, terminal)
    : print(answer, { kind: 'text', write: (a) => leakText(a, terminal.columns) }, terminal)
}

function readAndAsk(refrigerant: string | undefined, flags: LeakFlags): Result<LeakAnswer, Failure> {
  const { from } = flags
  const values = readFlags({
    temperature_K: ifGiven(flags.at, (text) => typedTemperature(text, 'at')),
    lost: ifGiven(flags.lost, (text) => typedShare(text, 'lost')),
    fill: ifGiven(flags.fill, (text) => typedShare(text, 'fill')),
    top_up_to: ifGiven(flags.topUpTo, (text) => typedShare(text, 'top-up-to')),
    evaporating_K: ifGiven(flags.evaporating, (text) => typedTemperature(text, 'evaporating')),
    condensing_K: ifGiven(flags.condensing, (text) => typedTemperature(text, 'condensing')),
  })
  if (!values.ok) return fail(atFault(values.error))
  const answer = leak({
    ...values.value,
    ...(refrigerant !== undefined && { refrigerant }),
    ...(from !== undefined && { from }),
  })
  return answer.ok ? answer : fail((answer.error.kind === 'missing' ? wrongUsage : atFault)([answer.error]))
}
