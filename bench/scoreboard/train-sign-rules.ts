import { writeFileSync } from 'node:fs'
import { drawCases } from '../population/draw-cases.ts'
import { DEVICES } from './devices.ts'
import { learnNormal } from './judges/normal-model.ts'
import type { Seen } from './verdict.ts'

/** Learns what sound systems of the seen half show, for the sign rules: `npx tsx bench/scoreboard/train-sign-rules.ts`. */
const SYSTEMS = 250
const SEED = 4100

const models = DEVICES.map((kind) => {
  const sound: Seen[] = []
  for (const { plate, readings, truth } of drawCases({ kind, half: 'seen', count: Infinity, seed: SEED })) {
    if (truth.troubles.length === 0) sound.push({ plate, readings })
    if (sound.length === SYSTEMS) break
  }
  return [kind, learnNormal(sound)] as const
})

const short = (_: string, value: unknown) => (typeof value === 'number' ? Number(value.toPrecision(5)) : value)
const file = {
  title: 'What sound systems show: least squares over weather and nameplate, K',
  source: `${SYSTEMS} simulated sound systems of the seen half per device, seed ${SEED}`,
  models: Object.fromEntries(models),
}
writeFileSync(new URL('data/normal.json', import.meta.url), `${JSON.stringify(file, short, 1)}\n`)
