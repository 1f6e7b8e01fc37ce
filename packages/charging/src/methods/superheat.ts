import { type Quantity, quantity, say } from '@chargewright/quantity'
import { type ReadingId, readingKind } from '@chargewright/visit'
import type { Condition, Finding, NextEntry } from '../assessment.ts'
import { againstBand } from '../compare.ts'
import { airflow } from '../conditions/airflow.ts'
import { equalised } from '../conditions/equalised.ts'
import { outdoorTemperature } from '../conditions/outdoor-temperature.ts'
import { settled } from '../conditions/settled.ts'
import { nextDose } from '../dose.ts'
import { type Evidence, evidence, type Measure } from '../evidence.ts'
import { gate, missingEntries, missingReadings, nextReading } from '../gate.ts'
import { LIMITS } from '../limit.ts'
import { gasOrPoorCondenserAir } from '../look-alikes/gas-or-poor-condenser-air.ts'
import { otherCause } from '../look-alikes/judge.ts'
import { liquidLineRestriction } from '../look-alikes/liquid-line-restriction.ts'
import { weakCompressor } from '../look-alikes/weak-compressor.ts'
import type { Case, Ruling } from '../ruling.ts'
import { charge, hold } from '../sentence.ts'
import { type SuperheatTarget, superheatTarget } from '../target/superheat-target.ts'

type Difference = Quantity<'temperature difference'>

const NEEDED: readonly ReadingId[] = ['suction-pressure', 'suction-temperature', 'condenser-entering-air']

/**
 * Fixed orifice and capillary air conditioners: superheat at the compressor against a target that falls as it gets
 * hotter outdoors and rises with the wet bulb of the return air. Above the band vapour is added to the running low
 * side, below it refrigerant is recovered; a high superheat at high load is normal.
 */
export function bySuperheat(asked: Case): Ruling {
  const { visit, measures } = asked
  const target = superheatTarget(visit, measures)
  const conditions: Condition[] = [
    ...[equalised(visit) ?? []].flat(),
    settled(visit, NEEDED),
    outdoorTemperature(visit),
    airflow(visit, measures),
    ...(target.ok ? validTarget(target.value) : []),
  ]
  const rule = (finding: Finding, lookAlikes: Ruling['lookAlikes'] = []): Ruling => ({
    conditions,
    lookAlikes,
    finding,
    ...(target.ok && target.value.kind === 'target' ? { target: target.value.measure } : {}),
  })
  if (!target.ok) return { ...rule(missingEntries([unreadableChart])), problems: [target.error] }

  const stopped = gate(conditions)
  if (stopped) return rule(stopped)
  const missing = missingReadings(visit, NEEDED)
  if (missing) return rule(missing)
  if (target.value.kind === 'missing') return rule(missingEntries([nextReading(target.value.what)]))
  const { superheat } = measures
  if (target.value.kind === 'none' || !superheat) return rule(missingEntries(NEEDED.map(nextReading)))

  const aim = target.value.measure
  const tolerance = LIMITS.superheatTolerance
  const apart = quantity(
    'temperature difference',
    superheat.quantity.si - aim.quantity.si,
    Math.hypot(superheat.quantity.u ?? 0, aim.quantity.u ?? 0),
  )
  const from = [superheat.evidence, aim.evidence]
  const side = againstBand(apart, -tolerance.quantity.si, tolerance.quantity.si)
  switch (side) {
    case 'inside':
      return rule(
        hold(
          evidence(
            say`Superheat ${superheat.quantity} is within ${tolerance.quantity} of its target ${aim.quantity}`,
            from,
            tolerance.source,
          ),
        ),
      )
    case 'too-close':
      return rule(tooClose(apart, superheat, aim, asked))
    case 'above': {
      const deviation = evidence(
        say`Superheat ${superheat.quantity} is ${apart} above its target ${aim.quantity}`,
        from,
        tolerance.source,
      )
      const lookAlikes = [liquidLineRestriction(asked)]
      return rule(
        otherCause(deviation, lookAlikes) ??
          charge(asked, deviation, lookAlikes, nextDose(asked, 'into-system', 'superheat', -apart.si)),
        lookAlikes,
      )
    }
    case 'below': {
      const under = quantity('temperature difference', -apart.si, apart.u)
      const deviation = evidence(
        say`Superheat ${superheat.quantity} is ${under} below its target ${aim.quantity}`,
        from,
        tolerance.source,
      )
      const lookAlikes = [weakCompressor(asked), gasOrPoorCondenserAir(asked)]
      return rule(
        otherCause(deviation, lookAlikes) ??
          charge(asked, deviation, lookAlikes, nextDose(asked, 'out-of-system', 'superheat', -apart.si)),
        lookAlikes,
      )
    }
  }
}

/** The target as a condition: there must be one, and it must lie clear of the least that can be tested. */
function validTarget(target: SuperheatTarget): readonly Condition[] {
  const remedy = say`Warm the return air or wait for other weather and test again, or recover, evacuate and weigh in`
  switch (target.kind) {
    case 'missing':
      return []
    case 'none':
      return [
        {
          id: 'target',
          state: 'unmet',
          evidence: evidence(say`No valid test: ${target.because}`, [], target.source),
          remedy,
        },
      ]
    case 'target': {
      const { quantity: least, source } = LIMITS.lowestTargetSuperheat
      const { quantity: aim, evidence: tree } = target.measure
      const clear = aim.si - (aim.u ?? 0) - target.departure >= least.si
      const statement = clear
        ? say`The target superheat is at least ${least}`
        : say`No valid test: the target superheat ${aim} is not clearly above ${least}`
      return [
        {
          id: 'target',
          state: clear ? 'met' : 'unmet',
          evidence: evidence(statement, [tree], source),
          ...(clear ? {} : { remedy }),
        },
      ]
    }
  }
}

const unreadableChart: NextEntry = {
  entry: { kind: 'fact', what: 'makersChart' },
  why: say`the maker's chart was entered and cannot be read`,
}

function tooClose(apart: Difference, superheat: Measure<Difference>, aim: Measure<Difference>, asked: Case): Finding {
  const worst = widest(asked, aim)
  const reason: Evidence = evidence(
    say`Superheat ${superheat.quantity} is ${apart} from its target ${aim.quantity}: an edge of the band of ${LIMITS.superheatTolerance.quantity} lies within that uncertainty`,
    [superheat.evidence, aim.evidence],
    'guard of one standard uncertainty (JCGM 106:2012)',
  )
  return {
    kind: 'cannot-tell',
    sentence: say`Superheat is too close to the edge of its band for these instruments`,
    reasons: [reason],
    steps: [say`Read again with a better instrument: ${worst.why}`],
    next: [worst],
  }
}

/** The reading that widens the answer most. */
function widest({ visit, measures }: Case, aim: Measure<Difference>): NextEntry {
  const shares: readonly (readonly [ReadingId, number])[] = [
    ['suction-temperature', visit.readings['suction-temperature']?.quantity.u ?? 0],
    ['suction-pressure', measures.evaporatingTemperature?.quantity.u ?? 0],
    ['return-air-wet-bulb', aim.quantity.u ?? 0],
  ]
  const [what] = shares.reduce((a, b) => (b[1] > a[1] ? b : a))
  return {
    entry: { kind: 'reading', what },
    why: say`${readingKind(what).label} has the largest share in the uncertainty`,
  }
}
