import { quantity } from '@chargewright/quantity'
import fc from 'fast-check'
import type { BookEntry, Cylinder, CylinderBook, Movement } from '../src/index.ts'

export const kg = (si: number, u = 0.005) => quantity('mass', si, u)

/** Invented cylinders: one of new refrigerant, one for recovery. */
export const cylinder = (id: string, rest: Partial<Cylinder> = {}): Cylinder => ({
  id,
  refrigerant: 'R-410A',
  holds: 'new',
  refillable: true,
  tare: kg(8),
  waterCapacity: kg(20, 0),
  firstWeighing: kg(18),
  ...rest,
})

const mass = fc
  .tuple(fc.double({ min: 0, max: 40, noNaN: true }), fc.double({ min: 0, max: 0.05, noNaN: true }))
  .map(([si, u]) => kg(si, u))
const hostileMass = fc.oneof(
  fc.constantFrom(Number.NaN, -1, Number.POSITIVE_INFINITY, 1e9).map((si) => kg(si)),
  fc.constantFrom(Number.NaN, -1, Number.POSITIVE_INFINITY).map((u) => kg(1, u)),
)
const anyMass = fc.oneof({ weight: 12, arbitrary: mass }, { weight: 1, arbitrary: hostileMass })
const anyId = fc.constantFrom('m0', 'm1', 'm2', 'm3', 'm4', 'm5', '__proto__', '')

const movementWithoutId: fc.Arbitrary<Omit<Movement, 'id'>> = fc.record(
  {
    at: fc.constantFrom('2026-02-03T10:00:00Z', '2026-07-01', 'yesterday'),
    cylinder: fc.constantFrom('A', 'B', 'constructor', 'lost'),
    refrigerant: fc.constantFrom('R-410A', 'r410a', 'R-22', 'own blend', 'R-511A'),
    direction: fc.constantFrom('from-cylinder' as const, 'to-cylinder' as const),
    counterpart: fc.oneof(
      fc.record({ kind: fc.constant('system' as const), system: fc.constantFrom('shop', 'house', '__proto__') }),
      fc.record({ kind: fc.constant('elsewhere' as const), where: fc.constantFrom('supplier', 'reclaimer') }),
    ),
    weighing: fc.oneof(
      fc.record(
        {
          kind: fc.constant('before-and-after' as const),
          before: anyMass,
          after: anyMass,
          hoses: anyMass,
          stated: anyMass,
        },
        { requiredKeys: ['kind', 'before', 'after'] },
      ),
      fc.record({ kind: fc.constant('difference' as const), mass: anyMass }),
    ),
    visit: fc.constantFrom('v1', 'v2'),
  },
  { requiredKeys: ['at', 'cylinder', 'refrigerant', 'direction', 'counterpart', 'weighing'] },
)

export const anyMovement: fc.Arbitrary<Movement> = fc
  .tuple(anyId, movementWithoutId)
  .map(([id, movement]) => ({ id, ...movement }))

const anyEntry: fc.Arbitrary<BookEntry> = fc.oneof(
  { weight: 3, arbitrary: fc.record({ kind: fc.constant('moved' as const), movement: anyMovement }) },
  {
    weight: 1,
    arbitrary: fc.record(
      { kind: fc.constant('corrected' as const), movementId: anyId, replacement: movementWithoutId },
      { requiredKeys: ['kind', 'movementId'] },
    ),
  },
)

export const anyBook: fc.Arbitrary<CylinderBook> = fc
  .tuple(fc.array(anyEntry, { maxLength: 20 }), anyMass, fc.constantFrom('new' as const, 'recovered' as const))
  .map(([entries, firstWeighing, holds]) => ({
    cylinders: [cylinder('A', { firstWeighing }), cylinder('B', { holds }), cylinder('constructor'), cylinder('B')],
    entries,
  }))
