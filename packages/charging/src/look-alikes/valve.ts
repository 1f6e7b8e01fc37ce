import { type Evidence, say } from '@chargewright/quantity'
import type { LookAlike } from '../assessment.ts'

/** A valve that feeds too little (or a restriction ahead of it) starves the evaporator, whatever the charge. */
export function valveFeedsTooLittle(superheat: Evidence, explains: boolean): LookAlike {
  return {
    id: 'valve-feeds-too-little',
    label: say`the valve feeds too little, or something ahead of it is restricted`,
    verdict: explains ? 'explains' : 'excluded',
    evidence: superheat,
  }
}

/** A valve that feeds too much fills the evaporator and empties the condenser, whatever the charge. */
export function valveFeedsTooMuch(superheat: Evidence, explains: boolean): LookAlike {
  return {
    id: 'valve-feeds-too-much',
    label: say`the valve feeds too much`,
    verdict: explains ? 'explains' : 'excluded',
    evidence: superheat,
  }
}
