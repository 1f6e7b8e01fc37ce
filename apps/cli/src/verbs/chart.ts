import { fail, ok, type Result } from '@chargewright/quantity'
import { Option } from 'commander'
import type { ChartAnswer, ChartFlags } from '../commands/chart.ts'
import { atFault, type ExitCode, type Failure } from '../failure.ts'
import { EXAMPLES } from '../help-examples.ts'
import * as option from '../options.ts'
import { readJson } from '../read-json.ts'
import { writeTo } from '../write-to.ts'
import { type Declaring, type FormFlags, printIn } from './declaring.ts'

interface Flags extends ChartFlags, FormFlags {
  readonly csv?: string
  readonly svg?: string
}

/** Declares `chart`: the charging chart of a system, estimated by model. */
export function declareChart({ chargewright, terminal, end }: Declaring): void {
  const answer = async (path: string | undefined, flags: Flags): Promise<ExitCode> => {
    const [{ chartText }, { chartJson }] = await Promise.all([
      import('../commands/chart-text.ts'),
      import('../commands/chart-json.ts'),
    ])
    const written = (a: Written) => a.files.map((file) => `wrote ${file}\n`).join('')
    const forms = {
      text: (a: Written, units: Parameters<typeof chartText>[1], width: number) =>
        `${chartText(a, units, width)}${written(a)}`,
      json: chartJson,
    }
    return printIn(flags, await charted(path, flags), forms, terminal)
  }

  const charted = async (path: string | undefined, flags: Flags): Promise<Result<Written, Failure>> => {
    const [{ chart }, { chartUnit }, { chartCsv, chartSvg }] = await Promise.all([
      import('../commands/chart.ts'),
      import('../commands/chart-text.ts'),
      import('@chargewright/cycle'),
    ])
    const data = await readJson(path, 'system file', terminal)
    if (!data.ok) return data
    const unit = chartUnit(option.UNIT_SYSTEMS[flags.units])
    const found = chart(data.value, flags, unit)
    if (!found.ok) return fail(atFault(found.error))
    const { csv, svg } = flags
    const failed =
      (csv === undefined ? undefined : await writeTo('csv', csv, chartCsv(found.value.chart, unit))) ??
      (svg === undefined ? undefined : await writeTo('svg', svg, chartSvg(found.value.chart, unit)))
    return failed ? fail(failed) : ok({ ...found.value, files: [csv, svg].flatMap((file) => file ?? []) })
  }

  chargewright
    .command('chart')
    .summary('the charging chart of a system, estimated by model')
    .description("Works out a charging chart where the maker's is lost: targets over weather. Estimated by model.")
    .argument('[system.json]', 'facts of a system, or a visit file; - for stdin')
    .addOption(
      new Option('--measure <name>', 'superheat (fixed devices, unless given) or subcooling (valves)').choices([
        'superheat',
        'subcooling',
      ]),
    )
    .addOption(
      new Option('--family <name>', 'indoor axis: wet bulb, or dry bulb at one humidity')
        .choices(['wet-bulb', 'dry-bulb'])
        .default('wet-bulb'),
    )
    .option('--humidity <share>', 'of the return air, with --family dry-bulb: "50 %" (that, unless given)')
    .option('--csv <chart.csv>', 'where to write it as a table')
    .option('--svg <chart.svg>', 'where to write it as a drawing')
    .addOption(option.units())
    .addOption(option.json('the chart'))
    .addHelpText('after', EXAMPLES.chart)
    .action((path: string | undefined, flags: Flags) => end(answer(path, flags)))
}

interface Written extends ChartAnswer {
  readonly files: readonly string[]
}
