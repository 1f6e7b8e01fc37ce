import { fail } from '@chargewright/quantity'
import { type PressureTestFlags, pressureTest } from '../commands/pressure-test.ts'
import { pressureTestJson } from '../commands/pressure-test-json.ts'
import { pressureTestText } from '../commands/pressure-test-text.ts'
import { EXAMPLES } from '../help-examples.ts'
import * as option from '../options.ts'
import { badFlags, type Declaring, type FormFlags, printIn } from './declaring.ts'

/** Declares `pressure-test`: whether a system under nitrogen lost pressure. */
export function declarePressureTest({ chargewright, terminal, end }: Declaring): void {
  const answer = (typed: readonly string[], flags: PressureTestFlags & FormFlags) => {
    const finding = pressureTest(typed, flags)
    const forms = { text: pressureTestText, json: pressureTestJson }
    return printIn(flags, finding.ok ? finding : fail(badFlags(finding.error)), forms, terminal)
  }

  chargewright
    .command('pressure-test')
    .summary('whether a system under nitrogen lost pressure, its temperature allowed for')
    .description('Judges a standing test: each later reading against the first.')
    .argument('[reading...]', 'two or more: "0 h, 300 psig, 90 degF" "12 h, 282.5 psig, 60 degF"')
    .option('--gauge-step <difference>', 'last digit, where one gauge reads every time: "1 psi"')
    .option('--thermometer-step <difference>', 'last digit, where one thermometer reads every time: "0.1 degF"')
    .addOption(option.altitude())
    .addOption(option.units())
    .addOption(option.json('the finding'))
    .addHelpText('after', EXAMPLES['pressure-test'])
    .action((typed: readonly string[], flags: PressureTestFlags & FormFlags) => end(answer(typed, flags)))
}
