import { fail } from '@chargewright/quantity'
import { Option } from 'commander'
import { type EvacuationFlags, evacuation } from '../commands/evacuation.ts'
import { evacuationJson } from '../commands/evacuation-json.ts'
import { evacuationText } from '../commands/evacuation-text.ts'
import type { ExitCode } from '../failure.ts'
import { EXAMPLES } from '../help-examples.ts'
import * as option from '../options.ts'
import { readText } from '../read-text.ts'
import { badFlags, type Declaring, type FormFlags, printIn } from './declaring.ts'

/** Declares `evacuation`: whether a vacuum held, and what makes it rise. */
export function declareEvacuation({ chargewright, terminal, end }: Declaring): void {
  const answer = async (path: string | undefined, flags: EvacuationFlags & FormFlags): Promise<ExitCode> => {
    const forms = { text: evacuationText, json: evacuationJson }
    const log = await readText(path, 'vacuum log', terminal)
    if (!log.ok) return printIn(flags, log, forms, terminal)
    const finding = evacuation(log.value, flags)
    return printIn(flags, finding.ok ? finding : fail(badFlags(finding.error)), forms, terminal)
  }

  chargewright
    .command('evacuation')
    .summary('whether a vacuum held, and whether a leak or moisture makes it rise')
    .description('Judges the log of a vacuum gauge from the moment of shutting off.')
    .argument('[log.csv]', 'time and pressure on each line, or - for stdin')
    .addOption(
      new Option('--criterion <name>', 'specification: 300 to 500 micron in 1 h; habit: 250 to 500 in 10 min')
        .choices(['specification', 'habit'])
        .default('specification'),
    )
    .option('--start <pressure>', 'the maker’s own: pull down to, "300 micron", "40 Pa"')
    .option('--limit <pressure>', 'the same: not to rise above')
    .option('--hold <duration>', 'the same: for so long, "30 min"')
    .option('--resolution <pressure>', 'last digit of the gauge: "1 micron"')
    .option('--coldest <temperature>', 'of the coldest spot, where water would freeze unseen: "40 degF"')
    .option('--unit <unit>', 'of bare numbers, where no heading names one: micron, Pa')
    .addOption(option.units())
    .addOption(option.json('the finding'))
    .addHelpText('after', EXAMPLES.evacuation)
    .action((path: string | undefined, flags: EvacuationFlags & FormFlags) => end(answer(path, flags)))
}
