import type { Cause, Diagnosis } from '@chargewright/diagnosis'
import type { Decision, FaultElsewhere, Losses } from './decision.ts'
import { type Act, expectedLosses, truthsOf } from './expected-loss.ts'
import { LOSS } from './loss-table.ts'
import { nextReadings } from './next-reading.ts'

/** What a decision must know besides the diagnosis. */
export interface Circumstances {
  readonly rightCharge_kg: number
  readonly hasReceiver: boolean
}

/**
 * The act with the least expected loss; where even that is worse than one more reading, the reading that tells most.
 * Of the charge nothing is said without the liquid line's pressure and temperature; another fault may show without.
 * Two faults at once never change the act: they say what to mend first.
 */
export function decide(diagnosis: Diagnosis, { rightCharge_kg, hasReceiver }: Circumstances): Decision {
  if (hasReceiver) return { kind: 'refused', reason: 'receiver' }
  const truths = truthsOf(diagnosis.singles)
  const acts = expectedLosses(truths)
  const losses: Losses = { ...Object.fromEntries(acts.map(({ act, loss }) => [act, loss])), read: LOSS.oneMoreReading }
  const best = acts[0]!
  const [next] = nextReadings(diagnosis, truths)
  const isAboutCharge = best.act === 'add' || best.act === 'recover' || best.act === 'hold'
  if (next && ((next.required && isAboutCharge) || best.loss > LOSS.oneMoreReading))
    return { kind: 'read', next, losses }
  if (best.loss > LOSS.oneMoreReading) return { kind: 'undecided', losses }
  return carriedOut(best.act, diagnosis, rightCharge_kg, losses)
}

function carriedOut(act: Act, diagnosis: Diagnosis, rightCharge_kg: number, losses: Losses): Decision {
  const beside = secondFault(diagnosis, act)
  switch (act) {
    case 'hold':
      return { kind: 'hold', losses }
    case 'add':
    case 'recover': {
      const cause = act === 'add' ? 'short-of-charge' : 'overcharged'
      const { charge } = diagnosis.singles.find((single) => single.cause === cause)!
      const sign = act === 'add' ? -1 : 1
      const mass = (deviation: number) => Math.max(sign * deviation, 0) * rightCharge_kg
      const [low, high] = [mass(charge.low), mass(charge.high)]
      return {
        kind: act,
        mass_kg: mass(charge.mean),
        low_kg: Math.min(low, high),
        high_kg: Math.max(low, high),
        ...(beside && isElsewhere(beside) ? { fixFirst: beside } : {}),
        losses,
      }
    }
    default:
      return { kind: 'other', cause: act, ...(beside ? { afterwards: beside } : {}), losses }
  }
}

/** Where two faults together are likelier than one, and the act is about one of them, the other. */
function secondFault({ pairs, pairShare }: Diagnosis, act: Act): Cause | undefined {
  const [pair] = pairs
  if (!pair || pairShare < 0.5) return undefined
  const named: Cause =
    act === 'add' ? 'short-of-charge' : act === 'recover' ? 'overcharged' : act === 'hold' ? 'sound' : act
  const [first, second] = pair.causes
  return first === named ? second : second === named ? first : undefined
}

function isElsewhere(cause: Cause): cause is FaultElsewhere {
  return cause !== 'sound' && cause !== 'short-of-charge' && cause !== 'overcharged'
}
