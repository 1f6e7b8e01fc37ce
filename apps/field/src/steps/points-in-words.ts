import { traversePoints } from '@chargewright/moist-air'
import { quantity, type UnitPreference } from '@chargewright/quantity'
import { quantityInWords } from '../session/in-words.ts'
import { readDuct, type TypedDuct } from './typed-duct.ts'

/** Where the probe is held in a duct, or that its size cannot be used. */
export function pointsInWords(typed: TypedDuct, units: UnitPreference): string {
  const duct = readDuct(typed)
  const points = duct.ok ? traversePoints(duct.value) : duct
  if (!points.ok) return 'The size of this duct cannot be used.'
  const along = (distances: readonly number[]) =>
    distances.map((m) => quantityInWords(quantity('length', m), units)).join(', ')
  return points.value.kind === 'round'
    ? `So far from one wall, on each of two diameters at right angles: ${along(points.value.acrossDiameter_m)}`
    : `So far from one wall, across the width: ${along(points.value.acrossWidth_m)}; across the height: ${along(points.value.acrossHeight_m)}`
}
