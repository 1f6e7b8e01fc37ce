import { fail } from '@chargewright/quantity'
import { atFault, type ExitCode } from '../failure.ts'
import { EXAMPLES } from '../help-examples.ts'
import * as option from '../options.ts'
import { readJson } from '../read-json.ts'
import { type Declaring, type FormFlags, printIn } from './declaring.ts'

/** Declares `dose`: how much to move, with its interval and what was learnt. */
export function declareDose({ chargewright, terminal, end }: Declaring): void {
  const answer = async (path: string | undefined, flags: FormFlags): Promise<ExitCode> => {
    const [{ dose }, { doseText }, { doseJson }] = await Promise.all([
      import('../commands/dose.ts'),
      import('../commands/dose-text.ts'),
      import('../commands/dose-json.ts'),
    ])
    const forms = { text: doseText, json: doseJson }
    const data = await readJson(path, 'visit file', terminal)
    if (!data.ok) return printIn(flags, data, forms, terminal)
    const found = dose(data.value)
    return printIn(flags, found.ok ? found : fail(atFault(found.error)), forms, terminal)
  }

  chargewright
    .command('dose')
    .summary('how much to add or recover, with its interval, and what the readings taught')
    .description('Sizes the next weighed step by a model of this very system, and says why where it cannot.')
    .argument('[visit.json]', 'path of a visit file, or - for stdin')
    .addOption(option.units())
    .addOption(option.json('the step and what was learnt'))
    .addHelpText('after', EXAMPLES.dose)
    .action((path: string | undefined, flags: FormFlags) => end(answer(path, flags)))
}
