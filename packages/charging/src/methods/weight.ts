import { kelvin, type Quantity, quantity, say } from '@chargewright/quantity'
import { saturationAtTemperature } from '@chargewright/refrigerant'
import type { Figure } from '@chargewright/visit'
import type { Condition, Dose, Finding, LookAlike } from '../assessment.ts'
import { equalised } from '../conditions/equalised.ts'
import { type Evidence, evidence, type Measure } from '../evidence.ts'
import { gate, missingEntries, nextFigure } from '../gate.ts'
import { CHARGE_TOLERANCE_SHARE, LIMITS } from '../limit.ts'
import { leaveTheCharge } from '../look-alikes/judge.ts'
import type { Case, Ruling } from '../ruling.ts'
import { hold } from '../sentence.ts'

type Mass = Quantity<'mass'>

/** Liquid temperature at which the liquid in a drier is reckoned: 100 °F, common practice. */
const LIQUID_K = kelvin((100 + 459.67) * (5 / 9))

/**
 * Every system that is empty, and the only exact way for a critical charge: the nameplate charge, plus what lines
 * beyond the included length, a larger drier and head-pressure control hold, weighed into the evacuated system.
 */
export function byWeight(asked: Case): Ruling {
  const { visit } = asked
  const total = amount(asked)
  const conditions: Condition[] = [...equalised(visit), systemEmpty(asked)]
  const rule = (finding: Finding, lookAlikes: readonly LookAlike[] = []): Ruling => ({
    conditions,
    lookAlikes,
    finding,
    ...(total ? { target: total } : {}),
  })
  const lost = lostCharge(asked)
  if (lost) return rule(leaveTheCharge(lost.evidence, lost), [lost])
  const stopped = gate(visit, conditions, [])
  if (stopped) return rule(stopped)
  if (!total) return rule(missingEntries([nextFigure('nameplateCharge', say`the charge to weigh in starts from it`)]))
  return rule(weighed(asked, total))
}

/** A charge that went missing left through a leak; weighing in anew would only lose it again. */
function lostCharge({ visit }: Case): LookAlike | undefined {
  const state = visit.observations['charge-state']
  const leak = visit.observations.leak
  if (state?.answer !== 'lost' && leak?.answer !== 'found') return undefined
  const seen =
    leak?.answer === 'found'
      ? { ...evidence(say`A leak was found and is not repaired`), eventId: leak.eventId }
      : {
          ...evidence(say`The charge went missing suddenly: it left through a leak`, [], 'common practice'),
          eventId: state!.eventId,
        }
  return { id: 'leak', label: say`a leak`, verdict: 'explains', evidence: seen }
}

function systemEmpty({ visit }: Case): Condition {
  const state = visit.observations['charge-state']
  switch (state?.answer) {
    case 'evacuated':
      return {
        id: 'system-empty',
        state: 'met',
        evidence: { ...evidence(say`The system is empty and evacuated`), eventId: state.eventId },
      }
    case 'charged':
      return {
        id: 'system-empty',
        state: 'unmet',
        evidence: { ...evidence(say`The system still holds a charge of unknown weight`), eventId: state.eventId },
        remedy: say`Recover all of it and weigh it, leak check, evacuate, then weigh in the right charge`,
      }
    case 'lost':
      return {
        id: 'system-empty',
        state: 'unmet',
        evidence: { ...evidence(say`The charge was lost; what is left is not known`), eventId: state.eventId },
        remedy: say`Recover what is left, repair the leak, leak check and evacuate first`,
      }
    default:
      return {
        id: 'system-empty',
        state: 'unknown',
        evidence: evidence(say`Nothing tells whether the system is empty`),
        remedy: say`A charge is weighed into an empty, evacuated system only`,
        next: {
          entry: { kind: 'observation', what: 'charge-state' },
          why: say`whether to recover first or to weigh in`,
        },
      }
  }
}

/** Nameplate + lines + drier + head-pressure control, each part with its evidence. */
function amount(asked: Case): Measure<Mass> | undefined {
  const { nameplateCharge, floodingCharge } = asked.visit.system.figures
  if (!nameplateCharge) return undefined
  const parts: Measure<Mass>[] = [
    figure('Nameplate charge', nameplateCharge),
    ...[lines(asked) ?? [], drier(asked) ?? []].flat(),
    ...(floodingCharge ? [figure('Head-pressure control', floodingCharge)] : []),
  ]
  const total = quantity(
    'mass',
    parts.reduce((sum, part) => sum + part.quantity.si, 0),
  )
  return {
    quantity: total,
    evidence: evidence(
      say`Charge to weigh in ${total}`,
      parts.map((part) => part.evidence),
      'sum of its parts',
    ),
  }
}

function figure(name: string, { quantity: value, typed, eventId }: Figure): Measure<Mass> {
  return { quantity: value as Mass, evidence: { ...evidence(say`${name} ${value}, typed “${typed}”`), eventId } }
}

