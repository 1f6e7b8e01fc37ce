import type { Cause, Diagnosis } from '@chargewright/diagnosis'
import { type Evidence, evidence, quantity, say } from '@chargewright/quantity'
import type { Finding, LookAlike, NextEntry } from '../assessment.ts'
import { type Decision, truthsOf } from '../decision/index.ts'
import type { Deviation } from '../deviation.ts'
import { nextDose } from '../dose.ts'
import { entryLabel } from '../entry-label.ts'
import type { Judged } from '../look-alikes/judge.ts'
import { leaveTheCharge } from '../look-alikes/other-cause.ts'
import type { Case } from '../ruling.ts'
import { charge, hold } from '../sentence.ts'
import { CAUSE_WORDS } from './cause-words.ts'
import { explanation, MODEL } from './explanation.ts'
import { mendOf } from './mend-of.ts'
import { wantedReading } from './wanted-readings.ts'
import type { WeighedCauses } from './weighed-causes.ts'

/** A deviation, or readings in their band that are only asked whether something else is wrong. */
type Found = Deviation | { readonly evidence: Evidence; readonly direction?: never }

/** The finding of the act with the least expected loss. */
export function judgeByCauses(asked: Case, found: Found, { diagnosis, decision }: WeighedCauses): Judged {
  const lookAlikes = weighedLookAlikes(diagnosis, decision, found.direction)
  const finding = findingOf(asked, found, diagnosis, decision, lookAlikes)
  // What fits nothing teaches nothing.
  return { finding, lookAlikes, ...(diagnosis.misfit.unexplained ? {} : { memory: diagnosis.memory }) }
}

function findingOf(
  asked: Case,
  found: Found,
  diagnosis: Diagnosis,
  decision: Decision,
  lookAlikes: readonly LookAlike[],
): Finding {
  const named = decision.kind === 'other' && lookAlikes.find(({ id }) => id === decision.cause)
  if (named) return leaveTheCharge(found.evidence, named, mendOf(decision.cause, asked.visit))
  if (!found.direction) return hold(found.evidence)
  if (decision.kind === ACT[found.direction]) return act(asked, found, diagnosis, decision)
  return decision.kind === 'read'
    ? readFirst(asked, found, decision.next.observable, lookAlikes)
    : undecided(asked, found, diagnosis, decision, lookAlikes)
}

/** What moves the charge this way. */
const ACT = { 'into-system': 'add', 'out-of-system': 'recover' } as const

const ownCause = (direction: Deviation['direction']) =>
  direction === 'into-system' ? 'short-of-charge' : 'overcharged'

function act(asked: Case, deviation: Deviation, diagnosis: Diagnosis, decision: Decision): Finding {
  const finding = charge(asked, deviation.evidence, [], nextDose(asked, deviation))
  const fits = explanation(diagnosis, ownCause(deviation.direction), 'acted-on')
  const reasons = [...finding.reasons, { ...fits, from: [...againstNameplate(decision), ...fits.from] }]
  const first = 'fixFirst' in decision ? decision.fixFirst : undefined
  if (!first) return { ...finding, reasons }
  const beside = say`Before that: ${CAUSE_WORDS[first].label} is likely too. ${mendOf(first, asked.visit)}, then read again`
  return { ...finding, reasons, steps: [beside, ...finding.steps] }
}

/** What the causes say of the charge, beside the way to the target: the two differ by what this unit does. */
function againstNameplate(decision: Decision): readonly Evidence[] {
  if (decision.kind !== 'add' && decision.kind !== 'recover') return []
  const mass = quantity('mass', decision.mass_kg)
  const [low, high] = [quantity('mass', decision.low_kg), quantity('mass', decision.high_kg)]
  const statement =
    decision.kind === 'add'
      ? say`Against the nameplate charge ${mass} is missing, ${low} to ${high} in nine of ten such cases: the step goes to the target, and what is left shows then`
      : say`Against the nameplate charge ${mass} is too much, ${low} to ${high} in nine of ten such cases: the step goes to the target, and what is left shows then`
  return [evidence(statement, MODEL)]
}

