import {
  type Evidence,
  evidence,
  fail,
  ok,
  outOfRange,
  type Problem,
  type Quantity,
  quantity,
  type Result,
  type Statement,
  say,
  toAbsolute,
} from '@chargewright/quantity'
import {
  type PressureAndTemperature,
  pressureAtTemperature,
  pressureChange,
  type Resolution,
} from './pressure-change.ts'
import { NORMAL_95 } from './student-t.ts'

export interface TestReading {
  readonly pressure: Quantity<'gauge pressure' | 'absolute pressure'>
  /** Of the gas, not of the air if the system stands in the sun. */
  readonly temperature: Quantity<'temperature'>
  /** The entry in which it was typed. */
  readonly eventId?: string
}

export interface PressureTest {
  readonly start: TestReading
  readonly end: TestReading
  readonly duration: Quantity<'duration'>
  /** At the site, at the start. */
  readonly atmosphere: Quantity<'absolute pressure'>
  /** Read again at the end; else the weather counts into the uncertainty. */
  readonly atmosphereAtEnd?: Quantity<'absolute pressure'>
  /** Where one gauge and one thermometer read both ends: their last digits. */
  readonly sameInstruments?: Resolution
}

/**
 * `leak`: it lost more than the instruments explain. `no-leak-seen`: what it lost or gained is within them; a leak
 * below `detectable` could still be there. `not-settled`: it gained, so the temperature read was not that of the gas.
 */
export interface PressureTestFinding {
  readonly kind: 'leak' | 'no-leak-seen' | 'not-settled'
  /** Loss is negative; corrected for temperature. */
  readonly change: Quantity<'pressure difference'>
  /** The smallest loss that this test finds in 95 % of cases: 3.29 standard uncertainties of the change. */
  readonly detectable: Quantity<'pressure difference'>
  readonly sentence: Statement
  readonly reasons: readonly Evidence[]
  readonly steps: readonly Statement[]
}

/** What each finding is called. */
export const PRESSURE_TEST_WORDS: Readonly<Record<PressureTestFinding['kind'], string>> = {
  leak: 'leak',
  'no-leak-seen': 'no leak seen',
  'not-settled': 'not settled',
}

/**
 * Whether a system under nitrogen lost pressure, its temperature allowed for.
 *
 * @param test pressure 1 bar to 200 bar absolute, temperature −50 °C to 80 °C, duration 1 s to 30 days
 * @returns the finding; else the first reading, resolution or uncertainty out of range
 * @source temperature correction (p + p_atm) T₂/T₁: perfect gas; hold of 24 h: UFGS 15182; decision and detection limits
 *   of 1.645 and 3.29 standard uncertainties: Currie 1968, Anal. Chem. 40(3), 586–593
 */
export function judgePressureTest(test: PressureTest): Result<PressureTestFinding, Problem> {
  const { duration, atmosphere } = test
  const atEnd =
    test.atmosphereAtEnd ?? quantity('absolute pressure', atmosphere.si, Math.hypot(atmosphere.u ?? 0, WEATHER_PA))
  const start = checked(test.start, atmosphere, 'at the start')
  const end = checked(test.end, atEnd, 'at the end')
  const problem = outOfRange('duration of the test', duration.si, 1, MAX_S, 's') ?? badResolution(test.sameInstruments)
  if (!start.ok) return start
  if (!end.ok) return end
  if (problem) return fail(problem)

  const change = pressureChange(start.value, end.value, test.sameInstruments)
  const u = change.u ?? 0
  const unknown = outOfRange('uncertainty of the readings', u, 0, MAX_U_PA, 'Pa')
  if (unknown) return fail(unknown)
  const kind = change.si < -NORMAL_95 * u ? 'leak' : change.si > NORMAL_95 * u ? 'not-settled' : 'no-leak-seen'
  const detectable = quantity('pressure difference', 2 * NORMAL_95 * u)
  const reasons = [
    evidence(
      say`Expected ${pressureAtTemperature(start.value, end.value.temperature)} at ${end.value.temperature}, read ${end.value.pressure}: a change of ${change}`,
      'perfect gas at constant volume, absolute pressures',
      [reading(start.value, 'Start', test.start.eventId), reading(end.value, 'End', test.end.eventId)],
    ),
    evidence(say`A loss of ${detectable} in ${duration} would have shown`, 'Currie 1968: 3.29 standard uncertainties'),
    ...(test.atmosphereAtEnd || test.end.pressure.dimension === 'absolute pressure'
      ? []
      : [evidence(say`The atmosphere was not read again: the weather counts into the uncertainty`, 'common practice')]),
    ...(duration.si < FULL_TEST.si
      ? [evidence(say`${duration} is less than the ${FULL_HOLD_H} h of a full test`, 'UFGS 15182')]
      : []),
  ]
  return ok({ kind, change, detectable, reasons, ...words(kind, change, detectable, duration) })
}

