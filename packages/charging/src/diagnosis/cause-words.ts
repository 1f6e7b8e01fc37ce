import type { Cause } from '@chargewright/diagnosis'
import { type Statement, say } from '@chargewright/quantity'

/** What a cause is called within a sentence, how a sentence about its effects begins, and what to do about it. */
export interface CauseWords {
  readonly label: Statement
  readonly were: Statement
  readonly mend: Statement
}

/** @source what to do about each: *common practice* */
export const CAUSE_WORDS: Readonly<Record<Cause, CauseWords>> = {
  sound: { label: say`nothing wrong`, were: say`Were nothing wrong`, mend: say`Leave it as it is` },
  'short-of-charge': {
    label: say`a short charge`,
    were: say`Were the charge short`,
    mend: say`Find and repair the leak, then bring the charge up in weighed steps`,
  },
  overcharged: {
    label: say`an overcharge`,
    were: say`Were there too much charge`,
    mend: say`Recover in weighed steps`,
  },
  'low-indoor-air': {
    label: say`too little indoor air`,
    were: say`Were there too little indoor air`,
    mend: say`Look at filter, coil, blower, dampers and registers, then measure the airflow`,
  },
  'poor-condenser-air': {
    label: say`too little condenser air`,
    were: say`Were there too little condenser air`,
    mend: say`Clean the condenser coil and clear what stands before it; check the fan, its blades and its direction`,
  },
  'liquid-line-restriction': {
    label: say`a restricted liquid line`,
    were: say`Were the liquid line restricted`,
    mend: say`Find the restriction: feel or measure along the liquid line for the place where it turns colder; change the drier if it is there`,
  },
  'non-condensables': {
    label: say`air or other non-condensables`,
    were: say`Were there air or other non-condensables in it`,
    mend: say`Compare the standing pressure with saturation at the ambient temperature; if it stands higher, there are non-condensables: recover the charge, evacuate and weigh in fresh refrigerant`,
  },
  'weak-compressor': {
    label: say`a compressor that pumps too little`,
    were: say`Were the compressor weak`,
    mend: say`Check the orifice against the nameplate; compare compressor current and pressures with the maker's curves`,
  },
  'valve-feeds-too-little': {
    label: say`a valve that feeds too little`,
    were: say`Did the valve feed too little`,
    mend: say`Check the valve: bulb charge, strainer, adjustment, pressure drop ahead of it`,
  },
  'valve-feeds-too-much': {
    label: say`a valve that feeds too much`,
    were: say`Did the valve feed too much`,
    mend: say`Check the valve: bulb fixed, insulated and in its place, adjustment, seat`,
  },
}
