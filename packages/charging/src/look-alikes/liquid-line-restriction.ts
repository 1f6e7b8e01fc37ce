import { evidence, say } from '@chargewright/quantity'
import type { LookAlike, NextEntry } from '../assessment.ts'
import { againstLimit } from '../compare.ts'
import { nextReading } from '../gate.ts'
import { LIMITS } from '../limit.ts'
import type { Case } from '../ruling.ts'
import { condenserLiquid } from './condenser-liquid.ts'

/**
 * A restriction starves the evaporator as a short charge does, but holds the liquid back in the condenser. A drier that
 * cools the liquid on its way through shows where.
 *
 * @source sign rules after Rossi and Braun (1997), as reprinted; drier drop *common practice*
 */
export function liquidLineRestriction(asked: Case): LookAlike {
  const label = say`liquid-line restriction`
  const id = 'liquid-line-restriction' as const
  const drop = asked.measures.drierDrop
  const dropSide = drop && againstLimit(drop.quantity, LIMITS.drierDrop.quantity)
  if (drop && dropSide === 'above') {
    const statement = say`The drier cools the liquid by ${drop.quantity}, more than ${LIMITS.drierDrop.quantity}: it is restricted`
    return {
      id,
      label,
      verdict: 'explains',
      seen: true,
      evidence: evidence(statement, LIMITS.drierDrop.source, [drop.evidence]),
    }
  }
  const liquid = condenserLiquid(asked)
  switch (liquid.amount) {
    case 'little':
      return { id, label, verdict: 'excluded', evidence: liquid.evidence }
    case 'enough':
      return { id, label, verdict: 'explains', evidence: liquid.evidence }
    case 'too-close':
    case 'unknown':
      return { id, label, verdict: 'open', evidence: liquid.evidence, next: tellingReading(asked) }
  }
}

/** Pressure and temperature of the liquid first, then the temperatures on both sides of the drier. */
function tellingReading({ visit }: Case): NextEntry {
  const order = [
    'liquid-pressure',
    'liquid-temperature',
    'drier-inlet-temperature',
    'drier-outlet-temperature',
  ] as const
  const missing = order.find((id) => !visit.readings[id])
  return missing
    ? nextReading(missing)
    : {
        entry: { kind: 'reading', what: 'liquid-temperature' },
        why: say`read the liquid line again with a better thermometer`,
      }
}
