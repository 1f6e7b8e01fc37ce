import { fail, type Kelvin, ok, outOfRange, type Problem, type Result } from '@chargewright/quantity'
import type { Refrigerant } from '../refrigerant.ts'
import { type ChartError, chartErrorOf, type ReadingPressures, readingPressures } from './chart-error.ts'
import { type ClosedVolume, solveClosedVolume } from './closed-volume.ts'
import { filledVolume } from './filled-volume.ts'
import { type LeakPoint, leakPath, pointOf } from './leak-path.ts'

export interface LeakRequest {
  readonly refrigerant: Refrigerant
  /** Of the whole system, at rest. */
  readonly temperature: Kelvin
  /** Share of the mass that has gone, 0 to 0.95. */
  readonly lost: number
  /** Liquid's share of the inner volume before the leak, 0.01 to 0.95; 0.3 unless given. */
  readonly liquidFill?: number
  /** Where it leaks from: the vapour space unless said otherwise. */
  readonly from?: 'vapour' | 'liquid'
  /** Mass after topping up with fresh refrigerant, as a share of the first mass; no topping up unless given. */
  readonly topUpTo?: number
  /** Dew temperature at which a technician reads superheat; 5 °C unless given. */
  readonly evaporating?: Kelvin
  /** Bubble temperature at which a technician reads subcooling; 40 °C unless given. */
  readonly condensing?: Kelvin
}

/**
 * What a slow leak makes of a blend, at rest and at constant temperature. The composition that circulates afterwards is
 * taken to be the overall one; a running system, with its liquid spread over it, comes close to that.
 */
export interface Leak {
  readonly refrigerant: string
  readonly temperature_K: number
  readonly from: 'vapour' | 'liquid'
  readonly before: Content
  readonly after: Content
  readonly toppedUp?: Content
  /** From before to after, in steps of equal loss while there is liquid; after that nothing shifts any more. */
  readonly path: readonly PathPoint[]
  /** Share lost when the last liquid went, if it did. */
  readonly liquidGoneAt?: number
}

export interface PathPoint {
  readonly lost: number
  readonly pressure_Pa: number
  readonly massFractions: Readonly<Record<string, number>>
}

export interface Content extends PathPoint {
  /** Share of the inner volume. */
  readonly liquidVolumeFraction: number
  /** Absent once the liquid has gone. */
  readonly liquidMassFractions?: Readonly<Record<string, number>>
  /** Pressure at rest less that before the leak, at the same temperature. */
  readonly pressureShift_Pa: number
  readonly chartError: ChartError
}

const MAX_LOST = 0.95
const DEFAULT_FILL = 0.3
const STEPS = 12

/**
 * Composition, pressure and chart error after a leak, from the equations of state.
 *
 * @returns problems of `temperature`, `lost`, `liquidFill`, `topUpTo`, `evaporating` or `condensing` with their range
 * @source Rayleigh 1902 [rayleigh1902] for the leak; phase equilibrium from this package
 */
export function leak(request: LeakRequest): Result<Leak, Problem> {
  const { refrigerant, temperature, lost, liquidFill = DEFAULT_FILL, from = 'vapour', topUpTo } = request
  const problem =
    outOfRange('lost', lost, 0, MAX_LOST, 'kg/kg') ??
    outOfRange('liquidFill', liquidFill, 0.01, 0.95, 'm³/m³') ??
    (topUpTo === undefined ? undefined : outOfRange('topUpTo', topUpTo, 1 - lost, 1, 'kg/kg'))
  if (problem) return fail(problem)
  const pressures = readingPressures(refrigerant, request.evaporating, request.condensing)
  if (!pressures.ok) return pressures
  const filled = filledVolume(refrigerant, temperature, liquidFill)
  if (!filled.ok) return filled
  const { volume, content } = filled.value
  const points = leakPath(volume, content, from, lost, STEPS)
  if (!points) return fail(unsolved(refrigerant, lost))
  const first = points[0]!
  const last = points.at(-1)!
  const describe = (point: LeakPoint) => contentOf(refrigerant, point, first.pressure_Pa, pressures.value)
  const before = describe(first)
  if (!before.ok) return before
  const after = describe(last)
  if (!after.ok) return after
  const gone = points.find((point) => point.liquidShare === 0)
  const result: Leak = {
    refrigerant: refrigerant.name,
    temperature_K: temperature,
    from,
    before: before.value,
    after: after.value,
    path: points.map((point) => pathPoint(refrigerant, point)),
    ...(gone && { liquidGoneAt: gone.lost }),
  }
  if (topUpTo === undefined) return ok(result)
  const topped = topUp(volume, content, last, topUpTo)
  if (!topped) return fail(unsolved(refrigerant, lost))
  const toppedUp = describe(topped)
  return toppedUp.ok ? ok({ ...result, toppedUp: toppedUp.value }) : toppedUp
}

/** Fresh refrigerant into what the leak has left, up to a share of the first mass. */
function topUp(volume: ClosedVolume, fresh: Float64Array, last: LeakPoint, topUpTo: number): LeakPoint | undefined {
  const added = topUpTo - (1 - last.lost)
  const mixed = fresh.map((n, i) => last.content[i]! + added * n)
  return solveClosedVolume(volume, mixed) ? pointOf(volume, 1 - topUpTo, mixed) : undefined
}

function pathPoint(refrigerant: Refrigerant, { lost, pressure_Pa, content }: LeakPoint): PathPoint {
  return { lost, pressure_Pa, massFractions: byMass(refrigerant, content) }
}

function contentOf(
  refrigerant: Refrigerant,
  point: LeakPoint,
  firstPressure: number,
  pressures: ReadingPressures,
): Result<Content, Problem> {
  const at = pathPoint(refrigerant, point)
  const chartError = chartErrorOf(refrigerant, at.massFractions, pressures)
  if (!chartError.ok) return chartError
  return ok({
    ...at,
    liquidVolumeFraction: point.liquidShare,
    ...(point.liquidShare > 0 && { liquidMassFractions: byMass(refrigerant, point.liquid) }),
    pressureShift_Pa: at.pressure_Pa - firstPressure,
    chartError: chartError.value,
  })
}

function byMass({ components, engine }: Refrigerant, molar: Float64Array): Record<string, number> {
  const mass = components.map((_, i) => molar[i]! * engine.model.components[i]!.molarMass_kg_mol)
  const total = mass.reduce((sum, m) => sum + m, 0)
  return Object.fromEntries(components.map(({ name }, i) => [name, mass[i]! / total]))
}

const unsolved = ({ name }: Refrigerant, lost: number): Problem => ({
  kind: 'unsolved',
  field: 'lost',
  value: String(lost),
  accepted: `liquid and vapour of ${name} did not come to equilibrium on the way`,
})
