import { traversePoints } from '@chargewright/moist-air'
import { quantity, type UnitPreference } from '@chargewright/quantity'
import { quantityInWords } from '../session/in-words.ts'
import { t } from '../words/t.ts'
import { readDuct, type TypedDuct } from './typed-duct.ts'

/** Where the probe is held in a duct, or that its size cannot be used. */
export function pointsInWords(typed: TypedDuct, units: UnitPreference): string {
  const duct = readDuct(typed)
  const points = duct.ok ? traversePoints(duct.value) : duct
  if (!points.ok) return t('The size of this duct cannot be used.')
  const along = (distances: readonly number[]) =>
    distances.map((m) => quantityInWords(quantity('length', m), units)).join(', ')
  return points.value.kind === 'round'
    ? t('So far from one wall, on each of two diameters at right angles: {0}', along(points.value.acrossDiameter_m))
    : t(
        'So far from one wall, across the width: {0}; across the height: {1}',
        along(points.value.acrossWidth_m),
        along(points.value.acrossHeight_m),
      )
}
