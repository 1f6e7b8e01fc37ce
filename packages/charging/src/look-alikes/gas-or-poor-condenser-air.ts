import { evidence, say } from '@chargewright/quantity'
import type { LookAlike } from '../assessment.ts'
import { againstLimit } from '../compare.ts'
import { nextReading } from '../gate.ts'
import { LIMITS } from '../limit.ts'
import type { Case } from '../ruling.ts'

/**
 * Gas that does not condense and a condenser short of air both raise the condensing pressure as an overcharge does, and
 * gas feigns subcooling as well. They count once the condensing temperature stands too far above the entering air.
 *
 * @source sign rules, general; the rise *common practice*
 */
export function gasOrPoorCondenserAir({ visit, measures }: Case): LookAlike {
  const label = say`air or other non-condensables, or little condenser air`
  const id = 'gas-or-poor-condenser-air' as const
  const coil = visit.observations['condenser-coil']
  if (coil?.answer === 'dirty') {
    const seen = { ...evidence(say`The condenser coil is dirty or blocked`), eventId: coil.eventId }
    return { id, label, verdict: 'explains', seen: true, evidence: seen }
  }
  const rise = measures.condensingRise
  if (!rise) {
    const missing = visit.readings['condenser-entering-air'] ? 'liquid-pressure' : 'condenser-entering-air'
    return {
      id,
      label,
      verdict: 'open',
      evidence: evidence(say`The condensing temperature above the entering air is not known`),
      next: nextReading(missing),
    }
  }
  const { quantity: limit, source } = LIMITS.condensingRise
  switch (againstLimit(rise.quantity, limit)) {
    case 'below':
      return {
        id,
        label,
        verdict: 'unlikely',
        evidence: evidence(say`Condensing ${rise.quantity} above the entering air, no more than ${limit}`, source, [
          rise.evidence,
        ]),
      }
    case 'too-close':
    case 'above': {
      const statement = say`Condensing ${rise.quantity} above the entering air, against ${limit} at most: an overcharge, non-condensables or a dirty coil would all do this`
      const next = coil
        ? {
            entry: { kind: 'reading', what: 'condenser-leaving-air' } as const,
            why: say`stop the system and compare its standing pressure with saturation at the ambient temperature; running, the air leaving the condenser tells how much air flows`,
          }
        : {
            entry: { kind: 'observation', what: 'condenser-coil' } as const,
            why: say`a dirty coil would explain the high pressure`,
          }
      return { id, label, verdict: 'open', evidence: evidence(statement, source, [rise.evidence]), next }
    }
  }
}
