import { fail, ok } from '@chargewright/quantity'
import type { TwinFlags } from '../commands/twin.ts'
import { atFault, type ExitCode } from '../failure.ts'
import { EXAMPLES } from '../help-examples.ts'
import * as option from '../options.ts'
import { readJson } from '../read-json.ts'
import { type Declaring, type FormFlags, printIn } from './declaring.ts'

/** Declares `twin`: the model of a system and its steady state. */
export function declareTwin({ chargewright, terminal, end }: Declaring): void {
  const answer = async (path: string | undefined, flags: TwinFlags & FormFlags): Promise<ExitCode> => {
    // Only here, so that no other verb waits for what it does not need.
    const [{ twin }, { twinText }, { twinJson }] = await Promise.all([
      import('../commands/twin.ts'),
      import('../commands/twin-text.ts'),
      import('../commands/twin-json.ts'),
    ])
    const forms = { text: twinText, json: twinJson }
    const data = await readJson(path, 'system file', terminal)
    if (!data.ok) return printIn(flags, data, forms, terminal)
    const found = twin(data.value, flags)
    return printIn(flags, found.ok ? ok(found.value) : fail(atFault(found.error)), forms, terminal)
  }

  chargewright
    .command('twin')
    .summary('a model of a system from its nameplate, and how it runs')
    .description('Sizes a model of a system from what its nameplate says, and tells how it runs. Estimated by model.')
    .argument('[system.json]', 'facts of a system, or a visit file; - for stdin')
    .option('--outdoor <temperature>', '"95 degF" (as last read in the visit, else as rated)')
    .option('--return <temperature>', 'air to the coil, dry bulb, "80 degF" (the same)')
    .option('--wet-bulb <temperature>', 'of that air, "67 degF" (the same)')
    .option('--charge <amount>', 'share of the nameplate charge, or mass: "90 %", "5 lb 14 oz"')
    .option(
      '--what-if <axis>',
      'charge, outdoor, wet-bulb, indoor-air, outdoor-air, restriction, non-condensable, wear, drier',
    )
    .addOption(option.units())
    .addOption(option.json('the system and its state'))
    .addHelpText('after', EXAMPLES.twin)
    .action((path: string | undefined, flags: TwinFlags & FormFlags) => end(answer(path, flags)))
}
