import { balanceBook, bookOfVisit, roomLeft } from '@chargewright/ledger'
import { fold } from '@chargewright/visit'
import type { Tasks } from './protocol.ts'

/** The balance of every cylinder that came into the visit. */
export const cylindersOf: Tasks['cylinders'] = (events) => {
  const { book, problems } = bookOfVisit(fold(events))
  const balance = balanceBook(book)
  const room = balance.cylinders.map((account) => (account.cylinder.refillable ? roomLeft(account) : undefined))
  return { balance, room, problems }
}
