import { type Quantity, quantity, say } from '@chargewright/quantity'
import { type ReadingId, readingKind } from '@chargewright/visit'
import type { Condition, Finding, LookAlike, NextEntry } from '../assessment.ts'
import { againstBand, type Side } from '../compare.ts'
import { airflow } from '../conditions/airflow.ts'
import { equalised } from '../conditions/equalised.ts'
import { settled } from '../conditions/settled.ts'
import { nextDose } from '../dose.ts'
import { type Evidence, evidence, type Measure } from '../evidence.ts'
import { gate, missingEntries, missingReadings, nextFigure } from '../gate.ts'
import { LIMITS } from '../limit.ts'
import { gasOrPoorCondenserAir } from '../look-alikes/gas-or-poor-condenser-air.ts'
import { otherCause } from '../look-alikes/judge.ts'
import { liquidLineRestriction } from '../look-alikes/liquid-line-restriction.ts'
import { valveFeedsTooLittle, valveFeedsTooMuch } from '../look-alikes/valve.ts'
import type { Case, Ruling } from '../ruling.ts'
import { charge, hold } from '../sentence.ts'

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
    ...[equalised(visit) ?? []].flat(),
    settled(visit, NEEDED),
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
    ...(target ? { target } : {}),
  })

  const stopped = gate(conditions)
  if (stopped) return rule(stopped)
  const missing = missingReadings(visit, NEEDED)
  if (missing) return rule(missing)
  if (!target)
    return rule(missingEntries([nextFigure('nameplateSubcooling', say`the target is the maker's own figure`)]))
  const { subcooling } = measures
  const valve = measures.valveSuperheat ?? measures.superheat
  if (!subcooling)
    return rule(
      missingEntries([
        { entry: { kind: 'reading', what: 'liquid-pressure' }, why: say`the subcooling cannot be derived` },
      ]),
    )
  if (!valve) return rule(missingEntries([outletTemperature]))

  const tolerance = LIMITS.subcoolingTolerance
  const apart = quantity('temperature difference', subcooling.quantity.si - target.quantity.si, subcooling.quantity.u)
  const side = againstBand(apart, -tolerance.quantity.si, tolerance.quantity.si)
  const band = valveBand(asked, valve)
  const from = [subcooling.evidence, target.evidence]
  if (side === 'too-close')
    return rule(
      tooClose(
        evidence(
          say`Subcooling ${subcooling.quantity} is ${apart} from the nameplate: an edge of the band of ${tolerance.quantity} lies within that uncertainty`,
          from,
          GUARD,
        ),
        widest(asked),
      ),
    )
  if (band.side === 'too-close') return rule(tooClose(band.evidence, outletTemperature))

  switch (side) {
    case 'inside': {
      const inBand = evidence(
        say`Subcooling ${subcooling.quantity} is within ${tolerance.quantity} of the nameplate ${target.quantity}`,
        from,
        tolerance.source,
      )
      if (band.side === 'inside') return rule(hold(inBand, [band.evidence]))
      const cause = band.side === 'above' ? valveFeedsTooLittle(band.evidence) : valveFeedsTooMuch(band.evidence)
      return rule(otherCause(inBand, [cause])!, [cause])
    }
    case 'below': {
      const short = quantity('temperature difference', -apart.si, apart.u)
      const deviation = evidence(
        say`Subcooling ${subcooling.quantity} is ${short} below the nameplate ${target.quantity}`,
        from,
        tolerance.source,
      )
      const lookAlikes = [
        band.side === 'below' ? valveFeedsTooMuch(band.evidence) : excluded(valveFeedsTooMuch(band.evidence)),
        liquidLineRestriction(asked),
      ]
      return rule(
        otherCause(deviation, lookAlikes) ??
          charge(asked, deviation, lookAlikes, nextDose(asked, 'into-system', 'subcooling', -apart.si)),
        lookAlikes,
      )
    }
    case 'above': {
      const deviation = evidence(
        say`Subcooling ${subcooling.quantity} is ${apart} above the nameplate ${target.quantity}`,
        from,
        tolerance.source,
      )
      const lookAlikes = [
        ...(band.side === 'above'
          ? [valveFeedsTooLittle(band.evidence)]
          : [excluded(valveFeedsTooLittle(band.evidence))]),
        ...(band.side === 'below' ? [valveFeedsTooMuch(band.evidence)] : []),
        gasOrPoorCondenserAir(asked),
      ]
      return rule(
        otherCause(deviation, lookAlikes) ??
          charge(asked, deviation, lookAlikes, nextDose(asked, 'out-of-system', 'subcooling', -apart.si)),
        lookAlikes,
      )
    }
  }
}

const GUARD = 'guard of one standard uncertainty (JCGM 106:2012)'

const outletTemperature: NextEntry = {
  entry: { kind: 'reading', what: 'evaporator-outlet-temperature' },
  why: say`the superheat at the coil outlet tells whether the valve is in control`,
}

/** Without airflow evidence subcooling may still speak, with a warning; with bad airflow it may not. */
function advised(condition: Condition): Condition {
  return condition.state === 'unknown' ? { ...condition, state: 'doubtful' } : condition
}

function excluded(lookAlike: LookAlike): LookAlike {
  return { ...lookAlike, verdict: 'excluded' }
}

function valveBand({ visit }: Case, valve: Measure<Difference>): { readonly side: Side; readonly evidence: Evidence } {
  const { valveSuperheatMin, valveSuperheatMax } = visit.system.figures
  const low = valveSuperheatMin?.quantity ?? LIMITS.valveSuperheatMin.quantity
  const high = valveSuperheatMax?.quantity ?? LIMITS.valveSuperheatMax.quantity
  const source = valveSuperheatMin && valveSuperheatMax ? 'maker, as entered' : LIMITS.valveSuperheatMin.source
  const side = againstBand(valve.quantity, low.si, high.si)
  const words = { below: 'below', above: 'above', inside: 'within', 'too-close': 'too close to the edge of' } as const
  return {
    side,
    evidence: evidence(
      say`Valve superheat ${valve.quantity} is ${words[side]} ${low} to ${high}`,
      [valve.evidence],
      source,
    ),
  }
}

function tooClose(reason: Evidence, next: NextEntry): Finding {
  return {
    kind: 'cannot-tell',
    sentence: say`The reading is too close to the edge of its band for these instruments`,
    reasons: [reason],
    steps: [say`Read again with a better instrument: ${next.why}`],
    next: [next],
  }
}

function widest({ visit, measures }: Case): NextEntry {
  const byPressure = measures.condensingTemperature?.quantity.u ?? 0
  const byTemperature = visit.readings['liquid-temperature']?.quantity.u ?? 0
  const what = byPressure > byTemperature ? 'liquid-pressure' : 'liquid-temperature'
  return {
    entry: { kind: 'reading', what },
    why: say`${readingKind(what).label} has the largest share in the uncertainty`,
  }
}
