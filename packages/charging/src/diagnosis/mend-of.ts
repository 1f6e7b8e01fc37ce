import type { Cause } from '@chargewright/diagnosis'
import { type Statement, say } from '@chargewright/quantity'
import type { Visit } from '@chargewright/visit'
import { CAUSE_WORDS } from './cause-words.ts'

/** What to do about a cause on this very system: a part that it has not is not sent for. */
export function mendOf(cause: Cause, { system }: Visit): Statement {
  return cause === 'weak-compressor' && system.facts.application === 'heat-pump-cooling'
    ? PUMPS_TOO_LITTLE_IN_A_HEAT_PUMP
    : CAUSE_WORDS[cause].mend
}

/** @source *common practice* */
const PUMPS_TOO_LITTLE_IN_A_HEAT_PUMP = say`Compare current and pressures with the maker's curves; check the orifice against the nameplate, and the reversing valve for leaking through`
