import { mkdir, writeFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { JSON_SCHEMAS } from './json-schemas.ts'

const folder = fileURLToPath(new URL('../schemas/', import.meta.url))

await mkdir(folder, { recursive: true })
for (const [name, schema] of Object.entries(JSON_SCHEMAS)) {
  const file = `${folder}${name}.schema.json`
  await writeFile(file, `${JSON.stringify(schema, null, 2)}\n`)
  console.log(`written: ${file}`)
}
