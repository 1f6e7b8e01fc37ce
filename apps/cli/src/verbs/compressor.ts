import { fail } from '@chargewright/quantity'
import { Option } from 'commander'
import type { CompressorFlags } from '../commands/compressor.ts'
import { compressorJson, supplyJson } from '../commands/compressor-json.ts'
import { compressorText, supplyText } from '../commands/compressor-text.ts'
import type { ExitCode } from '../failure.ts'
import { EXAMPLES } from '../help-examples.ts'
import * as option from '../options.ts'
import { readText } from '../read-text.ts'
import { badFlags, type Declaring, type FormFlags, printIn } from './declaring.ts'

/** Declares `compressor`: a compressor against its maker's figures, and the supply that it runs on. */
export function declareCompressor({ chargewright, terminal, end }: Declaring): void {
  const group = chargewright
    .command('compressor')
    .summary('a compressor against its rating, and its supply voltage')
    .description('What a sound compressor would draw and move, what this one draws, and whether its supply is fit.')
    .addHelpText('after', EXAMPLES.compressor)

  const answerRating = async (
    path: string | undefined,
    flags: CompressorFlags & FormFlags & { readonly curve?: string },
  ): Promise<ExitCode> => {
    const forms = { text: compressorText, json: compressorJson }
    const file = await readText(path, 'compressor file', terminal)
    if (!file.ok) return printIn(flags, file, forms, terminal)
    const curve = flags.curve === undefined ? undefined : await readText(flags.curve, 'curve', terminal)
    if (curve && !curve.ok) return printIn(flags, curve, forms, terminal)
    // The matrices that a fit needs are loaded only here.
    const { compressor } = await import('../commands/compressor.ts')
    const answer = compressor(file.value, flags, curve?.value)
    return printIn(flags, answer.ok ? answer : fail(badFlags(answer.error)), forms, terminal)
  }

  const answerSupply = async (
    voltages: readonly string[],
    flags: FormFlags & { readonly nominal: string },
  ): Promise<ExitCode> => {
    const { supply } = await import('../commands/supply.ts')
    const finding = supply(voltages, flags.nominal)
    const forms = { text: supplyText, json: supplyJson }
    return printIn(flags, finding.ok ? finding : fail(badFlags(finding.error)), forms, terminal)
  }

  group
    .command('rating')
    .description('Expected flow, power and amps at two dew temperatures, and what was measured against them.')
    .argument('[figures]', 'ten coefficients as CSV or JSON; with --table, a table of points as CSV')
    .requiredOption(
      '--suction <reading>',
      'dew temperature at the suction port, or its pressure: "45 degF", "130 psig"',
    )
    .requiredOption('--discharge <reading>', 'the same at the discharge port')
    .option('--refrigerant <name>', 'needed with pressures and with --return-gas')
    .option('--return-gas <temperature>', 'of the suction gas at the compressor: "65 degF"; as rated without it')
    .option('--volts <reading>', 'at the terminals, running: "222 V"')
    .option('--amps <reading>', 'to be judged: "11.2 A"')
    .option('--watts <reading>', 'to be judged, drawn by what the figures are for: "2350 W"')
    .option('--flow <reading>', 'refrigerant, to be judged: "440 lb/h"')
    .option('--curve <path>', 'the maker’s, of the whole system, as CSV: it goes before the compressor’s')
    .option('--curve-of <quantity>', 'what its values are: "power W"')
    .option('--outdoor <temperature>', 'of the air entering the condenser, for the curve: "95 degF"')
    .option('--box <temperature>', 'of the air in the box or returning, for the curve: "38 degF"')
    .option('--table <quantity>', 'what a table of points gives: "current A", "mass flow lb/h", "power W"')
    .addOption(
      new Option('--degrees <scale>', 'of the temperatures in the table and the curve')
        .choices(['F', 'C'])
        .default('F'),
    )
    .option('--rated-superheat <difference>', 'of the return gas that the table is for: "20 degF"')
    .option('--rated-return <temperature>', 'the same as a temperature: "65 degF"')
    .option('--rated-volts <voltage>', 'that the table is for: "230 V"')
    .addOption(new Option('--phases <number>', 'that the table is for').choices(['1', '3']).default('1'))
    .addOption(option.altitude())
    .addOption(option.units())
    .addOption(option.json('what is expected'))
    .action((path: string | undefined, flags: CompressorFlags & FormFlags & { readonly curve?: string }) =>
      end(answerRating(path, flags)),
    )

  group
    .command('supply')
    .description('The supply voltage against the nameplate, and the unbalance of three phases.')
    .argument('<voltage...>', 'one, or three between phases, running: "462 V"')
    .requiredOption('--nominal <voltage>', 'on the nameplate: "460 V"')
    .addOption(option.units())
    .addOption(option.json('the finding'))
    .action((voltages: readonly string[], flags: FormFlags & { readonly nominal: string }) =>
      end(answerSupply(voltages, flags)),
    )
}
