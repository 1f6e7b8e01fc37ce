import type { Memory } from '@chargewright/diagnosis'
import type { Problem } from '@chargewright/quantity'
import type { Refrigerant } from '@chargewright/refrigerant'
import type { Visit } from '@chargewright/visit'
import type { Condition, Finding, LookAlike, Target } from './assessment.ts'
import type { Measures } from './measures/measures.ts'
import type { Accessory } from './weigh-in/accessory-charge.ts'

/** What a method works from. */
export interface Case {
  readonly visit: Visit
  readonly refrigerant: Refrigerant
  readonly measures: Measures
  readonly accessories: readonly Accessory[]
  /** What earlier visits taught about this system. */
  readonly memory?: Memory
}

/** What a method says: its conditions, what else it considered, and its finding. */
export interface Ruling {
  readonly conditions: readonly Condition[]
  readonly lookAlikes: readonly LookAlike[]
  readonly finding: Finding
  /** The target the method set itself, where it has one. */
  readonly target?: Target
  /** What this visit taught about the system. */
  readonly memory?: Memory
  /** What could not be read on the way, the maker's chart for instance. */
  readonly problems?: readonly Problem[]
}
