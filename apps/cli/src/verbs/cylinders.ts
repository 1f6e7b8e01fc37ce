import type { Command } from 'commander'
import { cylinders } from '../commands/cylinders.ts'
import { cylindersJson } from '../commands/cylinders-json.ts'
import { cylindersText } from '../commands/cylinders-text.ts'
import { EXAMPLES } from '../help-examples.ts'
import * as option from '../options.ts'
import type { Declaring, FormFlags } from './declaring.ts'
import { answerFile, fileBatch } from './file-verb.ts'

/** Declares `cylinders`: the balance of a cylinder book. */
export function declareCylinders({ chargewright, terminal, end, batch }: Declaring): void {
  const verb = { file: 'cylinder book', ask: cylinders, text: cylindersText, json: cylindersJson }
  chargewright
    .command('cylinders')
    .summary('what every cylinder holds and what still fits, and what does not add up')
    .description('Balances a cylinder book: content, room left, what each system got, and what does not add up.')
    .argument('[book.json]', 'path of a cylinder book, or - for stdin')
    .addOption(option.units())
    .addOption(option.json('the balance'))
    .addOption(option.batch('a cylinder book'))
    .addHelpText('after', EXAMPLES.cylinders)
    .action((path: string | undefined, flags: FormFlags, command: Command) => {
      const lines = fileBatch(verb, option.UNIT_SYSTEMS[flags.units])
      return end(flags.batch ? batch(command, lines) : answerFile(verb, path, flags, terminal))
    })
}
