import { fail, ok, type Problem, type Quantity, type Result } from '@chargewright/quantity'
import { type PointFlags, readPoint } from '../commands/point-flags.ts'
import { atFault, type ExitCode, type Failure, wrongUsage } from '../failure.ts'
import { print } from '../print.ts'
import type { Terminal } from '../terminal.ts'

/** What `saturation` and `state` ask of a refrigerant, in SI. */
interface PointQuestion {
  readonly refrigerant?: string
  readonly pressure_Pa?: number
  readonly temperature_K?: number
  readonly quality?: number
}

/** The two forms of one of these verbs. */
interface PointVerb<Answer extends object> {
  readonly ask: (question: PointQuestion) => Result<Answer, Problem>
  readonly text: (answer: Answer, atmosphere: Quantity<'absolute pressure'>, width: number) => string
}

/** Answers one question put by flags: reads them, asks, prints. */
export async function answerPoint<Answer extends object>(
  { ask, text }: PointVerb<Answer>,
  refrigerant: string | undefined,
  flags: PointFlags & { readonly json?: boolean },
  terminal: Terminal,
): Promise<ExitCode> {
  const asked = readAndAsk(ask, refrigerant, flags)
  return flags.json
    ? print(asked, { kind: 'json', write: ({ answer }) => answer }, terminal)
    : print(asked, { kind: 'text', write: (a) => text(a.answer, a.atmosphere, terminal.columns) }, terminal)
}

function readAndAsk<Answer>(
  ask: (question: PointQuestion) => Result<Answer, Problem>,
  refrigerant: string | undefined,
  flags: PointFlags,
): Result<{ readonly answer: Answer; readonly atmosphere: Quantity<'absolute pressure'> }, Failure> {
  const point = readPoint(flags)
  if (!point.ok) return fail(atFault(point.error))
  const { atmosphere, ...values } = point.value
  const answer = ask(refrigerant === undefined ? values : { refrigerant, ...values })
  if (answer.ok) return ok({ answer: answer.value, atmosphere })
  // What was not given at all is wrong usage; what was given and cannot be used is at fault.
  return fail((answer.error.kind === 'missing' ? wrongUsage : atFault)([answer.error]))
}
