import { evidence, fail, ok, outOfRange, type Problem, type Quantity, type Result, say } from '@chargewright/quantity'
import type { AirStream } from './air-stream.ts'
import { type Airflow, airflowFound } from './airflow.ts'
import { type Duct, LOG_LINEAR, LOG_TCHEBYCHEFF, traversePoints } from './traverse-points.ts'

/** One reading at every point of a traverse, in any order. */
export type TraverseReadings =
  | { readonly kind: 'velocity'; readonly velocities_m_s: readonly number[]; readonly u_m_s?: number }
  | { readonly kind: 'velocity pressure'; readonly pressures: readonly Quantity<'pressure difference'>[] }

/**
 * Airflow from a traverse: mean velocity times area. Of velocity pressures the velocities are averaged, √(2 p/ρ), never
 * the pressures; a negative one counts as no velocity, at its point.
 *
 * The uncertainty takes the error of the instrument as the same at every point, and adds area and profile.
 *
 * @param readings as many as the log-Tchebycheff (5 to 7 lines each way) or log-linear (6 or 10 on two diameters) rule
 *   has points; 0 to 60 m/s
 * @param stream the air in the duct
 * @returns the airflow; else the reading or size that is out of range, or the number of points that fits no rule
 * @source V = √(2 p/ρ), in inch-pound 1096.7 √(p/ρ); three quarters of the velocity pressures above a tenth of the
 *   largest for an even profile, and zero for a negative one: AMCA and ASHRAE practice, REMEMBERED
 */
export function airflowByTraverse(duct: Duct, readings: TraverseReadings, stream: AirStream): Result<Airflow, Problem> {
  const points = traversePoints(duct)
  if (!points.ok) return points
  const count = outOfPattern(
    duct,
    readings.kind === 'velocity' ? readings.velocities_m_s.length : readings.pressures.length,
  )
  if (count) return fail(count)
  const velocities = velocitiesOf(readings, stream)
  if (!velocities.ok) return velocities
  const { values, uMean, byDensity } = velocities.value

  const mean = values.reduce((sum, v) => sum + v, 0) / values.length
  const area = areaOf(duct)
  const even = isEven(values)
  const uVolume = Math.hypot(uMean / mean, area.u, even ? EVEN_PROFILE : UNEVEN_PROFILE)
  // A velocity pressure gives a volume that falls with the root of the density, and a mass that rises with it.
  const uActual = Math.hypot(uVolume, byDensity ? stream.uDensity / 2 : 0)
  const uMass = Math.hypot(uVolume, byDensity ? stream.uDensity / 2 : stream.uDensity)
  return airflowFound(
    'by traverse',
    stream,
    { actual_m3_s: mean * area.value, uActual, uMass },
    duct.kind === 'round' ? 'log-linear rule, two diameters (recalled)' : 'log-Tchebycheff rule (recalled)',
    [
      evidence(say`${values.length} points, ${readings.kind}`),
      sizeInWords(duct),
      even
        ? evidence(
            say`even profile: three quarters of the points have a tenth of the largest velocity pressure`,
            PROFILE,
          )
        : evidence(say`uneven profile: move the traverse to a longer straight run of duct`, PROFILE),
    ],
  )
}

/** Standard uncertainty of the mean over a profile: common practice. */
const EVEN_PROFILE = 0.02
const UNEVEN_PROFILE = 0.06
const PROFILE = 'AMCA and ASHRAE practice (recalled)'
const MAX_M_S = 60

interface Velocities {
  readonly values: readonly number[]
  /** Of the mean, m/s, from the instrument. */
  readonly uMean: number
  readonly byDensity: boolean
}

function velocitiesOf(readings: TraverseReadings, { air }: AirStream): Result<Velocities, Problem> {
  const found = velocities(readings, air.density_kg_m3)
  const problem = [
    ...found.values.map((v, i) => outOfRange(`velocity at point ${i + 1}`, v, 0, MAX_M_S, 'm/s')),
    outOfRange('uncertainty of the velocity', found.uMean, 0, MAX_M_S, 'm/s'),
  ].find((p) => p !== undefined)
  return problem ? fail(problem) : ok(found)
}

function velocities(readings: TraverseReadings, density: number): Velocities {
  switch (readings.kind) {
    case 'velocity':
      return { values: readings.velocities_m_s, uMean: readings.u_m_s ?? 0, byDensity: false }
    case 'velocity pressure': {
      const velocity = (p: number) => Math.sqrt((2 * Math.max(p, 0)) / density)
      // A shift and not a slope, because the slope at no velocity has no end.
      const shifts = readings.pressures.map(({ si, u = 0 }) => (velocity(si + u) - velocity(si - u)) / 2)
      const uMean = shifts.reduce((sum, s) => sum + s, 0) / shifts.length
      return { values: readings.pressures.map((p) => velocity(p.si)), uMean, byDensity: true }
    }
  }
}

function outOfPattern(duct: Duct, count: number): Problem | undefined {
  const lines = Object.keys(LOG_TCHEBYCHEFF).map(Number)
  const fits =
    duct.kind === 'round'
      ? Object.keys(LOG_LINEAR).map((n) => 2 * Number(n))
      : [...new Set(lines.flatMap((a) => lines.map((b) => a * b)))].sort((a, b) => a - b)
  if (fits.includes(count)) return undefined
  const accepted = `${fits.join(', ')} points in a ${duct.kind} duct`
  return { kind: 'unreadable', field: 'traverse', value: `${count} points`, accepted }
}

function isEven(values: readonly number[]): boolean {
  const tenth = Math.max(...values) ** 2 / 10
  return values.filter((v) => v ** 2 >= tenth).length >= 0.75 * values.length
}

/** m², with its relative standard uncertainty. */
function areaOf(duct: Duct): { readonly value: number; readonly u: number } {
  const relative = ({ si, u = 0 }: Quantity<'length'>) => u / si
  return duct.kind === 'round'
    ? { value: (Math.PI / 4) * duct.diameter.si ** 2, u: 2 * relative(duct.diameter) }
    : { value: duct.width.si * duct.height.si, u: Math.hypot(relative(duct.width), relative(duct.height)) }
}

function sizeInWords(duct: Duct) {
  return duct.kind === 'round'
    ? evidence(say`round duct, ${duct.diameter} inside`)
    : evidence(say`rectangular duct, ${duct.width} by ${duct.height} inside`)
}
