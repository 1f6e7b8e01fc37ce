import { TWIN_VERSION } from '@chargewright/cycle'
import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { discrepancyBetweenSets } from './alike.ts'
import { type Belief, beliefOf } from './belief.ts'
import type { Calibration } from './calibration.ts'
import type { Cause } from './cause.ts'
import { chargeEstimate } from './charge-estimate.ts'
import type { Diagnosis, Pair, Single } from './diagnosis.ts'
import { lnSum } from './evidence.ts'
import type { Family } from './family.ts'
import { HYPOTHESES, hypothesesFor } from './hypotheses.ts'
import { COMMON_INSTRUMENTS, type Instruments } from './instruments.ts'
import type { Memory } from './memory.ts'
import { misfitOf } from './misfit.ts'
import { type Mixture, moments } from './mixture.ts'
import { observe } from './observe.ts'
import { outlook } from './outlook.ts'
import type { WeighedSet } from './reading-set.ts'
import { remember } from './remember.ts'
import { rightlyCharged } from './rightly-charged.ts'
import { instrumentCovariance, type Row, rowsIn } from './rows.ts'
import { settingsOf } from './setting.ts'
import { solvedPoints } from './solved-points.ts'
import { type MakersWord, toldByMaker } from './told-by-maker.ts'
import { beforehand, type Gaussian, type WeighedPoint, weigh } from './weigh.ts'

/** What a diagnosis may be told besides the readings. */
export interface Knowledge {
  readonly calibration: Calibration
  /** What earlier visits taught about this system. */
  readonly memory?: Memory
  readonly instruments?: Instruments
  /** What its maker prints of a sound one in the weather of the first set. */
  readonly maker?: MakersWord
  /** Causes that something else has ruled out, such as a measured airflow. */
  readonly ruledOut?: readonly Cause[]
}

/**
 * Which cause explains the readings.
 *
 * Each cause at each severity predicts every reading by the twin; how readings move with all that is unknown about this
 * system comes along the twin's tangent. So the readings' probability under a point is that of one Gaussian, and points
 * are compared by prior times evidence.
 *
 * @param sets settled sets of readings of one visit, in order; after a weighed step comes another set
 * @returns a problem where the calibration or the memory was made for another twin, the weather makes no sense, nothing
 *   was read, or the system would run in no state that is known
 */
export function diagnose(
  family: Family,
  sets: readonly WeighedSet[],
  knowledge: Knowledge,
): Result<Diagnosis, Problem> {
  const weighed = weighCauses(family, sets, knowledge)
  if (!weighed.ok) return weighed
  const { calibration, memory } = knowledge
  const width = calibration.devices[family.device].intervalWidth
  return ok(assembled(weighed.value, sets.length, width, calibration.version, memory))
}

/** The answer from the weights of all points. */
function assembled(
  { singles, pairs, belief, rows, taught }: WeighedCauses,
  sets: number,
  width: number,
  calibration: string,
  memory?: Memory,
): Diagnosis {
  const total = lnTotal(singles)
  const shares = new Map(singles.map(({ point, lnWeight }) => [point, Math.exp(lnWeight - total)]))
  const totals = new Map(grouped(singles, causeOf).map(({ key, points }) => [key, lnTotal(points)]))
  const within = singles.map((point) => Math.exp(point.lnWeight - totals.get(causeOf(point))!))
  return {
    twin: TWIN_VERSION,
    calibration,
    singles: asSingles(singles, total, width),
    pairs: asPairs(pairs, width),
    pairShare: pairs.length === 0 ? 0 : 1 / (1 + Math.exp(total - lnTotal(pairs))),
    charge: chargeEstimate(
      mixtureOf(singles, ({ charge }) => charge),
      width,
    ),
    misfit: misfitOf(singles),
    readings: outlook(singles, within, rows, sets, belief),
    memory: remember(taught.belief, taught.singles, shares, TWIN_VERSION, memory),
  }
}

/** Every point of every cause with what the readings say of it. */
export interface WeighedCauses {
  readonly singles: readonly WeighedPoint[]
  readonly pairs: readonly WeighedPoint[]
  readonly belief: Belief
  readonly rows: readonly Row[]
  /** What the readings alone teach of the system: the maker's word is told anew at every visit. */
  readonly taught: { readonly belief: Belief; readonly singles: readonly WeighedPoint[] }
}

