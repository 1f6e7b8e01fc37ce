import { alike } from './alike.ts'
import { type Belief, linkedIn } from './belief.ts'
import type { DeviceCalibration } from './calibration.ts'
import { type Beforehand, type Evidence, evidence, type LinearModel } from './evidence.ts'
import { dot, solved } from './gaussian.ts'
import { COUNT } from './observe.ts'
import type { Point } from './point.ts'
import { clampDirections, type Row } from './rows.ts'
import type { Setting } from './setting.ts'

/** A point with what the readings say of it. */
export interface WeighedPoint {
  readonly point: Point
  /** ln of prior times flattened evidence; only differences between points mean something. */
  readonly lnWeight: number
  readonly evidence: Evidence
  /** Those rows of its model that were read. */
  readonly model: LinearModel
  readonly severity: Gaussian
  readonly charge: Gaussian
}

export interface Gaussian {
  readonly mean: number
  readonly variance: number
}

/**
 * @param calibration the power to which the evidence is raised, and how far a cause's effect may be wrong
 * @param right what a sound, rightly charged system reads, against which effects are counted; where none runs, none is
 *   doubted
 */
export function weigh(
  points: readonly Point[],
  rows: readonly Row[],
  before: Beforehand,
  { flattening, signature }: Pick<DeviceCalibration, 'flattening' | 'signature'>,
  right: Float64Array | undefined,
): readonly WeighedPoint[] {
  return points.flatMap((point) => {
    const { values } = point.model
    const doubt = values.map((value, i) => (right ? signature * (value - right[i]!) : 0))
    const model = read({ ...point.model, doubt }, rows, before.unknowns)
    const found = evidence(model, before, (i, predicted) => residual(rows[i]!, predicted))
    if (!found || !Number.isFinite(found.ln)) return []
    const severity = along(model.severity, found)
    const charge = along(model.charge, found)
    const isChargeItself = model.charge.sd === 0
    return [
      {
        point,
        model,
        evidence: found,
        lnWeight: point.lnPrior + flattening * found.ln,
        severity: { mean: point.severities[0]! + severity.mean, variance: severity.variance },
        charge: isChargeItself
          ? { mean: point.charge + severity.mean, variance: severity.variance }
          : { mean: point.charge + charge.mean, variance: charge.variance },
      },
    ]
  })
}

/**
 * Superheat that reads next to nothing says only that no vapour arrives dry: whatever lies below it is then no
 * contradiction.
 */
function residual({ observable, value }: Row, predicted: number): number {
  return observable === 'superheat' && value < WET_K && predicted < value ? 0 : value - predicted
}

/** A thermometer at a wet line shows no more superheat than this: *common practice*. */
const WET_K = 1.5

export function read(
  { values, slopes, severity, charge, doubt }: LinearModel,
  rows: readonly Row[],
  columns: number,
): LinearModel {
  const pick = (all: Float64Array) => Float64Array.from(rows, ({ set, index }) => all[set * COUNT + index]!)
  const picked = new Float64Array(rows.length * columns)
  for (const [i, { set, index }] of rows.entries()) {
    const from = (set * COUNT + index) * columns
    picked.set(slopes.subarray(from, from + columns), i * columns)
  }
  return {
    values: pick(values),
    slopes: picked,
    severity: { slope: pick(severity.slope), sd: severity.sd },
    charge: { slope: pick(charge.slope), sd: charge.sd },
    doubt: pick(doubt),
  }
}

/** Posterior of the amount along a direction, about the centre of its cell. */
function along({ slope, sd }: LinearModel['severity'], { pull, triangle }: Evidence): Gaussian {
  const variance = sd * sd
  return {
    mean: variance * dot(slope, pull),
    variance: variance - variance * variance * dot(slope, solved(triangle, slope)),
  }
}

export const beforehand = (
  belief: Belief,
  rows: readonly Row[],
  settings: readonly Setting[],
  noise: Float64Array,
): Beforehand => ({
  unknowns: belief.mean.length,
  mean: belief.mean,
  covariance: belief.covariance,
  linked: linkedIn(belief),
  noise,
  alike: alikeRows(rows, settings),
  clamps: clampDirections(rows),
})

function alikeRows(rows: readonly Row[], settings: readonly Setting[]): Float64Array {
  return Float64Array.from(
    rows.flatMap(({ index, set }) =>
      rows.map((other) => (other.index === index ? alike(settings[set]!, settings[other.set]!) : 0)),
    ),
  )
}
