import { type Evidence, evidence, say } from '@chargewright/quantity'
import { lastChange, type ObservationId, type Origin, observationKind, type ReadingId } from '@chargewright/visit'
import type { Finding, LookAlike, NextEntry } from '../assessment.ts'
import { againstLimit } from '../compare.ts'
import { equalised } from '../conditions/equalised.ts'
import { load } from '../conditions/load.ts'
import { notOverfilled } from '../conditions/not-overfilled.ts'
import { settled } from '../conditions/settled.ts'
import { gate, missingEntries, nextReading } from '../gate.ts'
import { glassDose } from '../glass-dose.ts'
import { LIMITS } from '../limit.ts'
import { otherCause } from '../look-alikes/other-cause.ts'
import { valveFeedsTooLittle, valveFeedsTooMuch } from '../look-alikes/valve.ts'
import { measure } from '../measures/measures.ts'
import type { Case, Ruling } from '../ruling.ts'
import { charge, hold } from '../sentence.ts'
import { valveBand } from '../valve-band.ts'

/**
 * Thermostatic valve with receiver: pressures and temperatures do not tell the charge while the receiver holds liquid,
 * the glass does, under a load so high that the valve stands wide open. Bubbles then mean a short charge, unless the
 * drier ahead of the glass makes them; a partly filled glass without bubbles means a low flow.
 *
 * @source *common practice*
 */
export function bySightGlass(asked: Case): Ruling {
  const { visit } = asked
  const conditions = [...notOverfilled(visit), ...equalised(visit), settled(visit, [], ['sight-glass']), load(visit)]
  const rule = (finding: Finding, lookAlikes: readonly LookAlike[] = []): Ruling => ({
    conditions,
    lookAlikes,
    finding,
  })
  const stopped = gate(visit, conditions, [])
  const glass = visit.observations['sight-glass']
  // A partly filled glass is explained even while the load is low: it is what a low flow looks like.
  if (stopped)
    return rule(
      glass?.answer === 'partly-filled' ? { ...stopped, reasons: [...stopped.reasons, partlyFilled(asked)] } : stopped,
    )
  if (!glass)
    return rule(
      missingEntries([
        { entry: { kind: 'observation', what: 'sight-glass' }, why: say`the glass under load tells the charge` },
      ]),
    )

  const answer = observationKind('sight-glass').answers[glass.answer] ?? glass.answer
  const now = sinceLastChange(asked)
  const seen: Evidence = {
    ...evidence(say`Sight glass under high load: ${answer}`, 'common practice'),
    eventId: glass.eventId,
  }
  switch (glass.answer) {
    case 'clear': {
      const lookAlikes = valveOutOfBand(now)
      return rule(otherCause(seen, lookAlikes) ?? hold(seen, [CLEAR_IS_NOT_FULL]), lookAlikes)
    }
    case 'bubbles': {
      const lookAlikes = [restrictedDrier(now)]
      return rule(
        otherCause(seen, lookAlikes) ?? charge(asked, seen, lookAlikes, glassDose(asked, 'bubbles')),
        lookAlikes,
      )
    }
    case 'partly-filled':
      return rule({
        kind: 'cannot-tell',
        sentence: say`A partly filled glass without bubbles shows a low flow, not a short charge`,
        reasons: [seen, partlyFilled(asked)],
        steps: [say`Raise the load until the valve stands wide open, and look again, best at a vertical line`],
        next: [
          {
            entry: { kind: 'reading', what: 'evaporator-outlet-temperature' },
            why: say`the valve superheat tells whether the valve is wide open`,
          },
        ],
      })
    default:
      return rule(emptyGlass(now, seen))
  }
}

/** The case without what was read and seen of the circuit before the last change to it. */
function sinceLastChange(asked: Case): Case {
  const { readings, observations } = asked.visit
  const change = lastChange(asked.visit)?.position ?? -1
  const isNow = (one: Origin | undefined) => one === undefined || one.position > change
  const without = <T extends object>(all: T, old: readonly (keyof T)[]): T =>
    Object.fromEntries(Object.entries(all).filter(([what]) => !old.includes(what as keyof T))) as T
  const visit = {
    ...asked.visit,
    readings: without(
      readings,
      READ_THERE.filter((what) => !isNow(readings[what])),
    ),
    observations: without(
      observations,
      SEEN_THERE.filter((what) => !isNow(observations[what])),
    ),
  }
  return { ...asked, visit, measures: measure(visit, asked.refrigerant).measures }
}

const READ_THERE: readonly ReadingId[] = [
  'suction-pressure',
  'suction-temperature',
  'evaporator-outlet-temperature',
  'drier-inlet-temperature',
  'drier-outlet-temperature',
]
const SEEN_THERE: readonly ObservationId[] = ['bubbles-before-drier', 'bubbles-after-drier']

