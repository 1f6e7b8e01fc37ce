import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { cpus, loadavg, tmpdir } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { buildSync } from 'esbuild'
import { kelvin } from '../../packages/quantity/src/index.ts'
import { findRefrigerant, leak, type Refrigerant, refrigerantNames } from '../../packages/refrigerant/src/index.ts'
import { coverage, type EngineSpeed, engineSpeed } from './engine-speed.ts'
import { leakPathMilliseconds } from './leak-speed.ts'
import { type TableErrors, tableErrors } from './table-errors.ts'
import { type TableSpeed, tableSpeed } from './table-speed.ts'
import { milliseconds } from './time.ts'

/** Speed and size of the refrigerant package, and the errors of its tables; the figures go to bench/results. */
const SPEED_OF = [
  'R-290',
  'R-32',
  'R-22',
  'R-134a',
  'R-717',
  'R-744',
  'R-410A',
  'R-454B',
  'R-513A',
  'R-407C',
  'R-455A',
  'R-448A',
  'R-463A',
]
const FIRST_BUILD_OF = ['R-290', 'R-32', 'R-744', 'R-410A', 'R-407C', 'R-448A', 'R-463A']
const FIRST_BUILDS = 5
const root = join(import.meta.dirname, '../..')

function computed(name: string): Refrigerant {
  const found = findRefrigerant(name)
  if (!found.ok) throw new Error(name)
  return found.value
}

const folder = mkdtempSync(join(tmpdir(), 'bench-'))
const bundle = (entry: string, name: string, minify = true): string => {
  const outfile = join(folder, name)
  buildSync({
    entryPoints: [join(root, entry)],
    bundle: true,
    format: 'esm',
    platform: 'neutral',
    minify,
    outfile,
    logLevel: 'error',
  })
  return outfile
}
const gzipped = (file: string): number => gzipSync(readFileSync(file), { level: 9 }).length

console.log('refrigerant package, minified and gzipped')
const size = {
  package_bytes: gzipped(bundle('packages/refrigerant/src/index.ts', 'package.mjs')),
  data_bytes: gzipped(bundle('packages/refrigerant/src/data.ts', 'data.mjs')),
}
show(size)

console.log('exact engine: saturation, µs per solve')
const speeds: EngineSpeed[] = SPEED_OF.map((name) => engineSpeed(computed(name)))
show(speeds)
const covered = coverage()
console.log('solved by T and by p, 213 K to 0.97 of critical, and from there to 0.998')
show(covered)

console.log('tables: ns per look-up, build in ms, and the same asked of the exact engine and of a general library')
const tables: TableSpeed[] = SPEED_OF.map((name) => tableSpeed(computed(name)))
show(tables)
console.log('ratios: exact engine over table, general piecewise-linear scale over table')
show(
  tables.map((t) => ({
    name: t.name,
    saturation: t.exactSaturation_ns / t.saturation_ns,
    vapour: t.exactVapour_ns / t.vapour_ns,
    general: t.generalSaturation_ns / t.saturation_ns,
  })),
)

console.log(`first table in a fresh process, ms: fastest of ${FIRST_BUILDS}`)
const entry = bundle('bench/refrigerant/first-build.ts', 'first-build.mjs', false)
const firstBuilds = FIRST_BUILD_OF.map((name) => {
  const runs = Array.from({ length: FIRST_BUILDS }, () => {
    return JSON.parse(execFileSync(process.execPath, [entry, name], { encoding: 'utf8' })) as {
      find_ms: number
      build_ms: number
    }
  })
  const best = runs.reduce((a, b) => (b.find_ms + b.build_ms < a.find_ms + a.build_ms ? b : a))
  return { name, ...best }
})
show(firstBuilds)

console.log('errors of the tables against the exact engine: worst of all refrigerants')
const errors = new Map<string, TableErrors>(refrigerantNames().map((name) => [name, tableErrors(computed(name))]))
const quantities = Object.keys(errors.get('R-407C')!) as (keyof TableErrors)[]
const worst = quantities.map((quantity) => {
  const [name, of] = [...errors].reduce((a, b) => ((b[1][quantity]?.max ?? 0) > (a[1][quantity]?.max ?? 0) ? b : a))
  return { quantity, worst: of[quantity].max, of: name, rms: of[quantity].rms }
})
show(worst)

console.log('vapour leak to 90 % in 12 steps, ms, and the whole answer with its chart errors')
const leaks = ['R-454B', 'R-407C', 'R-448A'].map((name) => {
  const refrigerant = computed(name)
  const answer = () => leak({ refrigerant, temperature: kelvin(298.15), lost: 0.9 })
  return { name, path_ms: leakPathMilliseconds(refrigerant), answer_ms: milliseconds(answer, 20) }
})
show(leaks)

const machine = { cpu: cpus()[0]?.model ?? 'unknown', cores: cpus().length, node: process.version, load: loadavg() }
const result = {
  machine,
  size,
  engine: speeds,
  coverage: covered,
  tables,
  firstBuilds,
  worst,
  leaks,
  errors: Object.fromEntries(errors),
}
writeFileSync(join(root, 'bench/results/refrigerant.json'), `${JSON.stringify(result, rounded, 1)}\n`)

function show(rows: object | readonly object[]): void {
  console.table(JSON.parse(JSON.stringify(rows, rounded)))
}

/** Four digits are more than any of these figures holds. */
function rounded(_: string, value: unknown): unknown {
  return typeof value === 'number' && !Number.isInteger(value) ? Number(value.toPrecision(4)) : value
}
