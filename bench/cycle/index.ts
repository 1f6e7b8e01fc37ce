import { execFileSync } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { cpus, loadavg, tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildSync } from 'esbuild'
import type { Measured } from './measure.ts'

/**
 * The twin's speed, robustness and targets; the figures go to bench/results. Bundled as an app would be: modules left
 * apart pay for every constant they import.
 *
 *   npm run bench -- cycle                  2,000 states per device
 *   npx tsx bench/cycle/index.ts 20000      as many as are asked for
 */
const states = process.argv[2] ?? '2000'
const root = join(import.meta.dirname, '../..')
const outfile = join(mkdtempSync(join(tmpdir(), 'bench-')), 'measure.mjs')
buildSync({
  entryPoints: [join(import.meta.dirname, 'measure.ts')],
  bundle: true,
  format: 'esm',
  platform: 'node',
  outfile,
  logLevel: 'error',
})
const measured = JSON.parse(execFileSync(process.execPath, [outfile, states], { encoding: 'utf8' })) as Measured

console.log(
  `yardstick, a million square roots and sums: ${measured.yardstick_ms.toFixed(2)} ms; "over" is a time over it`,
)
console.log('solving states of any season, charge and fault, ms')
show(measured.solving)
console.log('uses, ms')
show(measured.uses)
console.log(
  'differences with corrected slopes beside exact slopes: passes around the circuit per solve, and what one with slopes may cost',
)
show(measured.slopes)
console.log(`three partials carried along cost ${measured.dualOverPlain.toFixed(1)} times the plain arithmetic`)
console.log("tables: the twin's beside the refrigerant package's, ns")
show(measured.tables)
console.log(`robustness, ${states} states per device`)
show(measured.robustness)
console.log("target superheat of a fixed-orifice unit, °F rms from the published grid and from the trade's rule")
show(measured.targets.map(({ cells: _, ...rest }) => rest))

const machine = { cpu: cpus()[0]?.model ?? 'unknown', cores: cpus().length, node: process.version, load: loadavg() }
writeFileSync(
  join(root, 'bench/results/cycle.json'),
  `${JSON.stringify({ machine, ...measured }, rounded, 1).replace(/\n {4,}/g, ' ')}\n`,
)

function show(rows: readonly object[]): void {
  console.table(JSON.parse(JSON.stringify(rows, rounded)))
}

/** Four digits are more than any of these figures holds. */
function rounded(_: string, value: unknown): unknown {
  return typeof value === 'number' && !Number.isInteger(value) ? Number(value.toPrecision(4)) : value
}
