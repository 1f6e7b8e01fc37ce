import {
  COVERAGE,
  evidence,
  type Measure,
  ok,
  type Problem,
  type Quantity,
  quantity,
  type Result,
  say,
} from '@chargewright/quantity'
import type { Refrigerant } from '@chargewright/refrigerant'
import { chargingCylinderMass } from './charging-cylinder-mass.ts'
import { liquidAt } from './contents.ts'
import { hoseHoldUp } from './hose-hold-up.ts'
import { PLAIN_SCALE, type Scale, weighedDifference } from './weighed-difference.ts'

type Mass = Quantity<'mass'>
type Temperature = Quantity<'temperature'>

/** With what a charge is measured out, as far as it was told. */
export interface WeighingGear {
  readonly scaleStep?: Mass
  readonly hose?: { readonly length: Quantity<'length'>; readonly inside: Quantity<'length'>; readonly at: Temperature }
  /** Temperature of the liquid in a charging cylinder. */
  readonly cylinder?: Temperature
  /** That which the graduation of the cylinder in mass is for. */
  readonly graduatedFor?: Temperature
}

/** What scale, hose and charging cylinder make of the charge that is to go in. */
export interface MeasuredOut {
  /** The charge as the scale knows it. */
  readonly byScale: Measure<Mass>
  /** What the hose holds. */
  readonly inHose?: Measure<Mass>
  /** By how much the level in the charging cylinder falls. */
  readonly fall?: Measure<Quantity<'volume'>>
  /** By how much its graduation falls. */
  readonly graduation?: Measure<Mass>
}

/**
 * What the gear makes of a charge.
 *
 * @param tolerance how far off the charge may be
 * @returns what could be reckoned of it; else the first problem with a size or a temperature
 */
export function measuredOut(
  refrigerant: Refrigerant,
  toGoIn: Mass,
  tolerance: Mass,
  { scaleStep, hose, cylinder, graduatedFor }: WeighingGear,
): Result<MeasuredOut, Problem> {
  const weighed = byScale(toGoIn, tolerance, scaleStep ? { ...PLAIN_SCALE, resolution_kg: scaleStep.si } : PLAIN_SCALE)
  if (!weighed.ok) return weighed
  const held = hose && inHose(refrigerant, hose)
  if (held && !held.ok) return held
  const fallen = cylinder && fall(refrigerant, toGoIn, cylinder)
  if (fallen && !fallen.ok) return fallen
  const read = fallen && graduatedFor && graduation(refrigerant, fallen.value.quantity, graduatedFor)
  if (read && !read.ok) return read
  return ok({
    byScale: weighed.value,
    ...(held && { inHose: held.value }),
    ...(fallen && { fall: fallen.value }),
    ...(read && { graduation: read.value }),
  })
}

/** The cylinder before less after, by one scale. */
function byScale(toGoIn: Mass, tolerance: Mass, scale: Scale): Result<Measure<Mass>, Problem> {
  const weighed = weighedDifference(toGoIn, quantity('mass', 0), scale)
  if (!weighed.ok) return weighed
  const fine = COVERAGE * (weighed.value.u ?? 0) <= tolerance.si
  const step = quantity('mass', scale.resolution_kg)
  const statement = fine
    ? say`${weighed.value} by a scale with steps of ${step}: fine enough for ${tolerance}`
    : say`${weighed.value} by a scale with steps of ${step}: too coarse for ${tolerance}, take a finer one`
  return ok({ quantity: weighed.value, evidence: evidence(statement, 'charging scale, common practice (recalled)') })
}

function inHose(
  refrigerant: Refrigerant,
  { at, ...size }: NonNullable<WeighingGear['hose']>,
): Result<Measure<Mass>, Problem> {
  const liquid = liquidAt(refrigerant, at)
  if (!liquid.ok) return liquid
  const held = hoseHoldUp(size, liquid.value)
  if (!held.ok) return held
  const statement = say`Fill the hose before the scale is set to zero, as the sequence says: filled after it, the hose would keep ${held.value.quantity} of what left the cylinder`
  return ok({
    quantity: held.value.quantity,
    evidence: evidence(statement, 'balance of the hose', [held.value.evidence]),
  })
}

function fall(
  refrigerant: Refrigerant,
  toGoIn: Mass,
  cylinder: Temperature,
): Result<Measure<Quantity<'volume'>>, Problem> {
  const litre = quantity('volume', 1e-3)
  const perLitre = chargingCylinderMass(refrigerant, litre, cylinder)
  if (!perLitre.ok) return perLitre
  const { si, u = 0 } = perLitre.value.quantity
  const volume = (toGoIn.si / si) * litre.si
  const fallen = quantity('volume', volume, (volume * u) / si)
  const statement = say`The level of a charging cylinder at ${cylinder} falls by ${fallen} for ${toGoIn}: vapour takes the place of the liquid`
  return ok({
    quantity: fallen,
    evidence: evidence(statement, perLitre.value.evidence.source),
  })
}

/** The graduation is taken as the mass of liquid between its lines; the vapour that takes its place is in the fall. */
function graduation(
  refrigerant: Refrigerant,
  fallen: Quantity<'volume'>,
  graduatedFor: Temperature,
): Result<Measure<Mass>, Problem> {
  const liquid = liquidAt(refrigerant, graduatedFor)
  if (!liquid.ok) return liquid
  const { density_kg_m3, source } = liquid.value
  const mass = quantity('mass', fallen.si * density_kg_m3, (fallen.u ?? 0) * density_kg_m3)
  return ok({
    quantity: mass,
    evidence: evidence(say`Its graduation, in mass of liquid at ${graduatedFor}, falls by ${mass}`, source),
  })
}
