import { type Evidence, evidence, type Measure, type Quantity, say } from '@chargewright/quantity'
import { againstBand, type Side } from './compare.ts'
import { LIMITS } from './limit.ts'
import type { Case } from './ruling.ts'

/** The superheat that the valve holds against its band: the maker's where entered, else that of the protocol. */
export function valveBand(
  { visit }: Case,
  valve: Measure<Quantity<'temperature difference'>>,
): { readonly side: Side; readonly evidence: Evidence } {
  const { valveSuperheatMin, valveSuperheatMax } = visit.system.figures
  const low = valveSuperheatMin?.quantity ?? LIMITS.valveSuperheatMin.quantity
  const high = valveSuperheatMax?.quantity ?? LIMITS.valveSuperheatMax.quantity
  const source = valveSuperheatMin && valveSuperheatMax ? 'maker, as entered' : LIMITS.valveSuperheatMin.source
  const side = againstBand(valve.quantity, low.si, high.si)
  const words = { below: 'below', above: 'above', inside: 'within', 'too-close': 'too close to the edge of' } as const
  const statement = say`Valve superheat ${valve.quantity} is ${words[side]} ${low} to ${high}`
  return { side, evidence: evidence(statement, source, [valve.evidence]) }
}
