import { add, type Evidence, evidence, type Quantity, say } from '@chargewright/quantity'
import { againstLimit } from '../compare.ts'
import { LIMITS } from '../limit.ts'
import type { Case } from '../ruling.ts'

/** How much liquid stands in the condenser, as its subcooling tells. */
export interface CondenserLiquid {
  readonly amount: 'little' | 'enough' | 'too-close' | 'unknown'
  readonly evidence: Evidence
}

/**
 * Little liquid in the condenser speaks for a short charge; enough of it, with a starved evaporator, for something that
 * holds it back. The line is the nameplate subcooling less its tolerance, else the least of a sound air conditioner.
 */
export function condenserLiquid({ visit, measures }: Case): CondenserLiquid {
  const subcooling = measures.subcooling
  if (!subcooling) return { amount: 'unknown', evidence: evidence(say`The subcooling is not known`) }
  const nameplate = visit.system.figures.nameplateSubcooling
  const { subcoolingTolerance, normalSubcooling } = LIMITS
  const tolerance = { ...subcoolingTolerance.quantity, si: -subcoolingTolerance.quantity.si }
  const limit = nameplate
    ? {
        quantity: add(nameplate.quantity as Quantity<'temperature difference'>, tolerance),
        source: `nameplate, less tolerance of ${subcoolingTolerance.source}`,
      }
    : normalSubcooling
  const side = againstLimit(subcooling.quantity, limit.quantity)
  const tree = (statement: Evidence['statement']) => evidence(statement, limit.source, [subcooling.evidence])
  switch (side) {
    case 'below':
      return {
        amount: 'little',
        evidence: tree(
          say`Little liquid stands in the condenser: subcooling ${subcooling.quantity} is below ${limit.quantity}`,
        ),
      }
    case 'above':
      return {
        amount: 'enough',
        evidence: tree(
          say`Enough liquid stands in the condenser: subcooling ${subcooling.quantity} is above ${limit.quantity}`,
        ),
      }
    case 'too-close':
      return {
        amount: 'too-close',
        evidence: tree(say`Subcooling ${subcooling.quantity} is too close to ${limit.quantity} to tell`),
      }
  }
}
