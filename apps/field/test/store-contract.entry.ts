import { browserStore } from '../src/store/browser-store.ts'
import { openDatabase } from '../src/store/database.ts'
import { STORE_CONTRACT } from '../src/store/store-contract.ts'

/** Runs every case on a fresh database and says how each went. */
export async function runContract(): Promise<Readonly<Record<string, string>>> {
  const outcomes: Record<string, string> = {}
  for (const [name, holds] of Object.entries(STORE_CONTRACT)) {
    const database = await openDatabase(`contract: ${name}`)
    outcomes[name] = database.ok
      ? await holds(browserStore(database.value)).then(() => 'holds', String)
      : database.error.kind
  }
  return outcomes
}

Object.assign(window, { runContract })
