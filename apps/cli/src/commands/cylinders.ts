import { type BookBalance, balanceBook, type CylinderAccount, roomLeft } from '@chargewright/ledger'
import { ok, type Problem, type Quantity, type Result } from '@chargewright/quantity'
import { readCylinderBook } from './cylinder-book-file.ts'

/** The balance of a book, with what still fits into each cylinder that may be filled. */
export interface CylindersAnswer {
  readonly balance: BookBalance
  readonly room: ReadonlyMap<CylinderAccount, Result<Quantity<'mass'>, Problem>>
}

/** @param data a cylinder book, as its JSON was parsed */
export function cylinders(data: unknown): Result<CylindersAnswer, readonly Problem[]> {
  const book = readCylinderBook(data)
  if (!book.ok) return book
  const balance = balanceBook(book.value)
  const fillable = balance.cylinders.filter(({ cylinder }) => cylinder.refillable)
  return ok({ balance, room: new Map(fillable.map((account) => [account, roomLeft(account)])) })
}
