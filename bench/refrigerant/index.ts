import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { cpus, loadavg, tmpdir } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { buildSync } from 'esbuild'
import type { Measured } from './measure.ts'
import type { TableErrors } from './table-errors.ts'

/** Speed and size of the refrigerant package, and the errors of its tables; the figures go to bench/results. */
const FIRST_BUILD_OF = ['R-290', 'R-32', 'R-744', 'R-410A', 'R-407C', 'R-448A', 'R-463A']
const FIRST_BUILDS = 5
const root = join(import.meta.dirname, '../..')

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

const measure = bundle('bench/refrigerant/measure.ts', 'measure.mjs')
const measured = JSON.parse(execFileSync(process.execPath, [measure], { encoding: 'utf8' })) as Measured
const { engine, coverage, tables, leaks, errors } = measured

console.log('exact engine: saturation, µs per solve')
show(engine)
console.log('solved by T and by p, 213 K to 0.97 of critical, and from there to 0.998')
show(coverage)

console.log('tables: ns per look-up, build in ms, and the same asked of the exact engine and of a general library')
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
const quantities = Object.keys(errors['R-407C']!) as (keyof TableErrors)[]
const worst = quantities.map((quantity) => {
  const [name, of] = Object.entries(errors).reduce((a, b) =>
    (b[1][quantity]?.max ?? 0) > (a[1][quantity]?.max ?? 0) ? b : a,
  )
  return { quantity, worst: of[quantity].max, of: name, rms: of[quantity].rms }
})
show(worst)

console.log('vapour leak to 90 % in 12 steps, ms, and the whole answer with its chart errors')
show(leaks)

const machine = { cpu: cpus()[0]?.model ?? 'unknown', cores: cpus().length, node: process.version, load: loadavg() }
const result = { machine, size, engine, coverage, tables, firstBuilds, worst, leaks, errors }
writeFileSync(join(root, 'bench/results/refrigerant.json'), `${JSON.stringify(result, rounded, 1)}\n`)

function show(rows: object | readonly object[]): void {
  console.table(JSON.parse(JSON.stringify(rows, rounded)))
}

/** Four digits are more than any of these figures holds. */
function rounded(_: string, value: unknown): unknown {
  return typeof value === 'number' && !Number.isInteger(value) ? Number(value.toPrecision(4)) : value
}
