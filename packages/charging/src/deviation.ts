import type { Evidence, Quantity } from '@chargewright/quantity'
import type { Dose } from './assessment.ts'
import type { Watched } from './response.ts'

type Difference = Quantity<'temperature difference'>

/** A measure that lies off its target, and which way the refrigerant has to go to bring it there. */
export interface Deviation {
  readonly evidence: Evidence
  readonly direction: Dose['direction']
  readonly watched: Watched
  readonly value: Difference
  readonly target: Difference
}