function weighCauses(
  family: Family,
  sets: readonly WeighedSet[],
  { calibration, memory, maker, ruledOut = [], instruments = COMMON_INSTRUMENTS }: Knowledge,
): Result<WeighedCauses, Problem> {
  for (const made of [calibration.twin, memory?.twin]) {
    if (made !== undefined && made !== TWIN_VERSION) {
      const accepted = `one made for version ${TWIN_VERSION} of the twin`
      return fail({ kind: 'unsolved', field: 'calibration or memory', value: `for version ${made}`, accepted })
    }
  }
  const settings = settingsOf(family.nominal, sets, calibration.devices[family.device])
  if (!settings.ok) return settings
  const observed = sets.map(({ readings }) => observe(family.nominal.properties, readings, instruments))
  const rows = rowsIn(observed)
  if (rows.length === 0)
    return fail({ kind: 'missing', field: 'readings', value: '', accepted: 'pressures or temperatures of the circuit' })
  const own = calibration.devices[family.device]
  const hypotheses = hypothesesFor(family.device).filter(({ cause }) => !ruledOut.includes(cause))
  const points = solvedPoints(family, settings.value, hypotheses, own)
  const believed = beliefOf(family, own, memory)
  const sound = maker && solvedPoints(family, settings.value.slice(0, 1), [HYPOTHESES.sound], own).singles[0]
  const belief = maker && sound ? toldByMaker(believed, sound.model, maker) : believed
  const noise = plus(instrumentCovariance(rows, observed), discrepancyBetweenSets(rows, settings.value, own))
  const before = beforehand(belief, rows, settings.value, noise)
  const right = rightlyCharged(family, settings.value, own)
  const singles = weigh(points.singles, rows, before, own, right)
  if (singles.length === 0) {
    const accepted = 'conditions in which a system of this nameplate runs'
    return fail({ kind: 'unsolved', field: 'weather', value: 'no steady state', accepted })
  }
  const taught =
    belief === believed
      ? singles
      : weigh(points.singles, rows, beforehand(believed, rows, settings.value, noise), own, right)
  const pairs = weigh(points.pairs, rows, before, own, right)
  return ok({ singles, pairs, belief, rows, taught: { belief: believed, singles: taught } })
}

const plus = (a: Float64Array, b: Float64Array) => a.map((value, i) => value + b[i]!)

const lnTotal = (points: readonly WeighedPoint[]) => lnSum(points.map(({ lnWeight }) => lnWeight))

const causeOf = ({ point }: WeighedPoint): Cause => point.causes[0]

function mixtureOf(points: readonly WeighedPoint[], of: (point: WeighedPoint) => Gaussian): Mixture {
  const total = lnTotal(points)
  return points.map((point) => ({ ...of(point), share: Math.exp(point.lnWeight - total) }))
}

function asSingles(points: readonly WeighedPoint[], total: number, width: number): readonly Single[] {
  return grouped(points, causeOf)
    .map(
      ({ key, points: own }): Single => ({
        cause: key,
        probability: Math.exp(lnTotal(own) - total),
        severity: moments(mixtureOf(own, ({ severity }) => severity)),
        charge: chargeEstimate(
          mixtureOf(own, ({ charge }) => charge),
          width,
        ),
      }),
    )
    .toSorted((a, b) => b.probability - a.probability)
}

function asPairs(points: readonly WeighedPoint[], width: number): readonly Pair[] {
  const total = lnTotal(points)
  return grouped(points, ({ point }) => point.causes.join(' and '))
    .map(({ points: own }): Pair => {
      const best = own.reduce((a, b) => (b.lnWeight > a.lnWeight ? b : a))
      const [first, second] = best.point.causes
      return {
        causes: [first, second!],
        probability: Math.exp(lnTotal(own) - total),
        severities: [best.point.severities[0]!, best.point.severities[1]!],
        charge: chargeEstimate(
          mixtureOf(own, ({ charge }) => charge),
          width,
        ),
      }
    })
    .toSorted((a, b) => b.probability - a.probability)
}

function grouped<Key>(points: readonly WeighedPoint[], keyOf: (point: WeighedPoint) => Key) {
  const groups = new Map<Key, WeighedPoint[]>()
  for (const point of points) {
    const key = keyOf(point)
    const group = groups.get(key)
    if (group) group.push(point)
    else groups.set(key, [point])
  }
  return [...groups].map(([key, own]) => ({ key, points: own }))
}
