import { type BookFinding, bookUnits, type CylinderAccount, type SystemAccount } from '@chargewright/ledger'
import { describeProblem, format, type Quantity, quantity, render, type UnitPreference } from '@chargewright/quantity'
import { page, section } from '../text/page.ts'
import { wrap } from '../text/wrap.ts'
import type { CylindersAnswer } from './cylinders.ts'

/** What every cylinder holds and what still fits, what each system got, and what the book objects to. */
export function cylindersText({ balance, room }: CylindersAnswer, units: UnitPreference, width: number): string {
  const weighed = bookUnits(units)
  const shown = (mass: Quantity<'mass'>) => format(mass, weighed, true)
  const plain = (mass: Quantity<'mass'>) => format(quantity('mass', mass.si), weighed)
  const roomOf = (account: CylinderAccount) => {
    const left = room.get(account)
    if (left === undefined) return 'only to be emptied'
    return left.ok ? `room for ${plain(left.value)}` : 'fill limit not known'
  }
  const block = (name: string, words: string) => [...wrap(name, width, '  '), ...wrap(words, width, '    ')]
  const cylinderBlock = (account: CylinderAccount) =>
    block(
      `${account.cylinder.id}: ${account.cylinder.holds} ${account.refrigerants.join(' + ')}`,
      `holds ${shown(account.content)}, ${roomOf(account)}, unexplained ${shown(account.unexplained)}`,
    )
  const systemBlock = ({ system, refrigerant, charged, recovered, net }: SystemAccount) =>
    block(`${system}: ${refrigerant}`, `charged ${shown(charged)}, recovered ${shown(recovered)}, net ${shown(net)}`)
  const item = (mark: string, text: string) => wrap(text, width, `  ${mark} `)
  const finding = ({ sentence, movementId, source }: BookFinding) =>
    `${render(sentence, weighed)}${movementId === undefined ? '' : ` (movement ${movementId})`}; ${source}`
  const found = (severity: BookFinding['severity']) => balance.findings.filter((each) => each.severity === severity)

  return page(
    section(
      'Must not be, or must be undone',
      found('stop').flatMap((each) => item('!', finding(each))),
    ),
    section(
      'Weigh again, or remember what happened',
      found('check').flatMap((each) => item('?', finding(each))),
    ),
    section(
      'Left out, because it cannot stand',
      balance.problems.flatMap((each) => item('·', describeProblem(each))),
    ),
    section('Cylinders', balance.cylinders.flatMap(cylinderBlock)),
    section('Systems', balance.systems.flatMap(systemBlock)),
    wrap(
      'Every account closes: what the scale says between two entries is booked as unexplained. ± is about 95 %.',
      width,
    ),
  )
}
