import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import type { Board } from './board.ts'
import type { LoopResult } from './closed-loop/loop-result.ts'
import type { Robustness } from './robustness.ts'

/** What was measured last, part by part: a run renews its own part and leaves the others. */
export interface Results {
  readonly board?: Board
  readonly robustness?: Robustness
  readonly loops?: readonly LoopResult[]
}

const FILE = new URL('../results/scoreboard.json', import.meta.url)

export function keep(renewed: Results): Results {
  const kept: Results = existsSync(FILE) ? JSON.parse(readFileSync(FILE, 'utf8')) : {}
  const results = { ...kept, ...renewed }
  writeFileSync(FILE, `${lined(JSON.stringify(results, short, 1))}\n`)
  // Read again, so that the page shows what the file holds.
  return JSON.parse(readFileSync(FILE, 'utf8'))
}

/** Four digits are more than the cases can give. */
const short = (_: string, value: unknown) =>
  typeof value === 'number' && !Number.isInteger(value) ? Number(value.toPrecision(4)) : value

/** An object that holds no other on one line. */
const lined = (json: string) => json.replace(/\{\s[^{}[\]]*\}/g, (leaf) => leaf.replace(/\s+/g, ' '))
