import { fail, type Problem, type Result } from '@chargewright/quantity'
import { type Command, Option } from 'commander'
import {
  type AirFlags,
  type AirflowAnswer,
  airflowByDrop,
  airflowByFan,
  airflowByHeat,
  type HeatFlags,
} from '../commands/airflow.ts'
import { airflowJson, traversePointsJson } from '../commands/airflow-json.ts'
import { airflowText, traversePointsText } from '../commands/airflow-text.ts'
import { airflowAcross, TRAVERSE_UNITS, type TraverseFlags, traverseHere } from '../commands/airflow-traverse.ts'
import type { ExitCode } from '../failure.ts'
import { EXAMPLES } from '../help-examples.ts'
import * as option from '../options.ts'
import { readText } from '../read-text.ts'
import { badFlags, type Declaring, type FormFlags, printIn } from './declaring.ts'

const FORMS = { text: airflowText, json: airflowJson }

/** Declares `airflow`: four ways to find it. */
export function declareAirflow({ chargewright, terminal, end }: Declaring): void {
  const airflow = chargewright
    .command('airflow')
    .summary('airflow from electric heat, a traverse, a pressure drop or a fan table')
    .description('The airflow at the density of the site, four ways, each with its uncertainty.')
    .addHelpText('after', EXAMPLES.airflow)

  const answered = (answer: Result<AirflowAnswer, readonly Problem[]>, flags: FormFlags): Promise<ExitCode> =>
    printIn(flags, answer.ok ? answer : fail(badFlags(answer.error)), FORMS, terminal)

  const fromTable = async (
    path: string | undefined,
    flags: FormFlags,
    find: (table: string) => Result<AirflowAnswer, readonly Problem[]>,
  ): Promise<ExitCode> => {
    const table = await readText(path, 'table', terminal)
    return table.ok ? answered(find(table.value), flags) : printIn(flags, table, FORMS, terminal)
  }

  withAir(airflow.command('heat'))
    .description('From volts, amps and the rise of temperature across the electric heater.')
    .requiredOption('--volts <reading>', 'at the heater, between lines: "240 V"')
    .requiredOption('--amps <reading>', 'in one line: "41 A"')
    .requiredOption('--rise <difference>', 'supply less return, out of sight of the heater: "21 degF"')
    .addOption(new Option('--phases <number>', 'of the heater').choices(['1', '3']).default('1'))
    .option('--blower <power>', 'of a blower that the amps do not include: "450 W"')
    .action((flags: HeatFlags & FormFlags) => end(answered(airflowByHeat(flags), flags)))

  withAir(airflow.command('traverse'))
    .description('From a reading at every point of a duct; without readings, where to hold the probe.')
    .argument('[reading...]', 'bare numbers in the unit of --in')
    .option('--width <length>', 'of a rectangular duct, inside: "20 in"')
    .option('--height <length>', 'of the same: "12 in"')
    .option('--diameter <length>', 'of a round duct, inside: "14 in"')
    .addOption(new Option('--in <unit>', 'of the readings').choices(TRAVERSE_UNITS).default('ft/min'))
    .action((readings: readonly string[], flags: TraverseFlags & FormFlags) =>
      end(readings.length > 0 ? answered(airflowAcross(readings, flags), flags) : pointsOf(flags)),
    )

  withAir(airflow.command('pressure-drop'))
    .description('From the pressure drop across a coil or filter and its maker’s table.')
    .argument('[table.csv]', 'with a heading of two units: CFM,inH2O')
    .requiredOption('--drop <reading>', 'across it: "0.22 inH2O"')
    .action((path: string | undefined, flags: AirFlags & FormFlags & { readonly drop: string }) =>
      end(fromTable(path, flags, (table) => airflowByDrop(table, flags))),
    )

  withAir(airflow.command('fan-table'))
    .description('From the external static pressure and the maker’s fan table, at the speed as set.')
    .argument('[table.csv]', 'with a heading of two units: inH2O,CFM')
    .requiredOption('--static <reading>', 'supply less return: "0.5 inH2O"')
    .action((path: string | undefined, flags: AirFlags & FormFlags & { readonly static: string }) =>
      end(fromTable(path, flags, (table) => airflowByFan(table, flags))),
    )

  const pointsOf = (flags: TraverseFlags & FormFlags): Promise<ExitCode> => {
    const points = traverseHere(flags)
    const forms = { text: traversePointsText, json: traversePointsJson }
    return printIn(flags, points.ok ? points : fail(badFlags(points.error)), forms, terminal)
  }
}

const withAir = (command: Command): Command =>
  command
    .option('--air <temperature>', 'of the air where it is measured: "70 degF"')
    .option('--humidity <reading>', 'of the same: its wet bulb, "63 degF", or "50 %"')
    .addOption(option.altitude())
    .option('--tons <capacity>', 'nominal: "3 ton", "10.5 kW"')
    .addOption(option.units())
    .addOption(option.json('the airflow'))
