import { solve } from '@chargewright/cycle'
import type { DeviceCalibration } from './calibration.ts'
import type { Cause } from './cause.ts'
import type { Family } from './family.ts'
import { HYPOTHESES, isCharge } from './hypotheses.ts'
import type { Hypothesis } from './hypothesis.ts'
import { OBSERVABLE_NAMES } from './observable.ts'
import { COUNT } from './observe.ts'
import { effectIn, type Point } from './point.ts'
import { seenIn, soundHealth } from './predict.ts'
import type { Setting } from './setting.ts'

/**
 * Two faults at once, on a coarse grid: one solve each, with the slopes of the one that stands alone, which differ by
 * less than the cells are wide.
 *
 * @param singles points of the single causes, from which the pairs are made
 */
export function pairPoints(
  family: Family,
  settings: readonly Setting[],
  hypotheses: readonly Hypothesis[],
  singles: readonly Point[],
  calibration: DeviceCalibration,
): readonly Point[] {
  const faults = hypotheses.filter(({ cause }) => cause !== 'sound' && !isCharge(cause))
  return faults.flatMap((fault, f) => {
    const own = coarse(singles.filter(({ causes }) => causes[0] === fault.cause))
    const withCharge = own.flatMap((point) =>
      CHARGES.flatMap((charge) =>
        pairPoint(family, settings, calibration, point, chargeFault(charge), charge, own.length),
      ),
    )
    const withOthers = faults.slice(f + 1).flatMap((other) =>
      own.flatMap((point) => {
        const severity = other.grid[Math.floor(other.grid.length / 2)]!
        return pairPoint(family, settings, calibration, point, other, severity, own.length)
      }),
    )
    return [...withCharge, ...withOthers]
  })
}

const CHARGES = [-0.28, -0.14, 0.14, 0.28]
/** Spread of the charge within a pair's cell. */
const PAIR_CHARGE_SD = 0.055
/** Prior of any two given faults over the product of their priors: faults do not know of each other. */
const TOGETHER = 1

const chargeFault = (charge: number): Hypothesis => HYPOTHESES[charge < 0 ? 'short-of-charge' : 'overcharged']

/** A mild and a severe one. */
const coarse = (points: readonly Point[]): readonly Point[] =>
  points.length < 3 ? points : [points[1]!, points[points.length - 2]!]

function pairPoint(
  { nominal }: Family,
  settings: readonly Setting[],
  calibration: DeviceCalibration,
  single: Point,
  other: Hypothesis,
  severity: number,
  cells: number,
): readonly Point[] {
  const first: Cause = single.causes[0]
  const touches = isCharge(other.cause)
  const values = new Float64Array(settings.length * COUNT)
  for (const [set, setting] of settings.entries()) {
    const alone = HYPOTHESES[first].apply(
      { system: nominal, health: soundHealth(nominal, setting.added_kg) },
      single.severities[0]!,
    )
    const both = effectIn(setting, other, calibration)(alone, severity)
    const solution = solve(both.system, setting.at, both.health, single.unknowns[set])
    if (solution.kind !== 'steady') return []
    const seen = seenIn(setting)(solution.readings, both.system, both.health)
    for (let i = 0; i < COUNT; i++) values[set * COUNT + i] = seen[i]! + calibration.offset[OBSERVABLE_NAMES[i]!]
  }
  const charge = (touches ? severity : 0) + settings.at(-1)!.added
  const share = cells * (touches ? CHARGES.length / 2 : 1)
  return [
    {
      causes: [first, touches ? chargeFault(charge).cause : other.cause],
      severities: [single.severities[0]!, touches ? charge : severity],
      charge,
      lnPrior: Math.log((TOGETHER * HYPOTHESES[first].prior * other.prior) / share),
      unknowns: single.unknowns,
      model: {
        ...single.model,
        values,
        severity: { ...single.model.severity, sd: PAIR_SEVERITY * single.model.severity.sd },
        charge: { ...single.model.charge, sd: touches ? PAIR_CHARGE_SD : single.model.charge.sd },
      },
    },
  ]
}

/** A pair's cell of severity is this much wider than that of the single cause. */
const PAIR_SEVERITY = 2
