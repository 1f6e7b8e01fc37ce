import { fail } from '@chargewright/quantity'
import { Command, CommanderError } from 'commander'
import packageJson from '../package.json' with { type: 'json' }
import type { BatchVerb } from './batch/answer-line.ts'
import { runBatch } from './batch/run-batch.ts'
import { saturation } from './commands/saturation.ts'
import { saturationText } from './commands/saturation-text.ts'
import { state } from './commands/state.ts'
import { stateText } from './commands/state-text.ts'
import { EXIT_CODES, type ExitCode, internalError } from './failure.ts'
import { EXAMPLES } from './help-examples.ts'
import * as option from './options.ts'
import { print } from './print.ts'
import type { Terminal } from './terminal.ts'
import { declareAirflow } from './verbs/airflow.ts'
import { answerAssess } from './verbs/assess.ts'
import { assessBatch, leakBatch, listBatch, saturationBatch, stateBatch } from './verbs/batch.ts'
import { declareBench } from './verbs/bench.ts'
import { declareChart } from './verbs/chart.ts'
import { declareCompressor } from './verbs/compressor.ts'
import { declareCylinders } from './verbs/cylinders.ts'
import { declareDiagnose } from './verbs/diagnose.ts'
import { declareDose } from './verbs/dose.ts'
import { declareEvacuation } from './verbs/evacuation.ts'
import { answerLeak } from './verbs/leak.ts'
import { declareLeakRate } from './verbs/leak-rate.ts'
import { answerList } from './verbs/list.ts'
import { answerPoint } from './verbs/point.ts'
import { declarePressureTest } from './verbs/pressure-test.ts'
import { declareReport } from './verbs/report.ts'
import { declareTwin } from './verbs/twin.ts'
import { declareWeighIn } from './verbs/weigh-in.ts'

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
    .showHelpAfterError('What can be asked: chargewright --help; the keys of a verb: chargewright VERB --help')
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
    .summary('what a visit says about the charge')
    .description('Assesses a visit: the finding, why, what else it could be, and what to do next.')
    .argument('[visit.json]', 'path of a visit file, or - for stdin')
    .addOption(option.earlier())
    .addOption(option.units())
    .addOption(option.language())
    .addOption(option.json('the assessment'))
    .addOption(option.batch('a visit file', 'earlier', 'language'))
    .addHelpText('after', EXAMPLES.assess)
    .action((path, flags, command) => {
      const units = option.UNIT_SYSTEMS[flags.units as keyof typeof option.UNIT_SYSTEMS]
      return end(flags.batch ? batch(command, assessBatch(units)) : answerAssess(path, { ...flags, units }, terminal))
    })

  chargewright
    .command('saturation')
    .summary('bubble and dew point of a refrigerant')
    .description('Bubble and dew point of a refrigerant at a pressure or at a temperature.')
    .argument('[refrigerant]', REFRIGERANT)
    .addOption(option.pressure())
    .addOption(option.temperature().conflicts('pressure'))
    .addOption(option.altitude())
    .addOption(option.json('the two points'))
    .addOption(option.batch('{"refrigerant", "pressure_Pa"} or {"refrigerant", "temperature_K"}', ...POINT_FLAGS))
    .addHelpText('after', EXAMPLES.saturation)
    .action((refrigerant, flags, command) => {
      const verb = { ask: saturation, text: saturationText }
      return end(flags.batch ? batch(command, saturationBatch) : answerPoint(verb, refrigerant, flags, terminal))
    })

  chargewright
    .command('state')
    .summary('density, enthalpy, entropy and more at a pressure and a temperature')
    .description('The state of a refrigerant at a pressure and a temperature, or at a pressure and a share of vapour.')
    .argument('[refrigerant]', REFRIGERANT)
    .addOption(option.pressure())
    .addOption(option.temperature())
    .addOption(option.quality().conflicts('temperature'))
    .addOption(option.altitude())
    .addOption(option.json('the state'))
    .addOption(option.batch('{"refrigerant", "pressure_Pa", "temperature_K"} or with "quality"', ...POINT_FLAGS))
    .addHelpText('after', EXAMPLES.state)
    .action((refrigerant, flags, command) => {
      const verb = { ask: state, text: stateText }
      return end(flags.batch ? batch(command, stateBatch) : answerPoint(verb, refrigerant, flags, terminal))
    })

  chargewright
    .command('leak')
    .summary('what a leak makes of a blend: composition, pressure, error of its chart')
    .description('What a slow leak at rest makes of a blend: composition, pressure, and how wrong its chart then is.')
    .argument('[refrigerant]', 'such as R-407C, R-448A, 454b')
    .option('--lost <share>', 'of the mass: "20 %" or 0.2')
    .option('--at <temperature>', 'of the whole system at rest: "25 degC"')
    .option('--fill <share>', 'liquid, of the inner volume before the leak (30 % unless given)')
    .option('--from <phase>', 'where it leaks from: vapour or liquid (vapour unless given)')
    .option('--top-up-to <share>', 'mass after topping up with fresh refrigerant, of the first mass')
    .option('--evaporating <temperature>', 'dew temperature at which superheat is read (5 °C unless given)')
    .option('--condensing <temperature>', 'bubble temperature at which subcooling is read (40 °C unless given)')
    .addOption(option.json('the change'))
    .addOption(option.batch('{"refrigerant", "temperature_K", "lost", …}', ...LEAK_FLAGS))
    .addHelpText('after', EXAMPLES.leak)
    .action((refrigerant, flags, command) =>
      end(flags.batch ? batch(command, leakBatch) : answerLeak(refrigerant, flags, terminal)),
    )

  chargewright
    .command('list')
    .summary('the refrigerants: safety class, glide, boiling point, global warming potential')
    .description('The refrigerants that can be computed, or the facts on those named.')
    .argument('[refrigerant...]', 'only these')
    .addOption(option.json('everything known of each'))
    .addOption(option.batch('{"refrigerant"}'))
    .addHelpText('after', EXAMPLES.list)
    .action((names, flags, command) =>
      end(flags.batch ? batch(command, listBatch) : answerList(names, flags, terminal)),
    )

  const declaring = { chargewright, terminal, end, batch }
  declareDiagnose(declaring)
  declareAirflow(declaring)
  declareCompressor(declaring)
  declareEvacuation(declaring)
  declarePressureTest(declaring)
  declareWeighIn(declaring)
  declareCylinders(declaring)
  declareLeakRate(declaring)
  declareReport(declaring)
  declareTwin(declaring)
  declareChart(declaring)
  declareDose(declaring)
  declareBench(declaring)

  return chargewright
}

const REFRIGERANT = 'such as R-410A, 454b, propane, CO2'
const POINT_FLAGS = ['pressure', 'temperature', 'quality', 'altitude'] as const
const LEAK_FLAGS = ['lost', 'at', 'fill', 'from', 'topUpTo', 'evaporating', 'condensing'] as const

const exitCodes = () =>
  Object.entries(EXIT_CODES)
    .map(([code, meaning]) => `  ${code}  ${meaning}`)
    .join('\n')
