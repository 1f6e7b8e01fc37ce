/** Run in a process of its own: what the first table costs when nothing is compiled yet. Prints milliseconds as JSON. */
import { buildTable, findRefrigerant } from '../../packages/refrigerant/src/index.ts'

const start = performance.now()
const found = findRefrigerant(process.argv[2] ?? '')
const foundAt = performance.now()
if (!found.ok || !buildTable(found.value).ok) process.exit(1)
console.log(JSON.stringify({ find_ms: foundAt - start, build_ms: performance.now() - foundAt }))