const CLEAR_IS_NOT_FULL = evidence(
  say`A clear glass tells that liquid alone reaches the valve, not how much more the receiver holds`,
  'common practice',
)

/** Liquid reaches the valve: a superheat out of its band is then the valve's own. Nothing where it was not read. */
function valveOutOfBand(asked: Case): readonly LookAlike[] {
  const valve = asked.measures.valveSuperheat
  if (!valve) return []
  const band = valveBand(asked, valve)
  return [
    valveFeedsTooLittle(band.evidence, band.side === 'above'),
    valveFeedsTooMuch(band.evidence, band.side === 'below'),
  ]
}

function partlyFilled({ visit }: Case): Evidence {
  const vertical = visit.observations['liquid-line-orientation']?.answer === 'vertical'
  return vertical
    ? evidence(say`In a vertical line a partly filled glass is unusual: look again for bubbles`, 'common practice')
    : evidence(
        say`At low flow the liquid does not fill a horizontal line; that shows less in a vertical one`,
        'common practice',
      )
}

/** A drier ahead of the glass that cools the liquid, or makes bubbles, is restricted: flashing there is no short charge. */
function restrictedDrier({ visit, measures }: Case): LookAlike {
  const shared = { id: 'liquid-line-restriction', label: say`a restricted filter-drier` } as const
  const { observations } = visit
  if (observations['sight-glass-position']?.answer === 'before-drier') {
    return {
      ...shared,
      verdict: 'excluded',
      evidence: evidence(say`The glass stands before the drier, which cannot make its bubbles`),
    }
  }
  const drop = measures.drierDrop
  const { quantity: limit, source } = LIMITS.drierDrop
  const side = drop && againstLimit(drop.quantity, limit)
  if (drop && side === 'above') {
    return {
      ...shared,
      verdict: 'explains',
      evidence: evidence(
        say`The drier cools the liquid by ${drop.quantity}, more than ${limit}: it flashes there`,
        source,
        [drop.evidence],
      ),
    }
  }
  const before = observations['bubbles-before-drier']
  const after = observations['bubbles-after-drier']
  if (before?.answer === 'yes')
    return {
      ...shared,
      verdict: 'excluded',
      evidence: { ...evidence(say`Bubbles already before the drier`), eventId: before.eventId },
    }
  if (before?.answer === 'no' && after?.answer === 'yes') {
    return {
      ...shared,
      verdict: 'explains',
      evidence: { ...evidence(say`No bubbles before the drier, bubbles after it`), eventId: after.eventId },
    }
  }
  if (drop && side === 'below') {
    return {
      ...shared,
      verdict: 'excluded',
      evidence: evidence(say`The drier cools the liquid by ${drop.quantity}, less than ${limit}`, source, [
        drop.evidence,
      ]),
    }
  }
  const next: NextEntry = drop
    ? {
        entry: { kind: 'observation', what: 'bubbles-before-drier' },
        why: say`an electronic sight glass before the drier tells whether vapour leaves the receiver`,
      }
    : nextReading(visit.readings['drier-inlet-temperature'] ? 'drier-outlet-temperature' : 'drier-inlet-temperature')
  const statement = drop
    ? say`The temperature drop across the drier, ${drop.quantity}, is too close to ${limit} to tell`
    : say`Nothing tells whether the drier ahead of the glass is restricted`
  return { ...shared, verdict: 'open', evidence: evidence(statement, source, drop ? [drop.evidence] : []), next }
}

/** An empty glass looks like a full one; the superheat of the valve tells them apart. */
function emptyGlass(asked: Case, seen: Evidence): Finding {
  const valve = asked.measures.valveSuperheat ?? asked.measures.superheat
  const limit = LIMITS.valveSuperheatMax
  if (valve && againstLimit(valve.quantity, limit.quantity) === 'above') {
    const starved = evidence(
      say`Superheat ${valve.quantity} is above ${limit.quantity}: no liquid reaches the valve`,
      limit.source,
      [valve.evidence],
    )
    return charge(
      asked,
      seen,
      [{ id: 'leak', label: say`a leak`, verdict: 'unlikely', evidence: starved }],
      glassDose(asked, 'empty'),
    )
  }
  return {
    kind: 'cannot-tell',
    sentence: say`An empty glass and a full one look alike`,
    reasons: [seen, ...(valve ? [valve.evidence] : [])],
    steps: [say`Check that the liquid valve and the solenoid are open, and read the superheat of the valve`],
    next: [nextReading(valve ? 'evaporator-outlet-temperature' : 'suction-temperature')],
  }
}
