import { add, quantity, subtract } from '@chargewright/quantity'
import type { Mass } from './cylinder.ts'
import type { Step } from './cylinder-account.ts'
import { designation } from './designation.ts'

/** What the cylinders of a book gave to one system and took from it, of one refrigerant. */
export interface SystemAccount {
  readonly system: string
  readonly refrigerant: string
  readonly charged: Mass
  readonly recovered: Mass
  /** Charged less recovered. */
  readonly net: Mass
  readonly movementIds: readonly string[]
}

/** One account per system and refrigerant, in the order in which they first appear. */
export function systemAccounts(steps: readonly Step[]): readonly SystemAccount[] {
  const accounts = new Map<string, SystemAccount>()
  for (const { movement, moved } of steps) {
    const { counterpart, direction, id } = movement
    if (counterpart.kind !== 'system') continue
    const refrigerant = designation(movement.refrigerant)
    const key = JSON.stringify([counterpart.system, refrigerant])
    const account = accounts.get(key) ?? emptyAccount(counterpart.system, refrigerant)
    const into = direction === 'from-cylinder'
    accounts.set(key, {
      ...account,
      charged: into ? add(account.charged, moved) : account.charged,
      recovered: into ? account.recovered : add(account.recovered, moved),
      net: into ? add(account.net, moved) : subtract(account.net, moved),
      movementIds: [...account.movementIds, id],
    })
  }
  return [...accounts.values()]
}

function emptyAccount(system: string, refrigerant: string): SystemAccount {
  const nothing = quantity('mass', 0)
  return { system, refrigerant, charged: nothing, recovered: nothing, net: nothing, movementIds: [] }
}
