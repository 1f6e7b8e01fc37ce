import { airflowByTraverse, type Duct, type TraversePoints, traversePoints } from '@chargewright/moist-air'
import { fail, findUnit, type Problem, quantity, type Result, toSi } from '@chargewright/quantity'
import { missing, unreadable } from '../failure.ts'
import { ifGiven, readFlags } from '../read-flags.ts'
import { PLAIN, typedReading } from '../typed-reading.ts'
import { type AirFlags, type AirflowAnswer, inStream } from './airflow.ts'

/** The units in which a traverse is read: two of velocity, two of velocity pressure. */
export const TRAVERSE_UNITS = ['ft/min', 'm/s', 'inH2O', 'Pa'] as const

/** The duct by its inner size, as typed: two sides or a diameter. */
export interface DuctFlags {
  readonly width?: string
  readonly height?: string
  readonly diameter?: string
}

export interface TraverseFlags extends AirFlags, DuctFlags {
  readonly in: (typeof TRAVERSE_UNITS)[number]
}

/** Where to hold the probe. */
export function traverseHere(flags: DuctFlags): Result<TraversePoints, readonly Problem[]> {
  const duct = readDuct(flags)
  if (!duct.ok) return duct
  const points = traversePoints(duct.value)
  return points.ok ? points : fail([points.error])
}

/** @param readings bare numbers in the unit of the flags, one for each point */
export function airflowAcross(
  readings: readonly string[],
  flags: TraverseFlags,
): Result<AirflowAnswer, readonly Problem[]> {
  const duct = readDuct(flags)
  const numbers = readings.map((text) => (/^-?\d{1,6}(\.\d{1,6})?$/.test(text) ? Number(text) : undefined))
  const bad = numbers.indexOf(undefined)
  const unread = bad < 0 ? [] : [unreadable(`reading ${bad + 1}`, readings[bad]!, `a number of ${flags.in}`)]
  if (!duct.ok || unread.length > 0) return fail([...(duct.ok ? [] : duct.error), ...unread])
  const values = numbers.flatMap((each) => each ?? [])
  return inStream(flags, duct, (across, stream) => airflowByTraverse(across, inUnit(values, flags.in), stream))
}

const FPM = 0.3048 / 60
/** Of a hand-held anemometer, of its reading: common practice. */
const ANEMOMETER = 0.03

function inUnit(values: readonly number[], unit: TraverseFlags['in']): Parameters<typeof airflowByTraverse>[1] {
  if (unit === 'ft/min' || unit === 'm/s') {
    const velocities_m_s = values.map((v) => v * (unit === 'm/s' ? 1 : FPM))
    const mean = velocities_m_s.reduce((sum, v) => sum + v, 0) / Math.max(values.length, 1)
    return { kind: 'velocity', velocities_m_s, u_m_s: Math.max(0, mean) * (ANEMOMETER / 2) }
  }
  const scale = findUnit(unit, 'pressure difference')!
  const pressures = values.map((v) => {
    const si = toSi(v, scale)
    return quantity(
      'pressure difference',
      si,
      (PLAIN.manometer.limit + PLAIN.manometer.fraction * Math.abs(si)) / Math.sqrt(6),
    )
  })
  return { kind: 'velocity pressure', pressures }
}

function readDuct(flags: DuctFlags): Result<Duct, readonly Problem[]> {
  const size = (name: keyof DuctFlags) => ifGiven(flags[name], (text) => typedReading(text, 'length', name))
  const read = readFlags({ width: size('width'), height: size('height'), diameter: size('diameter') })
  if (!read.ok) return read
  const { width, height, diameter } = read.value
  if (diameter && !width && !height) return { ok: true, value: { kind: 'round', diameter } }
  if (width && height && !diameter) return { ok: true, value: { kind: 'rectangular', width, height } }
  return fail([missing('duct', '--width and --height, or --diameter alone')])
}