/** One more reading saves more than any act would now. */
function readFirst(
  { visit }: Case,
  { evidence: deviation, direction }: Deviation,
  observable: Parameters<typeof wantedReading>[0],
  lookAlikes: readonly LookAlike[],
): Finding {
  const wanted = wantedReading(observable, visit)
  const open = lookAlikes.filter(({ verdict }) => verdict === 'open')
  const next: readonly NextEntry[] = wanted ? [wanted] : []
  const own = CAUSE_WORDS[ownCause(direction)].label
  return {
    kind: 'cannot-tell',
    sentence: open[0] ? say`${own} or ${open[0].label}: these readings fit both` : say`One more reading will tell`,
    reasons: [deviation, ...open.map(({ evidence }) => evidence)],
    steps: next.map(({ entry, why }) => say`${entryLabel(entry)}: ${why}`),
    next,
  }
}

/** Target and model do not agree, or nothing that could still be read would settle it. */
function undecided(
  { visit }: Case,
  { evidence: deviation }: Deviation,
  { misfit }: Diagnosis,
  decision: Decision,
  lookAlikes: readonly LookAlike[],
): Finding {
  const likely = lookAlikes.filter(({ verdict }) => verdict === 'open' || verdict === 'explains')
  return {
    kind: 'cannot-tell',
    sentence: misfit.unexplained
      ? say`Nothing that is known explains these readings`
      : decision.kind === 'undecided'
        ? say`The readings do not single out one cause`
        : say`The target and the model of this system do not agree`,
    reasons: [deviation, ...likely.map(({ evidence }) => evidence)],
    steps: [
      say`Check the facts of the system against its nameplate, then read everything again`,
      ...likely
        .filter(({ id }) => id !== 'short-of-charge' && id !== 'overcharged')
        .slice(0, 2)
        .map(({ label, id }) => say`To rule out ${label}: ${mendOf(id as Cause, visit)}`),
    ],
    next: [],
  }
}

/** Below this chance a cause is excluded; above the other it is open while no act was decided. Own choice. */
const EXCLUDED = 0.01
const OPEN = 0.05
/** Causes that are shown at least, so that the runner-up is always there. */
const FEWEST = 2

/** The causes beside the one that the deviation itself speaks for, the most probable first. */
function weighedLookAlikes(
  diagnosis: Diagnosis,
  decision: Decision,
  direction: Deviation['direction'] | undefined,
): readonly LookAlike[] {
  const own =
    direction === 'into-system' ? 'short-of-charge' : direction === 'out-of-system' ? 'overcharged' : undefined
  const isDecided = decision.kind !== 'read' && decision.kind !== 'undecided'
  const truths = truthsOf(diagnosis.singles)
  const chance = (cause: Cause) => truths[cause] ?? 0
  // In its band the charge is right by its target, whatever the model would do.
  const isHeld = direction === undefined && decision.kind !== 'other'
  const likelier = isHeld ? 'sound' : (actedOn(decision) ?? diagnosis.singles[0]!.cause)
  // Told to be likely together with the charge, it may still be unlikely without it.
  const beside = 'fixFirst' in decision ? decision.fixFirst : undefined
  return diagnosis.singles
    .filter(({ cause }) => cause !== own && cause !== 'sound' && !(isHeld && isOfCharge(cause)))
    .filter(({ probability }, i) => i < FEWEST || probability >= EXCLUDED)
    .map(({ cause, probability }): LookAlike => {
      const isNamed = decision.kind === 'other' && decision.cause === cause
      const verdict = isNamed
        ? 'explains'
        : probability < EXCLUDED
          ? 'excluded'
          : (isDecided ? chance(cause) >= chance(likelier) : probability > OPEN)
            ? 'open'
            : 'unlikely'
      const told = isNamed ? 'acted-on' : verdict === 'open' ? 'open' : { unlikelierThan: likelier }
      const { label } = CAUSE_WORDS[cause]
      return {
        id: cause,
        label: cause === beside ? say`${label} alone` : label,
        verdict,
        evidence: explanation(diagnosis, cause, told),
      }
    })
}

const isOfCharge = (cause: Cause) => cause === 'short-of-charge' || cause === 'overcharged'

/** The cause that a decision acts on. */
function actedOn(decision: Decision): Cause | undefined {
  switch (decision.kind) {
    case 'add':
      return 'short-of-charge'
    case 'recover':
      return 'overcharged'
    case 'hold':
      return 'sound'
    case 'other':
      return decision.cause
    default:
      return undefined
  }
}
