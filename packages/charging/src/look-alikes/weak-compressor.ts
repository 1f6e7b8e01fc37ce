import { say } from '@chargewright/quantity'
import type { LookAlike } from '../assessment.ts'
import { nextReading } from '../gate.ts'
import type { Case } from '../ruling.ts'
import { condenserLiquid } from './condenser-liquid.ts'

/**
 * A compressor that pumps too little, or an orifice too large for it, floods the evaporator as an overcharge does, but
 * leaves little liquid in the condenser.
 *
 * @source sign rules after Rossi and Braun (1997), as reprinted: compressor valve leak
 */
export function weakCompressor(asked: Case): LookAlike {
  const label = say`a weak compressor, or an orifice too large`
  const id = 'weak-compressor-or-oversized-orifice' as const
  const liquid = condenserLiquid(asked)
  switch (liquid.amount) {
    case 'little':
      return { id, label, verdict: 'explains', evidence: liquid.evidence }
    case 'enough':
      return { id, label, verdict: 'excluded', evidence: liquid.evidence }
    case 'too-close':
    case 'unknown': {
      const missing = asked.visit.readings['liquid-pressure'] ? 'liquid-temperature' : 'liquid-pressure'
      return { id, label, verdict: 'open', evidence: liquid.evidence, next: nextReading(missing) }
    }
  }
}