const FULL_HOLD_H = 24

/**
 * How long a full standing test stands.
 *
 * @source UFGS 15182
 */
export const FULL_TEST = quantity('duration', FULL_HOLD_H * 3600)

const MAX_U_PA = 1e7
const MAX_S = 30 * 86_400
/** Standard deviation of the atmosphere from one day to the next: common practice. */
const WEATHER_PA = 500

function checked(
  { pressure, temperature }: TestReading,
  atmosphere: Quantity<'absolute pressure'>,
  when: string,
): Result<PressureAndTemperature, Problem> {
  const absolute = toAbsolute(pressure, atmosphere, `test pressure ${when}`)
  if (!absolute.ok) return absolute
  const problem =
    outOfRange(`atmospheric pressure ${when}`, atmosphere.si, 20_000, 120_000, 'Pa') ??
    outOfRange(`test pressure ${when}`, absolute.value.si, 1e5, 2e7, 'Pa absolute') ??
    outOfRange(`temperature ${when}`, temperature.si, 223.15, 353.15, 'K')
  return problem ? fail(problem) : ok({ pressure: absolute.value, temperature })
}

function badResolution(resolution: Resolution | undefined): Problem | undefined {
  if (!resolution) return undefined
  return (
    outOfRange('resolution of the gauge', resolution.pressure.si, 0, 1e6, 'Pa') ??
    outOfRange('resolution of the thermometer', resolution.temperature.si, 0, 20, 'K')
  )
}

function reading(
  { pressure, temperature }: PressureAndTemperature,
  when: string,
  eventId: string | undefined,
): Evidence {
  const leaf = evidence(say`${when}: ${pressure} at ${temperature}`)
  return eventId === undefined ? leaf : { ...leaf, eventId }
}

function words(
  kind: PressureTestFinding['kind'],
  change: Quantity<'pressure difference'>,
  detectable: Quantity<'pressure difference'>,
  duration: Quantity<'duration'>,
): Pick<PressureTestFinding, 'sentence' | 'steps'> {
  switch (kind) {
    case 'leak':
      return {
        sentence: say`It leaks: corrected for temperature it lost ${quantity('pressure difference', -change.si, change.u)} in ${duration}`,
        steps: [
          say`Check hoses, gauge and valve cores, then every joint with leak solution; let the nitrogen off before opening or brazing`,
          say`Repair and test again`,
        ],
      }
    case 'no-leak-seen':
      return {
        sentence: say`No leak seen: a loss of ${detectable} in ${duration} would have shown`,
        steps: [say`For a smaller leak, test longer, with a finer gauge, or watch a vacuum; then evacuate`],
      }
    case 'not-settled':
      return {
        sentence: say`It gained ${change}: the temperature read is not that of the gas`,
        steps: [say`Wait until gas and system have one temperature, read the pipe in the shade and read both again`],
      }
  }
}
