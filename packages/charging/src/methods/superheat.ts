import { type Evidence, evidence, type Measure, type Statement, say, subtract } from '@chargewright/quantity'
import type { ReadingId } from '@chargewright/visit'
import type { Condition, Finding, NextEntry } from '../assessment.ts'
import { byHowFar } from '../by-how-far.ts'
import { againstBand } from '../compare.ts'
import { airflow } from '../conditions/airflow.ts'
import { consistent } from '../conditions/consistent.ts'
import { equalised } from '../conditions/equalised.ts'
import { notOverfilled } from '../conditions/not-overfilled.ts'
import { outdoorTemperature } from '../conditions/outdoor-temperature.ts'
import { returnAir } from '../conditions/return-air.ts'
import { settled } from '../conditions/settled.ts'
import { validTarget } from '../conditions/valid-target.ts'
import { gate, missingEntries, nextReading } from '../gate.ts'
import { LIMITS } from '../limit.ts'
import { gasOrPoorCondenserAir } from '../look-alikes/gas-or-poor-condenser-air.ts'
import { type Judged, judge, judgeInBand } from '../look-alikes/judge.ts'
import { liquidLineRestriction } from '../look-alikes/liquid-line-restriction.ts'
import { unansweredStep } from '../look-alikes/unanswered-step.ts'
import { weakCompressor } from '../look-alikes/weak-compressor.ts'
import type { Case, Ruling } from '../ruling.ts'
import { hold } from '../sentence.ts'
import { superheatTarget } from '../target/superheat-target.ts'
import { GUARD, tooClose, widest } from '../too-close.ts'
import { withoutEnd } from './without-end.ts'

const NEEDED: readonly ReadingId[] = ['suction-pressure', 'suction-temperature', 'condenser-entering-air']

/** Read where another cause must be excluded; once read, they must be as fresh as the rest. */
const LIQUID: readonly ReadingId[] = ['liquid-pressure', 'liquid-temperature']

/**
 * Fixed orifice and capillary air conditioners: superheat at the compressor against a target that falls as it gets
 * hotter outdoors and rises with the wet bulb of the return air. Above the band vapour is added to the running low
 * side, below it refrigerant is recovered; a high superheat at high load is normal.
 */
export function bySuperheat(asked: Case): Ruling {
  const { visit, measures } = asked
  const target = superheatTarget(visit, measures)
  const conditions: Condition[] = [
    ...notOverfilled(visit),
    ...equalised(visit),
    settled(visit, [...NEEDED, ...LIQUID]),
    ...returnAir(visit),
    ...consistent(asked),
    outdoorTemperature(visit),
    airflow(visit, measures),
    ...(target.ok ? validTarget(visit, target.value, measures.superheat?.quantity) : []),
  ]
  const rule = (finding: Finding, lookAlikes: Ruling['lookAlikes'] = []): Ruling => ({
    conditions,
    lookAlikes,
    finding,
    ...(target.ok && target.value.kind === 'target'
      ? { target: { ...target.value.measure, tolerance: LIMITS.superheatTolerance } }
      : {}),
  })
  if (!target.ok) return { ...rule(missingEntries([unreadableChart])), problems: [target.error] }

  const ruled = (judged: Judged): Ruling => ({
    ...rule(judged.finding, judged.lookAlikes),
    ...judged,
    finding: withoutEnd(judged.finding, conditions),
  })

  const stopped = gate(visit, conditions, [...NEEDED, ...(target.value.kind === 'missing' ? [target.value.what] : [])])
  if (stopped) return rule(stopped)
  const { superheat } = measures
  if (target.value.kind !== 'target' || !superheat) return rule(missingEntries([nextReading('suction-pressure')]))

  const aim = target.value.measure
  const tolerance = LIMITS.superheatTolerance
  const apart = subtract(superheat.quantity, aim.quantity)
  const compared = (statement: Statement, source = tolerance.source) =>
    evidence(statement, source, [superheat.evidence, aim.evidence])
  const within = (inBand: Evidence) => ruled(judgeInBand(asked, inBand, hold(inBand)))
  switch (againstBand(apart, -tolerance.quantity.si, tolerance.quantity.si)) {
    case 'inside':
      return within(
        compared(say`Superheat ${superheat.quantity} is within ${tolerance.quantity} of its target ${aim.quantity}`),
      )
    case 'too-close': {
      const reason = say`Superheat ${superheat.quantity} is ${byHowFar(apart)} its target ${aim.quantity}: an edge of the band of ${tolerance.quantity} lies within that uncertainty`
      return rule(tooClose('Superheat', compared(reason, GUARD), widestOf(asked, aim)))
    }
    case 'above': {
      const above = compared(say`Superheat ${superheat.quantity} is ${apart} above its target ${aim.quantity}`)
      const lookAlikes = [...unansweredStep(asked, 'superheat'), liquidLineRestriction(asked)]
      return ruled(
        judge(
          asked,
          {
            evidence: above,
            direction: 'into-system',
            watched: 'superheat',
            value: superheat.quantity,
            target: aim.quantity,
          },
          lookAlikes,
        ),
      )
    }
    case 'below': {
      const under = subtract(aim.quantity, superheat.quantity)
      const below = compared(say`Superheat ${superheat.quantity} is ${under} below its target ${aim.quantity}`)
      const lookAlikes = [...unansweredStep(asked, 'superheat'), weakCompressor(asked), gasOrPoorCondenserAir(asked)]
      return ruled(
        judge(
          asked,
          {
            evidence: below,
            direction: 'out-of-system',
            watched: 'superheat',
            value: superheat.quantity,
            target: aim.quantity,
          },
          lookAlikes,
        ),
      )
    }
  }
}

const unreadableChart: NextEntry = {
  entry: { kind: 'fact', what: 'makersChart' },
  why: say`the maker's chart was entered and cannot be read`,
}

function widestOf({ visit, measures }: Case, aim: Measure): NextEntry {
  return widest([
    ['suction-temperature', visit.readings['suction-temperature']?.quantity],
    ['suction-pressure', measures.evaporatingTemperature?.quantity],
    [visit.readings['return-air-wet-bulb'] ? 'return-air-wet-bulb' : 'condenser-entering-air', aim.quantity],
  ])
}
