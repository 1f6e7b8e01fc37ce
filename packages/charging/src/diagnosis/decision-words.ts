import { quantity, type Statement, say } from '@chargewright/quantity'
import type { FindingKind } from '../assessment.ts'
import type { Decision } from '../decision/index.ts'
import { CAUSE_WORDS } from './cause-words.ts'

/** What a decision comes to, and its sentence. */
export interface DecisionWords {
  readonly kind: FindingKind
  readonly sentence: Statement
}

export function decisionWords(decision: Decision): DecisionWords {
  switch (decision.kind) {
    case 'add':
    case 'recover': {
      const [mass, low, high] = [decision.mass_kg, decision.low_kg, decision.high_kg].map((kg) => quantity('mass', kg))
      const sentence =
        decision.kind === 'add'
          ? say`Short of charge: ${mass!} of the nameplate charge is missing, ${low!} to ${high!} in nine of ten such cases; add it in weighed steps`
          : say`Overcharged: ${mass!} more than the nameplate charge, ${low!} to ${high!} in nine of ten such cases; recover it in weighed steps`
      return { kind: decision.kind, sentence }
    }
    case 'hold':
      return { kind: 'hold', sentence: say`Leave the charge as it is: these are the readings of a sound system` }
    case 'other':
      return { kind: 'not-the-charge', sentence: say`Leave the charge alone: ${CAUSE_WORDS[decision.cause].label}` }
    case 'read':
      return { kind: 'cannot-tell', sentence: say`One more reading is worth more than any act now` }
    case 'undecided':
      return { kind: 'cannot-tell', sentence: say`The readings do not single out one cause` }
    case 'refused':
      return { kind: 'cannot-tell', sentence: say`The receiver hides the charge: judge the glass under load, or weigh` }
  }
}
