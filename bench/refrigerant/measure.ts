/**
 * Everything that is timed in one warm process, and the errors of the tables. Prints JSON. Run bundled, as the package
 * ships: modules left apart pay for every constant they import in the inner loops.
 */
import { kelvin } from '../../packages/quantity/src/index.ts'
import { findRefrigerant, leak, type Refrigerant, refrigerantNames } from '../../packages/refrigerant/src/index.ts'
import { coverage, type EngineSpeed, engineSpeed } from './engine-speed.ts'
import { leakPathMilliseconds } from './leak-speed.ts'
import { type TableErrors, tableErrors } from './table-errors.ts'
import { type TableSpeed, tableSpeed } from './table-speed.ts'
import { milliseconds } from './time.ts'

export interface Measured {
  readonly engine: readonly EngineSpeed[]
  readonly coverage: ReturnType<typeof coverage>
  readonly tables: readonly TableSpeed[]
  readonly leaks: readonly { readonly name: string; readonly path_ms: number; readonly answer_ms: number }[]
  readonly errors: Readonly<Record<string, TableErrors>>
}

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

function computed(name: string): Refrigerant {
  const found = findRefrigerant(name)
  if (!found.ok) throw new Error(name)
  return found.value
}

const measured: Measured = {
  engine: SPEED_OF.map((name) => engineSpeed(computed(name))),
  coverage: coverage(),
  tables: SPEED_OF.map((name) => tableSpeed(computed(name))),
  leaks: ['R-454B', 'R-407C', 'R-448A'].map((name) => {
    const refrigerant = computed(name)
    const answer = () => leak({ refrigerant, temperature: kelvin(298.15), lost: 0.9 })
    return { name, path_ms: leakPathMilliseconds(refrigerant), answer_ms: milliseconds(answer, 20) }
  }),
  errors: Object.fromEntries(refrigerantNames().map((name) => [name, tableErrors(computed(name))])),
}
console.log(JSON.stringify(measured))
