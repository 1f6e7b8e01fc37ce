import { fail, type Problem, type Result } from '@chargewright/quantity'
import { METERING_DEVICES, type MeteringDevice } from '@chargewright/visit'
import { Option } from 'commander'
import { atFault, type ExitCode, unreadable } from '../failure.ts'
import { EXAMPLES } from '../help-examples.ts'
import * as option from '../options.ts'
import { type Declaring, type FormFlags, printIn } from './declaring.ts'

interface Flags extends FormFlags {
  readonly seed?: string
  readonly device: MeteringDevice
  readonly receiver?: boolean
}

/** Declares `bench`: practice on a system with a hidden fault. */
export function declareBench({ chargewright, terminal, end }: Declaring): void {
  const answer = async ({ seed: typed, device, receiver = false, ...flags }: Flags): Promise<ExitCode> => {
    const [{ benchSession, MOST_SEED }, { runPrompt, runScript }] = await Promise.all([
      import('@chargewright/cycle'),
      import('../bench/run-bench.ts'),
    ])
    const refuse = (problems: readonly Problem[]) =>
      printIn(flags, fail(atFault(problems)), { text: () => '', json: () => ({}) }, terminal)
    const seed = seedOf(typed ?? drawn(MOST_SEED), MOST_SEED)
    if (!seed.ok) return refuse([seed.error])
    const session = benchSession(seed.value, device, receiver)
    if (!session.ok) return refuse(session.error)
    const run = flags.json ? runScript : runPrompt
    await run(session.value, option.UNIT_SYSTEMS[flags.units], terminal)
    return 0
  }

  chargewright
    .command('bench')
    .summary('practice on an invented system with a hidden charge and fault')
    .description('PRACTICE on an invented system: find its charge and its fault, mend them, and see what each act did.')
    .option('--seed <n>', 'of the system, its fault and its weather; a new one unless given')
    .addOption(
      new Option('--device <kind>', 'its metering device')
        .choices(Object.keys(METERING_DEVICES))
        .default('fixed-orifice'),
    )
    .option('--receiver', 'with a receiver behind its condenser')
    .addOption(option.units())
    .addOption(new Option('--json', 'read one JSON object a line from stdin, write one a line'))
    .addHelpText('after', EXAMPLES.bench)
    .action((flags: Flags) => end(answer(flags)))
}

const drawn = (most: number) => String(1 + Math.floor(Math.random() * most))

function seedOf(typed: string, most: number): Result<number, Problem> {
  const seed = /^\d{1,10}$/.test(typed) ? Number(typed) : 0
  return seed >= 1 && seed <= most
    ? { ok: true, value: seed }
    : fail(unreadable('seed', typed, `a whole number from 1 to ${most}`))
}
