import { mkdir, writeFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { archiveJsonSchema } from './archive-json-schema.ts'
import { visitJsonSchema } from './visit-json-schema.ts'

const folder = fileURLToPath(new URL('../schemas/', import.meta.url))
const schemas = { visit: visitJsonSchema(), archive: archiveJsonSchema() }

await mkdir(folder, { recursive: true })
for (const [name, schema] of Object.entries(schemas)) {
  const file = `${folder}${name}.schema.json`
  await writeFile(file, `${JSON.stringify(schema, null, 2)}\n`)
  console.log(`written: ${file}`)
}
