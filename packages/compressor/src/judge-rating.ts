import {
  type Evidence,
  evidence,
  fail,
  ok,
  outOfRange,
  type Problem,
  type Result,
  type Statement,
  say,
} from '@chargewright/quantity'
import type { Expected } from './expected-rating.ts'
import type { Rating } from './rated-quantity.ts'
import { ratingInWords } from './rating-in-words.ts'
import { suggestions } from './suggestions.ts'

/** Share of a rating by which a sound compressor may differ from it. */
export const RATING_TOLERANCE = 0.05
const TOLERANCE_SOURCE = 'AHRI Standard 540: 5 % within the range of use (recalled)'

/** Where a reading lies against the band. `too-close`: an edge lies within the standard uncertainty of the difference. */
export type RatingSide = 'below' | 'inside' | 'above' | 'too-close'

/** Where a reading lies against the band, in words. */
export const RATING_WORDS: Readonly<Record<RatingSide, string>> = {
  inside: 'inside the band',
  below: 'below the band',
  above: 'above the band',
  'too-close': 'cannot tell',
}

export interface RatingJudgement {
  readonly side: RatingSide
  /** Measured over expected, less one. */
  readonly off: number
  readonly evidence: Evidence
  /** What it points at, the likeliest and easiest to check first. */
  readonly suggests: readonly Statement[]
}

/**
 * A measured value against the expected one, with the tolerance of the rating as the band and one standard uncertainty
 * of the difference as a guard on either side of each edge (JCGM 106:2012, 8.3.2).
 *
 * @param expected of a compressor or of a whole system
 * @param measured SI, of the same quantity, above 0, with its standard uncertainty
 * @returns the judgement; else the measured value that is out of range, or of another quantity
 */
export function judgeRating(expected: Expected, measured: Rating): Result<RatingJudgement, Problem> {
  const { what, si, u } = expected.rating
  if (measured.what !== what) {
    return fail({ kind: 'unknown', field: 'measured quantity', value: measured.what, accepted: what })
  }
  const problem =
    outOfRange(`measured ${what}`, measured.si, Number.MIN_VALUE, 1e9, 'SI') ??
    outOfRange(`uncertainty of the measured ${what}`, measured.u, 0, measured.si, 'SI')
  if (problem) return fail(problem)
  const off = measured.si / si - 1
  const uOff = Math.hypot(measured.u, u * (measured.si / si)) / si
  const side = sideOf(off, uOff)
  return ok({
    side,
    off,
    evidence: evidence(
      say`Measured ${what} ${ratingInWords(measured)} ${lies(side)} the expected ${ratingInWords(expected.rating)}`,
      TOLERANCE_SOURCE,
      [expected.evidence],
    ),
    suggests: suggestions(what, side),
  })
}

function sideOf(off: number, u: number): RatingSide {
  if (Math.abs(Math.abs(off) - RATING_TOLERANCE) <= u) return 'too-close'
  if (off < -RATING_TOLERANCE) return 'below'
  return off > RATING_TOLERANCE ? 'above' : 'inside'
}

/** Where the reading lies, to be followed by what it was compared with. */
function lies(side: RatingSide): Statement {
  const percent = RATING_TOLERANCE * 100
  switch (side) {
    case 'inside':
      return say`is within ${percent} % of`
    case 'below':
      return say`is more than ${percent} % below`
    case 'above':
      return say`is more than ${percent} % above`
    case 'too-close':
      return say`is off by too nearly ${percent} % to tell from`
  }
}
