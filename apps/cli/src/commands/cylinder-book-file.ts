import type { CylinderBook, Movement } from '@chargewright/ledger'
import type { Problem, Result } from '@chargewright/quantity'
import { choice, fields, list, type Reader, text, truth, typed, variant } from '../json-reader.ts'
import { PLAIN } from '../typed-reading.ts'

const weight = typed('mass', PLAIN.scale)
/** Stamped on the cylinder, taken as exact. */
const stamp = typed('mass')

const cylinder = fields(
  {
    id: text,
    refrigerant: text,
    holds: choice('new', 'recovered'),
    refillable: truth,
    tare: stamp,
    waterCapacity: stamp,
    firstWeighing: weight,
  },
  {},
)

const counterpart = variant({
  system: fields({ kind: choice('system'), system: text }, {}),
  elsewhere: fields({ kind: choice('elsewhere'), where: text }, {}),
})

const weighing = variant({
  'before-and-after': fields(
    { kind: choice('before-and-after'), before: weight, after: weight },
    { hoses: weight, stated: weight },
  ),
  difference: fields({ kind: choice('difference'), mass: weight }, {}),
})

const MOVED = {
  at: text,
  cylinder: text,
  refrigerant: text,
  direction: choice('from-cylinder', 'to-cylinder'),
  counterpart,
  weighing,
}

const movement: Reader<Movement> = fields({ id: text, ...MOVED }, { visit: text })

const entry = variant({
  moved: fields({ kind: choice('moved'), movement }, {}),
  corrected: fields(
    { kind: choice('corrected'), movementId: text },
    { replacement: fields(MOVED, { visit: text }), reason: text },
  ),
})

const file = fields(
  {
    format: choice('chargewright-cylinders'),
    version: choice(1),
    cylinders: list(cylinder, 1000),
    entries: list(entry, 10_000),
  },
  { about: text },
)

/** Reads a cylinder book; weights without a ± are those of a charging scale. */
export const readCylinderBook = (data: unknown): Result<CylinderBook, readonly Problem[]> => file(data, 'cylinder book')
