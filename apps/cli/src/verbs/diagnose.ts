import { readMemory } from '@chargewright/diagnosis'
import { fail, ok, type Result, type UnitPreference } from '@chargewright/quantity'
import type { BatchVerb } from '../batch/answer-line.ts'
import { type DiagnoseAnswer, diagnose } from '../commands/diagnose.ts'
import { diagnoseJson } from '../commands/diagnose-json.ts'
import { diagnoseText } from '../commands/diagnose-text.ts'
import { atFault, type ExitCode, type Failure } from '../failure.ts'
import { EXAMPLES } from '../help-examples.ts'
import * as option from '../options.ts'
import { readJson } from '../read-json.ts'
import type { Terminal } from '../terminal.ts'
import { type Declaring, type FormFlags, printIn } from './declaring.ts'

interface Flags extends FormFlags {
  readonly memory?: string
}

/** Declares `diagnose`: which cause explains the readings, and how sure that is. */
export function declareDiagnose({ chargewright, terminal, end, batch }: Declaring): void {
  chargewright
    .command('diagnose')
    .summary('which cause explains the readings, how sure that is, and what to read next')
    .description('Weighs every cause by a model of this very system, and says why where it cannot.')
    .argument('[visit.json]', 'path of a visit file, or - for stdin')
    .option('--memory <file.json>', 'what earlier visits taught: the "memory" of an earlier answer')
    .addOption(option.units())
    .addOption(option.json('every cause and what it would have made of the readings'))
    .addOption(option.batch('a visit file', 'memory'))
    .addHelpText('after', EXAMPLES.diagnose)
    .action((path: string | undefined, flags: Flags, command) =>
      end(
        flags.batch ? batch(command, diagnoseBatch(option.UNIT_SYSTEMS[flags.units])) : answer(path, flags, terminal),
      ),
    )
}

async function answer(path: string | undefined, flags: Flags, terminal: Terminal): Promise<ExitCode> {
  const found = await diagnosed(path, flags, terminal)
  return printIn(flags, found, { text: diagnoseText, json: diagnoseJson }, terminal)
}

async function diagnosed(
  path: string | undefined,
  { memory: memoryPath }: Flags,
  terminal: Terminal,
): Promise<Result<DiagnoseAnswer, Failure>> {
  const visit = await readJson(path, 'visit file', terminal)
  if (!visit.ok) return visit
  const kept = memoryPath === undefined ? undefined : await readJson(memoryPath, 'memory', terminal)
  if (kept && !kept.ok) return kept
  const memory = kept && readMemory(kept.value)
  if (memory && !memory.ok) return fail(atFault([memory.error]))
  const found = diagnose(visit.value, memory?.value)
  return found.ok ? found : fail(atFault(found.error))
}

const diagnoseBatch =
  (units: UnitPreference): BatchVerb =>
  (input) => {
    const found = diagnose(input)
    return found.ok ? ok(diagnoseJson(found.value, units)) : found
  }
