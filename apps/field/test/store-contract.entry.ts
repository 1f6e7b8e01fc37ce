import { browserStore } from '../src/store/browser-store.ts'
import { STORE_CONTRACT } from '../src/store/store-contract.ts'

/** Runs every case on a fresh database and says how each went. */
export async function runContract(): Promise<Readonly<Record<string, string>>> {
  const outcomes: Record<string, string> = {}
  for (const [name, holds] of Object.entries(STORE_CONTRACT)) {
    const store = await browserStore(`contract: ${name}`)
    outcomes[name] = store.ok ? await holds(store.value).then(() => 'holds', String) : store.error.kind
  }
  return outcomes
}

Object.assign(window, { runContract })
