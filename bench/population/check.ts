import { cpuUsage } from 'node:process'
import type { DeviceKind } from './case.ts'
import { anchors } from './check/anchors.ts'
import { atRating, overWeather } from './check/at-rating.ts'
import { type Sample, samples } from './check/sample.ts'
import { signs } from './check/signs.ts'
import { drawCases } from './draw-cases.ts'

/**
 * Prints whether these plants look like real ones: sound units at the rating point, published anchors and signs, what
 * had to be drawn again, and how long it takes.
 *
 *   npx tsx bench/population/check.ts [units per kind]
 */
const count = Number(process.argv[2] ?? 60)

for (const kind of ['fixed-orifice', 'capillary', 'thermostatic'] as const) {
  const all = samples(kind, count, 41)
  print(`${kind}: ${count} sound units at the rating point`, atRating(all))
  print('over weather', overWeather(all))
  print('anchors: published, then these plants', anchors(all))
  print('signs: mean shift, share of plants that agree with the published sign', signs(kind, all))
  print('one steady state, 15 % lean on a mild day', speed(all))
  print('drawn again', redrawn(kind, 3 * count))
}

function redrawn(kind: DeviceKind, cases: number): string[] {
  const why = new Map<string, number>()
  const tell = (refusal: string) => why.set(refusal, (why.get(refusal) ?? 0) + 1)
  const each = cpu_ms(() => [...drawCases({ kind, half: 'seen', count: cases, seed: 5 }, tell)]) / cases
  const draws = cases + [...why.values()].reduce((a, b) => a + b, 0)
  return [
    `  ${cases} cases out of ${draws} draws, ${each.toFixed(0)} ms of processor a case`,
    ...[...why].map(([refusal, n]) => `  ${refusal}: ${((100 * n) / draws).toFixed(1)} %`),
  ]
}

function speed(all: readonly Sample[]): string[] {
  const solve = cpu_ms(() => all.map((s) => s.now({ charge: 0.85, weather: { outdoor_K: 300 } }))) / all.length
  return [`  ${solve.toFixed(1)} ms of processor`]
}

/** Time of the processor and not of the wall, so that a busy machine does not count. */
function cpu_ms(work: () => unknown): number {
  const start = cpuUsage()
  work()
  return cpuUsage(start).user / 1000
}

function print(title: string, lines: readonly string[]): void {
  console.log(`${title}\n${lines.join('\n')}\n`)
}
