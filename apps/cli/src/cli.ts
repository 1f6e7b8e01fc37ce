import { fail, INCH_POUND, METRIC } from '@chargewright/quantity'
import { Command, CommanderError, Option } from 'commander'
import packageJson from '../package.json' with { type: 'json' }
import type { BatchVerb } from './batch/answer-line.ts'
import { runBatch } from './batch/run-batch.ts'
import { saturation } from './commands/saturation.ts'
import { saturationText } from './commands/saturation-text.ts'
import { state } from './commands/state.ts'
import { stateText } from './commands/state-text.ts'
import { EXIT_CODES, type ExitCode, internalError } from './failure.ts'
import { EXAMPLES } from './help-examples.ts'
import { print } from './print.ts'
import type { Terminal } from './terminal.ts'
import { answerAssess } from './verbs/assess.ts'
import { assessBatch, listBatch, saturationBatch, stateBatch } from './verbs/batch.ts'
import { answerList } from './verbs/list.ts'
import { answerPoint } from './verbs/point.ts'

/** Runs the program on its arguments and tells with which code to end. Never throws. */
export async function run(args: readonly string[], terminal: Terminal): Promise<ExitCode> {
  let exitCode: ExitCode = 0
  const verbs = program(terminal, async (ended) => {
    exitCode = await ended
  })
  try {
    await verbs.parseAsync(args, { from: 'user' })
    return exitCode
  } catch (error) {
    // Help that was asked for ends with 0; what the parser of the arguments refuses is wrong usage.
    if (error instanceof CommanderError) return error.exitCode === 0 ? 0 : 2
    return print(fail(internalError(error)), { kind: 'text', write: () => '' }, terminal)
  }
}

function program(terminal: Terminal, end: (ended: Promise<ExitCode>) => Promise<void>): Command {
  const chargewright = new Command('chargewright')
    .description('From the readings at a refrigeration or air-conditioning system to the right charge.')
    .version(packageJson.version)
    .exitOverride()
    .configureOutput({
      writeOut: (text) => void terminal.write(text),
      writeErr: (text) => terminal.complain(text),
      getOutHelpWidth: () => terminal.columns,
      getErrHelpWidth: () => terminal.columns,
    })
    .addHelpText('after', `\nExit codes:\n${exitCodes()}\n\nAll keys and formats: docs/cli.md`)

  /** Answers the whole input in place of one question, which then must not be asked as well. */
  const batch = (command: Command, verb: BatchVerb): Promise<ExitCode> => {
    if (command.args.length > 0) command.error('error: --batch reads its questions from stdin, one JSON object a line')
    return runBatch(verb, terminal).then(() => 0)
  }

  chargewright
    .command('assess')
    .summary('what a visit file says about the charge: add, recover, hold, not the charge, not ready, cannot tell')
    .description('Assesses a visit: the finding, why, what else it could be, and what to do next.')
    .argument('[visit.json]', 'path of a visit file, or - for stdin')
    .addOption(
      new Option('--units <system>', 'units of the sentences').choices(Object.keys(UNITS)).default('inch-pound'),
    )
    .option('--json', 'print the assessment as one JSON object')
    .option('--batch', 'read a visit file a line from stdin, write an assessment a line')
    .addHelpText('after', EXAMPLES.assess)
    .action((path, flags, command) => {
      const units = UNITS[flags.units as keyof typeof UNITS]
      return end(flags.batch ? batch(command, assessBatch(units)) : answerAssess(path, { ...flags, units }, terminal))
    })

  chargewright
    .command('saturation')
    .summary('bubble and dew point of a refrigerant')
    .description('Bubble and dew point of a refrigerant at a pressure or at a temperature.')
    .argument('[refrigerant]', 'such as R-410A, 454b, propane, CO2')
    .addOption(pressure())
    .addOption(temperature().conflicts('pressure'))
    .addOption(altitude())
    .option('--json', 'print the answer as one JSON object')
    .addOption(batchOption('{"refrigerant", "pressure_Pa"} or {"refrigerant", "temperature_K"}'))
    .addHelpText('after', EXAMPLES.saturation)
    .action((refrigerant, flags, command) =>
      end(
        flags.batch
          ? batch(command, saturationBatch)
          : answerPoint({ ask: saturation, text: saturationText }, refrigerant, flags, terminal),
      ),
    )

  chargewright
    .command('state')
    .summary('density, enthalpy, entropy and more at a pressure and a temperature')
    .description('The state of a refrigerant at a pressure and a temperature, or at a pressure and a share of vapour.')
    .argument('[refrigerant]', 'such as R-410A, 454b, propane, CO2')
    .addOption(pressure())
    .addOption(temperature())
    .addOption(new Option('--quality <share>', 'vapour by mass, 0 to 1, of a two-phase state').conflicts('temperature'))
    .addOption(altitude())
    .option('--json', 'print the answer as one JSON object')
    .addOption(batchOption('{"refrigerant", "pressure_Pa", "temperature_K"} or with "quality"'))
    .addHelpText('after', EXAMPLES.state)
    .action((refrigerant, flags, command) =>
      end(
        flags.batch
          ? batch(command, stateBatch)
          : answerPoint({ ask: state, text: stateText }, refrigerant, flags, terminal),
      ),
    )

  chargewright
    .command('list')
    .summary('the refrigerants: safety class, glide, boiling point, global warming potential')
    .description('The refrigerants that can be computed, or the facts on those named.')
    .argument('[refrigerant...]', 'only these')
    .option('--json', 'print everything known of each as one JSON list')
    .option('--batch', 'read {"refrigerant"} a line from stdin, write its facts a line')
    .addHelpText('after', EXAMPLES.list)
    .action((names, flags, command) =>
      end(flags.batch ? batch(command, listBatch) : answerList(names, flags, terminal)),
    )

  return chargewright
}

const UNITS = { 'inch-pound': INCH_POUND, metric: METRIC } as const

const pressure = () =>
  new Option('--pressure <reading>', '"118 psig", "8.1 bar g", "920 kPa a"; a bare psi or bar is a gauge')

const temperature = () => new Option('--temperature <reading>', '"40 degF", "4.5 °C", "278 K"')

const altitude = () =>
  new Option('--altitude <height>', 'of the site, "5000 ft" or "1500 m": gauge pressures count from its atmosphere')

const batchOption = (line: string) =>
  new Option('--batch', `read ${line} a line from stdin, write an answer a line`).conflicts([
    'pressure',
    'temperature',
    'quality',
    'altitude',
  ])

const exitCodes = () =>
  Object.entries(EXIT_CODES)
    .map(([code, meaning]) => `  ${code}  ${meaning}`)
    .join('\n')
