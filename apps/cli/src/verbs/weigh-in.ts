import { fail } from '@chargewright/quantity'
import { METERING_DEVICES } from '@chargewright/visit'
import { type Command, Option } from 'commander'
import { SYSTEM_FLAGS, type WeighInFlags, weighIn, weighInByFlags } from '../commands/weigh-in.ts'
import { weighInJson } from '../commands/weigh-in-json.ts'
import { weighInText } from '../commands/weigh-in-text.ts'
import { type ExitCode, missing, wrongUsage } from '../failure.ts'
import { EXAMPLES } from '../help-examples.ts'
import * as option from '../options.ts'
import { badFlags, type Declaring, type FormFlags, printIn } from './declaring.ts'
import { answerFile, fileBatch } from './file-verb.ts'

const VERB = { file: 'visit file', ask: weighIn, text: weighInText, json: weighInJson }

/** Declares `weigh-in`: the charge by weight, from a visit or from flags. */
export function declareWeighIn({ chargewright, terminal, end, batch }: Declaring): void {
  const answer = (
    path: string | undefined,
    { units, json, ...system }: WeighInFlags & FormFlags,
  ): Promise<ExitCode> => {
    const flags = { units, ...(json === undefined ? {} : { json }) }
    if (path !== undefined && Object.keys(system).length > 0) {
      const either = missing('one of the two', 'a visit file or the flags of a system, not both')
      return printIn(flags, fail(wrongUsage([either])), VERB, terminal)
    }
    if (path !== undefined) return answerFile(VERB, path, flags, terminal)
    const found = weighInByFlags(system)
    return printIn(flags, found.ok ? found : fail(badFlags(found.error)), VERB, terminal)
  }

  chargewright
    .command('weigh-in')
    .summary('the charge by weight: how much, with its parts, and the sequence')
    .description('The charge to weigh in, with its parts, and the sequence with its waits and stops.')
    .argument('[visit.json]', 'path of a visit file, or - for stdin; or the flags below')
    .option('--refrigerant <name>', 'on the nameplate: R-410A')
    .addOption(new Option('--metering-device <kind>', 'how the flow is metered').choices(Object.keys(METERING_DEVICES)))
    .option('--nameplate-charge <mass>', '"6 lb 4 oz"')
    .option('--line-length <length>', '"45 ft"')
    .option('--included-line-length <length>', 'that the nameplate includes: "15 ft"')
    .option('--line-charge-per-length <mass>', 'the maker’s: "0.6 oz/ft"')
    .option('--liquid-line-tube <size>', 'outside, in inches, where the maker says nothing: 3/8')
    .option('--liquid-temperature <reading>', 'in that line: "100 degF" (that, unless given)')
    .option('--old-drier-volume <volume>', 'inside: "8 in³"')
    .option('--new-drier-volume <volume>', 'inside: "16 in³"')
    .option('--flooding-charge <mass>', 'the maker’s, for head-pressure control: "3 lb"')
    .option(
      '--accessory <part>',
      'that was added: name, volume inside and share of liquid, "accumulator: 90 in³, 10 %"; may be given more than once',
      (part: string, before: readonly string[] = []) => [...before, part],
    )
    .option('--scale-step <mass>', 'of the charging scale: "0.5 oz" (5 g, unless given)')
    .option('--hose <size>', 'length and diameter inside: "60 in, 0.2 in"')
    .option('--cylinder-temperature <reading>', 'of the liquid in a charging cylinder: "85 degF"')
    .option('--cylinder-scale <temperature>', 'that its graduation in mass is for: "70 degF"')
    .addOption(option.units())
    .addOption(option.json('the charge and the sequence'))
    .addOption(option.batch('a visit file', ...SYSTEM_FLAGS))
    .addHelpText('after', EXAMPLES['weigh-in'])
    .action((path: string | undefined, flags: WeighInFlags & FormFlags, command: Command) => {
      const lines = fileBatch(VERB, option.UNIT_SYSTEMS[flags.units])
      return end(flags.batch ? batch(command, lines) : answer(path, flags))
    })
}
