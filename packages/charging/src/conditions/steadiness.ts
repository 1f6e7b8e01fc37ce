import {
  type Dimension,
  type Quantity,
  quantity,
  STANDARD_ATMOSPHERE,
  type Statement,
  say,
} from '@chargewright/quantity'
import { type ReadingId, readingKind } from '@chargewright/visit'
import type { Limit } from '../limit.ts'

/** One sample of an instrument that keeps measuring: seconds from any zero, and SI. */
export interface Sample {
  readonly time_s: number
  readonly si: number
}

/** What one instrument measured over time, the earliest first. */
export interface Channel {
  readonly what: ReadingId
  readonly dimension: Dimension
  readonly samples: readonly Sample[]
}

/** Whether a channel holds still: `too-short` where it has not measured through the whole window. */
export interface ChannelSteadiness {
  readonly what: ReadingId
  readonly kind: 'settled' | 'not-settled' | 'too-short'
  /** Standard deviation within the window, SI; absent where the window is too short. */
  readonly deviation?: number
  /** The deviation up to which it counts as still, SI. */
  readonly most?: number
}

export interface Steadiness {
  readonly kind: ChannelSteadiness['kind']
  readonly sentence: Statement
  readonly channels: readonly ChannelSteadiness[]
  readonly source: string
}

/** The window: two sets of readings five minutes apart that agree are what the trade waits for. */
export const STEADY_WINDOW: Limit<'duration'> = { quantity: quantity('duration', 300), source: 'common practice' }

const METHOD =
  'Moving-window standard deviation of all features (Kim, Yoon, Domanski, Payne 2008, Int. J. Refrig. 31(5)); its limits: common practice'

/** Fewer samples than this make no deviation worth the name. */
const FEWEST = 5
/** This share of the window may be missing at either end: instruments sample when they like. */
const SLACK = 0.2

/**
 * Deviations up to which a channel counts as still, SI. 0.3 K is what a steady drift of 1 K across the window has
 * (a drift d has the deviation d/√12); of a wet bulb, on which the target hangs twice, half of it.
 */
const STILL_K = 0.3
const STILL_WET_BULB_K = 0.15
/** Shares: 1 % of an absolute pressure is about 0.3 K of saturation. */
const STILL_PRESSURE = 0.01
const STILL_HUMIDITY = 0.01
const STILL_OTHER = 0.02

/**
 * Whether a system has settled, from what its instruments measured up to a moment: all channels must hold still within
 * the window, not superheat and subcooling alone, which miss a room that drifts.
 *
 * @param at_s the moment, on the clock of the samples; left out, that of the latest sample
 * @source the windowed deviation of all features: Kim, Yoon, Domanski, Payne 2008; every limit: *common practice*
 */
export function steadiness(channels: readonly Channel[], at_s: number = latest(channels)): Steadiness {
  const judged = channels.map((channel) => judge(channel, at_s))
  const moving = judged.filter(({ kind }) => kind === 'not-settled')
  const short = judged.filter(({ kind }) => kind === 'too-short')
  const kind = moving.length > 0 ? 'not-settled' : short.length > 0 || judged.length === 0 ? 'too-short' : 'settled'
  return { kind, sentence: sentenceOf(judged, moving), channels: judged, source: METHOD }
}

function judge({ what, dimension, samples }: Channel, at_s: number): ChannelSteadiness {
  const from = at_s - STEADY_WINDOW.quantity.si
  const slack = SLACK * STEADY_WINDOW.quantity.si
  const inside = samples.filter(({ time_s, si }) => time_s >= from && time_s <= at_s && Number.isFinite(si))
  const [first, last] = [inside[0], inside.at(-1)]
  if (!first || !last || inside.length < FEWEST) return { what, kind: 'too-short' }
  if (first.time_s > from + slack || last.time_s < at_s - slack) return { what, kind: 'too-short' }
  const mean = inside.reduce((sum, { si }) => sum + si, 0) / inside.length
  const deviation = Math.sqrt(inside.reduce((sum, { si }) => sum + (si - mean) ** 2, 0) / (inside.length - 1))
  const most = stillUpTo(what, dimension, mean)
  return { what, kind: deviation <= most ? 'settled' : 'not-settled', deviation, most }
}

function stillUpTo(what: ReadingId, dimension: Dimension, mean: number): number {
  switch (dimension) {
    case 'temperature':
      return what === 'return-air-wet-bulb' ? STILL_WET_BULB_K : STILL_K
    case 'absolute pressure':
      return STILL_PRESSURE * mean
    case 'gauge pressure':
      return STILL_PRESSURE * (mean + STANDARD_ATMOSPHERE.si)
    case 'relative humidity':
      return STILL_HUMIDITY
    default:
      return STILL_OTHER * Math.abs(mean)
  }
}

function sentenceOf(judged: readonly ChannelSteadiness[], moving: readonly ChannelSteadiness[]): Statement {
  const window = STEADY_WINDOW.quantity
  const [first, ...others] = moving
  if (first && others.length === 0) return say`${readingKind(first.what).label} still moves`
  if (first) return say`${readingKind(first.what).label} and ${others.length} more still move`
  if (judged.length === 0) return say`Nothing is measured yet`
  if (judged.some(({ kind }) => kind === 'too-short')) return say`Watched for less than ${window} so far`
  return say`All ${judged.length} readings have held still for ${window}`
}

const latest = (channels: readonly Channel[]): number =>
  Math.max(...channels.map(({ samples }) => samples.at(-1)?.time_s ?? Number.NEGATIVE_INFINITY))

/**
 * The value to take from a channel: the mean of its last minute, so that one stray sample is not the reading.
 *
 * @returns nothing for a channel without samples
 */
export function steadyValue({ dimension, samples }: Channel): Quantity | undefined {
  const end = samples.at(-1)?.time_s
  if (end === undefined) return undefined
  const last = samples.filter(({ time_s, si }) => time_s > end - MEAN_OVER_S && Number.isFinite(si))
  return last.length === 0 ? undefined : quantity(dimension, last.reduce((sum, { si }) => sum + si, 0) / last.length)
}

const MEAN_OVER_S = 60
