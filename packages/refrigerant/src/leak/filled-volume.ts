import { fail, type Kelvin, ok, type Problem, type Result } from '@chargewright/quantity'
import { solveLine } from '../equilibrium/saturation-line.ts'
import type { Refrigerant } from '../refrigerant.ts'
import { saturationAtTemperature } from '../saturation.ts'
import { type ClosedVolume, closedVolume, solveClosedVolume } from './closed-volume.ts'

const ITERATIONS = 40
const LAST_CHANGE = 1e-9

/**
 * The volume filled with fresh refrigerant until its liquid takes up this share at rest. Liquid and vapour differ in
 * composition and only together have the nominal one, so the amount is found by iteration from what it would be at the
 * bubble point.
 */
export function filledVolume(
  refrigerant: Refrigerant,
  temperature: Kelvin,
  liquidFill: number,
): Result<{ readonly volume: ClosedVolume; readonly content: Float64Array }, Problem> {
  const { model, bubble, moleFractions } = refrigerant.engine
  const at = saturationAtTemperature(refrigerant, temperature)
  if (!at.ok) return at
  if (!solveLine(bubble, 'temperature', Math.log(temperature))) return fail(unsettled(refrigerant, temperature))
  const count = moleFractions.length
  const { u } = bubble.work
  const volume = closedVolume(model, temperature)
  let vapour = 0
  for (let i = 0; i < count; i++) {
    volume.u[i] = u[count]! + Math.log(moleFractions[i]!)
    volume.u[count + i] = u[i]!
    vapour += Math.exp(u[i]!)
  }
  volume.u[2 * count] = liquidFill
  const liquid = Math.exp(u[count]!)
  let total = liquidFill * liquid + (1 - liquidFill) * vapour
  for (let k = 0; k < ITERATIONS; k++) {
    const content = moleFractions.map((x) => x * total)
    if (!solveClosedVolume(volume, content)) break
    const short = liquidFill - volume.u[2 * count]!
    if (Math.abs(short) < LAST_CHANGE) return ok({ volume, content })
    total += short * (liquid - vapour)
  }
  return fail(unsettled(refrigerant, temperature))
}

const unsettled = ({ name }: Refrigerant, temperature: number): Problem => ({
  kind: 'unsolved',
  field: 'temperature',
  value: `${temperature} K`,
  accepted: `liquid and vapour of ${name} did not come to equilibrium in the volume`,
})
