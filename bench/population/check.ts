import { performance } from 'node:perf_hooks'
import type { DeviceKind } from './case.ts'
import { anchors } from './check/anchors.ts'
import { atRating, overWeather } from './check/at-rating.ts'
import { samples } from './check/sample.ts'
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
  print('drawn again', redrawn(kind, 3 * count))
}

function redrawn(kind: DeviceKind, cases: number): string[] {
  const why = new Map<string, number>()
  const start = performance.now()
  for (const _ of drawCases({ kind, half: 'seen', count: cases, seed: 5 }, (refusal) =>
    why.set(refusal, (why.get(refusal) ?? 0) + 1),
  ));
  const each = (performance.now() - start) / cases
  const draws = cases + [...why.values()].reduce((a, b) => a + b, 0)
  return [
    `  ${cases} cases out of ${draws} draws, ${each.toFixed(0)} ms a case`,
    ...[...why].map(([refusal, n]) => `  ${refusal}: ${((100 * n) / draws).toFixed(1)} %`),
  ]
}

function print(title: string, lines: readonly string[]): void {
  console.log(`${title}\n${lines.join('\n')}\n`)
}
