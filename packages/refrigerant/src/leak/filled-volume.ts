import { fail, type Kelvin, ok, type Problem, type Result } from '@chargewright/quantity'
import { solveLine } from '../equilibrium/saturation-line.ts'
import type { Refrigerant } from '../refrigerant.ts'
import { saturationAtTemperature } from '../saturation.ts'
import { type ClosedVolume, closedVolume, solveClosedVolume } from './closed-volume.ts'

/** The volume filled with fresh refrigerant, liquid and vapour in equilibrium. */
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
  const total = liquidFill * Math.exp(u[count]!) + (1 - liquidFill) * vapour
  const content = moleFractions.map((x) => x * total)
  return solveClosedVolume(volume, content) ? ok({ volume, content }) : fail(unsettled(refrigerant, temperature))
}

const unsettled = ({ name }: Refrigerant, temperature: number): Problem => ({
  kind: 'unsolved',
  field: 'temperature',
  value: `${temperature} K`,
  accepted: `liquid and vapour of ${name} did not come to equilibrium in the volume`,
})
