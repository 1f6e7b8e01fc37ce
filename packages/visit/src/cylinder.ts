import { type Problem, parse, type Quantity } from '@chargewright/quantity'
import type { FactOf } from './event.ts'
import { measured } from './measured.ts'
import { instrumentSort } from './plain-instrument.ts'
import type { Origin } from './visit.ts'

/** A cylinder as its stamps describe it, and what it weighed when it came into the visit. */
export interface WeighedCylinder extends Origin {
  readonly fact: FactOf<'cylinder-weighed'>
  /** Stamped, taken as exact. */
  readonly tare: Quantity<'mass'>
  readonly waterCapacity: Quantity<'mass'>
  readonly gross: Quantity<'mass'>
}

/** Gross weights of a cylinder before and after refrigerant moved, and what the hoses kept. */
export interface CylinderWeighing {
  readonly before: Quantity<'mass'>
  readonly after: Quantity<'mass'>
  readonly hoses?: Quantity<'mass'>
}

type Refuse = (problem: Problem) => void

/** Takes up a cylinder; a later description of the same one takes the place of the earlier one. */
export function takeCylinder(
  fact: FactOf<'cylinder-weighed'>,
  origin: Origin,
  cylinders: WeighedCylinder[],
  refuse: Refuse,
): void {
  const tare = parse(fact.tare, 'mass', { field: 'Tare of the cylinder' })
  const waterCapacity = parse(fact.waterCapacity, 'mass', { field: 'Water capacity of the cylinder' })
  const gross = onScale(fact.gross, 'Cylinder on the scale')
  for (const read of [tare, waterCapacity, gross]) if (!read.ok) refuse(read.error)
  if (!tare.ok || !waterCapacity.ok || !gross.ok) return
  const cylinder = { ...origin, fact, tare: tare.value, waterCapacity: waterCapacity.value, gross: gross.value }
  const place = cylinders.findIndex((each) => each.fact.cylinder === fact.cylinder)
  cylinders.splice(place < 0 ? cylinders.length : place, place < 0 ? 0 : 1, cylinder)
}

/** The gross weights of a move. One that cannot be read leaves the mass of the move as all there is. */
export function weighingOf(
  { cylinderBefore, cylinderAfter, hoses }: FactOf<'refrigerant-moved'>,
  refuse: Refuse,
): { readonly weighing?: CylinderWeighing } {
  if (cylinderBefore === undefined || cylinderAfter === undefined) return {}
  const before = onScale(cylinderBefore, 'Cylinder before')
  const after = onScale(cylinderAfter, 'Cylinder after')
  const kept = hoses === undefined ? undefined : onScale(hoses, 'Kept by the hoses')
  for (const read of [before, after, kept]) if (read && !read.ok) refuse(read.error)
  if (!before.ok || !after.ok) return {}
  return { weighing: { before: before.value, after: after.value, ...(kept?.ok && { hoses: kept.value }) } }
}

function onScale(typed: string, field: string) {
  const read = measured(typed, ['mass'], instrumentSort('charging-scale').accuracy, undefined, field)
  return read.ok ? { ok: true as const, value: read.value.quantity } : read
}
