import { writeFileSync } from 'node:fs'
import { cpus, loadavg } from 'node:os'
import { measured } from './measure.ts'

/** How long one diagnosis of all single causes and pairs takes, beside one solve of the twin in the same process. */
const result = measured()
console.table(result.devices)
const machine = { cpu: cpus()[0]?.model ?? '', cores: cpus().length, node: process.version, load: loadavg() }
const file = new URL('../results/diagnosis.json', import.meta.url)
writeFileSync(file, `${JSON.stringify({ machine, ...result }, null, 1)}\n`)
