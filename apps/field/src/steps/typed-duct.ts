import type { Duct } from '@chargewright/moist-air'
import { ok, type Problem, parse, type Result } from '@chargewright/quantity'

/** A duct by its inner size, as typed. */
export type TypedDuct = { readonly width: string; readonly height: string } | { readonly diameter: string }

export function readDuct(typed: TypedDuct): Result<Duct, Problem> {
  if ('diameter' in typed) {
    const diameter = parse(typed.diameter, 'length', { field: 'Diameter inside' })
    return diameter.ok ? ok({ kind: 'round', diameter: diameter.value }) : diameter
  }
  const width = parse(typed.width, 'length', { field: 'Width inside' })
  if (!width.ok) return width
  const height = parse(typed.height, 'length', { field: 'Height inside' })
  return height.ok ? ok({ kind: 'rectangular', width: width.value, height: height.value }) : height
}
