import { evidence, type Measure, type Quantity, type Statement, say, subtract } from '@chargewright/quantity'
import type { ReadingId } from '@chargewright/visit'
import type { Condition, Finding, LookAlike, NextEntry } from '../assessment.ts'
import { byHowFar } from '../by-how-far.ts'
import { againstBand } from '../compare.ts'
import { airflow } from '../conditions/airflow.ts'
import { consistent } from '../conditions/consistent.ts'
import { equalised } from '../conditions/equalised.ts'
import { notOverfilled } from '../conditions/not-overfilled.ts'
import { settled } from '../conditions/settled.ts'
import { gate, missingEntries, nextFigure, nextReading } from '../gate.ts'
import { LIMITS } from '../limit.ts'
import { gasOrPoorCondenserAir } from '../look-alikes/gas-or-poor-condenser-air.ts'
import { type Judged, judge, judgeInBand } from '../look-alikes/judge.ts'
import { liquidLineRestriction } from '../look-alikes/liquid-line-restriction.ts'
import { unansweredStep } from '../look-alikes/unanswered-step.ts'
import { valveFeedsTooLittle, valveFeedsTooMuch } from '../look-alikes/valve.ts'
import type { Case, Ruling } from '../ruling.ts'
import { hold } from '../sentence.ts'
import { GUARD, tooClose, widest } from '../too-close.ts'
import { valveBand } from '../valve-band.ts'

type Difference = Quantity<'temperature difference'>

const NEEDED: readonly ReadingId[] = ['liquid-pressure', 'liquid-temperature', 'suction-pressure']

/**
 * Thermostatic or electronic valve without receiver: the valve holds the superheat, so the liquid standing in the
 * condenser tells the charge. The nameplate subcooling within 3 °F, and the valve's superheat in its band, or the valve
 * and not the charge is in question.
 */
export function bySubcooling(asked: Case): Ruling {
  const { visit, measures } = asked
  const conditions: Condition[] = [
    ...notOverfilled(visit),
    ...equalised(visit),
    settled(visit, [...NEEDED, 'suction-temperature', 'evaporator-outlet-temperature']),
    ...consistent(asked),
    advised(airflow(visit, measures)),
  ]
  const nameplate = visit.system.figures.nameplateSubcooling
  const target: Measure<Difference> | undefined = nameplate && {
    quantity: nameplate.quantity as Difference,
    evidence: {
      ...evidence(say`Nameplate subcooling ${nameplate.quantity}, typed “${nameplate.typed}”`),
      eventId: nameplate.eventId,
    },
  }
  const rule = (finding: Finding, lookAlikes: readonly LookAlike[] = []): Ruling => ({
    conditions,
    lookAlikes,
    finding,
    ...(target ? { target: { ...target, tolerance: LIMITS.subcoolingTolerance } } : {}),
  })

  const ruled = (judged: Judged): Ruling => ({ ...rule(judged.finding, judged.lookAlikes), ...judged })

  const stopped = gate(visit, conditions, NEEDED)
  if (stopped) return rule(stopped)
  if (!target)
    return rule(missingEntries([nextFigure('nameplateSubcooling', say`the target is the maker's own figure`)]))
  const { subcooling } = measures
  const valve = measures.valveSuperheat ?? measures.superheat
  if (!subcooling) return rule(missingEntries([nextReading('liquid-pressure')]))
  if (!valve) return rule(missingEntries([OUTLET]))

  const tolerance = LIMITS.subcoolingTolerance
  const apart = subtract(subcooling.quantity, target.quantity)
  const side = againstBand(apart, -tolerance.quantity.si, tolerance.quantity.si)
  const band = valveBand(asked, valve)
  const compared = (statement: Statement, source = tolerance.source) =>
    evidence(statement, source, [subcooling.evidence, target.evidence])
  if (side === 'too-close') {
    const reason = say`Subcooling ${subcooling.quantity} is ${byHowFar(apart)} the nameplate: an edge of the band of ${tolerance.quantity} lies within that uncertainty`
    return rule(tooClose('Subcooling', compared(reason, GUARD), widestOf(asked)))
  }
  if (band.side === 'too-close') return rule(tooClose('Valve superheat', band.evidence, OUTLET))

  const tooLittle = valveFeedsTooLittle(band.evidence, band.side === 'above')
  const tooMuch = valveFeedsTooMuch(band.evidence, band.side === 'below')
  const shared = [...unansweredStep(asked, 'subcooling'), tooMuch]
  switch (side) {
    case 'inside': {
      const inBand = compared(
        say`Subcooling ${subcooling.quantity} is within ${tolerance.quantity} of the nameplate ${target.quantity}`,
      )
      const lookAlikes = [tooLittle, tooMuch]
      return ruled(judgeInBand(asked, inBand, hold(inBand, [band.evidence]), lookAlikes))
    }
    case 'below': {
      // A high superheat beside little subcooling is a very short charge: the valve is wide open and still starved.
      const short = compared(
        say`Subcooling ${subcooling.quantity} is ${subtract(target.quantity, subcooling.quantity)} below the nameplate ${target.quantity}`,
      )
      const lookAlikes = [...shared, liquidLineRestriction(asked)]
      return ruled(
        judge(
          asked,
          {
            evidence: short,
            direction: 'into-system',
            watched: 'subcooling',
            value: subcooling.quantity,
            target: target.quantity,
          },
          lookAlikes,
        ),
      )
    }
    case 'above': {
      const over = compared(say`Subcooling ${subcooling.quantity} is ${apart} above the nameplate ${target.quantity}`)
      const lookAlikes = [...shared, tooLittle, gasOrPoorCondenserAir(asked)]
      return ruled(
        judge(
          asked,
          {
            evidence: over,
            direction: 'out-of-system',
            watched: 'subcooling',
            value: subcooling.quantity,
            target: target.quantity,
          },
          lookAlikes,
        ),
      )
    }
  }
}

const OUTLET: NextEntry = {
  entry: { kind: 'reading', what: 'evaporator-outlet-temperature' },
  why: say`the superheat at the coil outlet tells whether the valve is in control`,
}

/** Without airflow evidence subcooling may still speak, with a warning; with bad airflow it may not. */
function advised(condition: Condition): Condition {
  return condition.state === 'unknown' ? { ...condition, state: 'doubtful' } : condition
}

function widestOf({ visit, measures }: Case): NextEntry {
  return widest([
    ['liquid-temperature', visit.readings['liquid-temperature']?.quantity],
    ['liquid-pressure', measures.condensingTemperature?.quantity],
  ])
}
