import { mkdir, writeFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { visitJsonSchema } from './visit-json-schema.ts'

const folder = fileURLToPath(new URL('../schemas/', import.meta.url))
const file = `${folder}visit.schema.json`

await mkdir(folder, { recursive: true })
await writeFile(file, `${JSON.stringify(visitJsonSchema(), null, 2)}\n`)
console.log(`written: ${file}`)