/** Lines beyond (or short of) the length that the nameplate includes, at the maker's charge per length. */
function lines({ visit }: Case): Measure<Mass> | undefined {
  const { lineLength, includedLineLength, lineChargePerLength } = visit.system.figures
  if (!lineLength || !includedLineLength || !lineChargePerLength) return undefined
  const beyond = lineLength.quantity.si - includedLineLength.quantity.si
  const mass = quantity('mass', beyond * lineChargePerLength.quantity.si)
  const statement = say`Lines ${mass}: ${lineLength.quantity} less ${includedLineLength.quantity} included, at ${lineChargePerLength.quantity}`
  return {
    quantity: mass,
    evidence: { ...evidence(statement, [], 'maker, as entered'), eventId: lineChargePerLength.eventId },
  }
}

/** A larger replacement drier holds more liquid: the difference of volume, full of liquid. */
function drier({ visit, refrigerant }: Case): Measure<Mass> | undefined {
  const { oldDrierVolume, newDrierVolume } = visit.system.figures
  if (!oldDrierVolume || !newDrierVolume) return undefined
  const read = visit.readings['liquid-temperature']
  const T = read ? kelvin(read.quantity.si) : LIQUID_K
  const at = saturationAtTemperature(refrigerant, T)
  if (!at.ok) return undefined
  const mass = quantity(
    'mass',
    (newDrierVolume.quantity.si - oldDrierVolume.quantity.si) * at.value.bubble.density_kg_m3,
  )
  const assumed = read ? 'as read' : 'assumed'
  const statement = say`Drier ${mass}: ${newDrierVolume.quantity} in place of ${oldDrierVolume.quantity}, full of liquid at ${quantity('temperature', T)} (${assumed})`
  return {
    quantity: mass,
    evidence: {
      ...evidence(statement, [], `equation of state of ${refrigerant.name}`),
      eventId: newDrierVolume.eventId,
    },
  }
}

function weighed(asked: Case, total: Measure<Mass>): Finding {
  const { visit } = asked
  const emptied = visit.observations['charge-state']?.position ?? -1
  const moves = visit.moves.filter((move) => move.position > emptied)
  const net = moves.reduce((sum, { fact, mass }) => sum + (fact.direction === 'into-system' ? mass.si : -mass.si), 0)
  const u = Math.hypot(...moves.map(({ mass }) => mass.u ?? 0))
  const critical = visit.system.facts.meteringDevice === 'capillary'
  const tolerance = critical
    ? LIMITS.criticalChargeTolerance
    : {
        ...LIMITS.chargeTolerance,
        quantity: quantity(
          'mass',
          Math.max(LIMITS.chargeTolerance.quantity.si, CHARGE_TOLERANCE_SHARE * total.quantity.si),
        ),
      }
  const left = quantity('mass', Math.abs(total.quantity.si - net), u)
  const inSoFar = moves.length > 0 ? [evidence(say`Weighed in so far ${quantity('mass', net, u)}`)] : []

  if (left.si <= tolerance.quantity.si) {
    if (u > tolerance.quantity.si) return tooCoarse(u, tolerance.quantity, inSoFar)
    return hold(
      evidence(
        say`The weighed charge is within ${tolerance.quantity} of ${total.quantity}`,
        [total.evidence, ...inSoFar],
        tolerance.source,
      ),
    )
  }
  const mass = quantity('mass', left.si)
  const under = total.quantity.si > net
  const reason = evidence(under ? say`${mass} are still to go in` : say`${mass} too much went in`, [
    total.evidence,
    ...inSoFar,
  ])
  const resolve = evidence(say`The scale must resolve ${tolerance.quantity}`, [], tolerance.source)
  return under ? weighIn(mass, reason, resolve) : takeOut(mass, reason, resolve)
}

function tooCoarse(u: number, tolerance: Mass, inSoFar: readonly Evidence[]): Finding {
  return {
    kind: 'cannot-tell',
    sentence: say`The scale is too coarse for this charge`,
    reasons: [
      evidence(
        say`The weighed charge is uncertain by ${quantity('mass', 2 * u)}; it must be right within ${tolerance}`,
        inSoFar,
      ),
    ],
    steps: [say`Recover, and weigh in again on a finer scale`],
    next: [],
  }
}

function weighIn(mass: Mass, reason: Evidence, resolve: Evidence): Finding {
  const dose: Dose = {
    direction: 'into-system',
    mass,
    phase: 'liquid',
    port: 'liquid-line',
    compressor: 'stopped',
    evidence: reason,
  }
  return {
    kind: 'add',
    sentence: say`Weigh in ${mass}, as liquid, into the high side of the stopped system`,
    reasons: [reason, resolve],
    steps: [
      say`Evacuate the hose, set the scale to zero, weigh in with the compressor off`,
      say`If the cylinder gives no more before all is in, close the high side; the rest goes in as vapour at the suction port of the running system`,
      say`Wait ${LIMITS.equaliseTime.quantity} for the pressures to equalise, then start`,
    ],
    dose,
    next: [],
  }
}

function takeOut(mass: Mass, reason: Evidence, resolve: Evidence): Finding {
  const dose: Dose = {
    direction: 'out-of-system',
    mass,
    phase: 'liquid',
    port: 'liquid-line',
    compressor: 'stopped',
    evidence: reason,
  }
  return {
    kind: 'recover',
    sentence: say`Recover ${mass} into a recovery cylinder`,
    reasons: [reason, resolve],
    steps: [say`Weigh the cylinder before and after; where the charge is critical, recover all and weigh in again`],
    dose,
    next: [],
  }
}
