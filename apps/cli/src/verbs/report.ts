import { fail, ok, type Result } from '@chargewright/quantity'
import type { Check } from '@chargewright/report'
import { Option } from 'commander'
import type { AssessAnswer } from '../commands/assess.ts'
import { type ExitCode, type Failure, missing, wrongUsage } from '../failure.ts'
import { EXAMPLES } from '../help-examples.ts'
import * as option from '../options.ts'
import { print } from '../print.ts'
import { readJson } from '../read-json.ts'
import { readText } from '../read-text.ts'
import { type Language, wordsOf } from '../words/language.ts'
import { writeTo } from '../write-to.ts'
import { assessedVisit } from './assessed-visit.ts'
import { badFlags, type Declaring, type FormFlags } from './declaring.ts'

interface ReportFlags extends FormFlags {
  readonly out?: string
  readonly csv?: string
  readonly language: Language
  readonly paper?: 'A4' | 'LETTER'
  readonly earlier?: readonly string[]
  readonly pressureTest?: readonly string[]
  readonly evacuation?: string
  readonly cylinders?: string
}

/** Declares `report`: the service record of a visit, as PDF, CSV and JSON. */
export function declareReport({ chargewright, terminal, end }: Declaring): void {
  const answer = async (path: string | undefined, flags: ReportFlags): Promise<ExitCode> => {
    const written = await write(path, flags)
    return flags.json
      ? print(written, { kind: 'json', write: ({ record }) => record }, terminal)
      : print(
          written,
          { kind: 'text', write: ({ files }) => files.map((file) => `wrote ${file}\n`).join('') },
          terminal,
        )
  }

  const write = async (path: string | undefined, flags: ReportFlags): Promise<Result<Written, Failure>> => {
    const { out, csv, json } = flags
    if (out === undefined && csv === undefined && !json) {
      return fail(wrongUsage([missing('output', '-o record.pdf, --csv record.csv or --json')]))
    }
    const assessed = await assessedVisit(path, flags.earlier ?? [], terminal)
    if (!assessed.ok) return assessed
    const checks = await checksOf(assessed.value, flags)
    return checks.ok ? records(assessed.value, checks.value, flags) : checks
  }

  const checksOf = async ({ visit }: AssessAnswer, flags: ReportFlags): Promise<Result<readonly Check[], Failure>> => {
    const log =
      flags.evacuation === undefined ? ok(undefined) : await readText(flags.evacuation, 'vacuum log', terminal)
    if (!log.ok) return log
    const book =
      flags.cylinders === undefined ? ok(undefined) : await readJson(flags.cylinders, 'cylinder book', terminal)
    if (!book.ok) return book
    const sources = { pressureTest: flags.pressureTest, evacuation: log.value, cylinders: book.value }
    const { recordChecks } = await import('../commands/record-checks.ts')
    const checks = recordChecks(visit, sources, option.UNIT_SYSTEMS[flags.units])
    return checks.ok ? checks : fail(badFlags(checks.error))
  }

  const records = async (
    assessed: AssessAnswer,
    checks: readonly Check[],
    flags: ReportFlags,
  ): Promise<Result<Written, Failure>> => {
    // The writer of PDF and its fonts are loaded only here.
    const { recordFiles } = await import('../commands/report.ts')
    const { units, language, paper, out, csv } = flags
    const created = terminal.now()
    const files = recordFiles(assessed, {
      preference: option.UNIT_SYSTEMS[units],
      language: { tag: language, words: await wordsOf(language) },
      created,
      checks,
      ...(paper ? { paper } : {}),
    })
    if (out !== undefined) {
      const failed = await writeTo('output', out, await files.pdf())
      if (failed) return fail(failed)
    }
    if (csv !== undefined) {
      const failed = await writeTo('csv', csv, files.csv())
      if (failed) return fail(failed)
    }
    return ok({ files: [out, csv].flatMap((file) => file ?? []), record: files.json() })
  }

  chargewright
    .command('report')
    .summary('the service record of a visit, as PDF, CSV and JSON')
    .description('Writes the service record of a visit; an existing file of that name is replaced.')
    .argument('[visit.json]', 'path of a visit file, or - for stdin')
    .option('-o, --out <record.pdf>', 'where to write the PDF')
    .option('--csv <record.csv>', 'where to write the same as a table')
    .addOption(
      new Option('--paper <size>', 'Letter with inch-pound units and A4 with metric ones, unless given').choices([
        'A4',
        'LETTER',
      ]),
    )
    .addOption(option.earlier())
    .option(
      '--pressure-test <reading...>',
      'with the check of a standing test: "0 h, 300 psig, 90 degF" "12 h, 283 psig, 60 degF"',
    )
    .option('--evacuation <log.csv>', 'with the check of a vacuum, by the specification on file')
    .option('--cylinders <book.json>', 'with the balance of each cylinder of a book')
    .addOption(option.units())
    .addOption(option.language())
    .addOption(option.json('the record'))
    .addHelpText('after', EXAMPLES.report)
    .action((path: string | undefined, flags: ReportFlags) => end(answer(path, flags)))
}

interface Written {
  readonly files: readonly string[]
  readonly record: object
}
