import type { Command } from 'commander'
import { leakRate } from '../commands/leak-rate.ts'
import { leakRateJson } from '../commands/leak-rate-json.ts'
import { leakRateText } from '../commands/leak-rate-text.ts'
import { EXAMPLES } from '../help-examples.ts'
import * as option from '../options.ts'
import type { Declaring, FormFlags } from './declaring.ts'
import { answerFile, fileBatch } from './file-verb.ts'

/** Declares `leak-rate`: what the law asks after refrigerant was added. */
export function declareLeakRate({ chargewright, terminal, end, batch }: Declaring): void {
  const verb = { file: 'leak history', ask: leakRate, text: leakRateText, json: leakRateJson }
  chargewright
    .command('leak-rate')
    .summary('leak rate of a system by both legal methods, what is due when, CO₂ equivalent')
    .description('The leak rate after an addition, by both methods, under each law on file; and what is due when.')
    .argument('[history.json]', 'path of a leak history, or - for stdin')
    .addOption(option.units())
    .addOption(option.json('the rates and clocks'))
    .addOption(option.batch('a leak history'))
    .addHelpText('after', EXAMPLES['leak-rate'])
    .action((path: string | undefined, flags: FormFlags, command: Command) => {
      const lines = fileBatch(verb, option.UNIT_SYSTEMS[flags.units])
      return end(flags.batch ? batch(command, lines) : answerFile(verb, path, flags, terminal))
    })
}
