import {
  type Cause,
  type Diagnosis,
  HYPOTHESES,
  type Observable,
  type ReadingOutlook,
  type Spread,
} from '@chargewright/diagnosis'
import { type Evidence, evidence, type Quantity, quantity, type Statement, say } from '@chargewright/quantity'
import { CAUSE_WORDS } from './cause-words.ts'

/** Where what the causes say comes from. */
export const MODEL = 'estimated by model of this system, sized from its nameplate'
/** Readings further than this many standard deviations from what a cause expects speak against it. Own choice. */
const APART = 2

/** What a cause is told to be: what is acted on, still open, or less likely than another. */
export type Told = 'acted-on' | 'open' | { readonly unlikelierThan: Cause }

/**
 * What a cause would have made of each reading beside what was read, the ones that fit it worst first. Its sentence
 * speaks for a cause that is acted on, and against one that is less likely than another.
 */
export function explanation(diagnosis: Diagnosis, cause: Cause, told: Told = 'open'): Evidence {
  const { readings } = diagnosis
  const last = Math.max(...readings.map(({ set }) => set))
  const lines = readings
    .filter(({ set }) => set === last)
    .flatMap((outlook) => lineOf(outlook, cause))
    .toSorted((a, b) => b.apart - a.apart)
  const against = lines.filter(({ apart }) => apart > APART).length
  return evidence(
    sentence(diagnosis, cause, told, [against, lines.length]),
    MODEL,
    lines.map(({ line }) => line),
  )
}

function sentence(
  diagnosis: Diagnosis,
  cause: Cause,
  told: Told,
  [against, all]: readonly [number, number],
): Statement {
  const { were } = CAUSE_WORDS[cause]
  if (against === 0)
    return typeof told === 'object'
      ? whyLess(diagnosis, cause, told.unlikelierThan)
      : say`${were}, no reading would be out of place`
  return told === 'acted-on' && against < all
    ? say`${were}, ${all - against} of ${all} readings would be where they are`
    : say`${were}, ${against} of ${all} readings would be elsewhere`
}

/**
 * Where no reading stands out alone: what makes a cause less likely than another. A charge that may be likelier than
 * nothing wrong and is told to be unlikely all the same is off by too little to matter.
 */
function whyLess({ singles }: Diagnosis, cause: Cause, other: Cause): Statement {
  const { were } = CAUSE_WORDS[cause]
  const { label } = CAUSE_WORDS[other]
  const fit = fitOf(singles, other) / fitOf(singles, cause)
  const rarity = HYPOTHESES[other].prior / HYPOTHESES[cause].prior
  if (fit * rarity <= 1) return say`${were}, no reading would be out of place; but so little off counts as right`
  if (fit < rarity) return say`${were}, no reading would be out of place; but that is found less often than ${label}`
  if (fit < FEWEST_TOLD)
    return say`${were}, no reading alone would be out of place; together they fit it a little less well than ${label}`
  const times = fit > MOST_TOLD ? say`more than ${MOST_TOLD}` : say`about ${Math.round(Number(fit.toPrecision(2)))}`
  return say`${were}, no reading alone would be out of place; together they fit it ${times} times less well than ${label}`
}

/** How well all readings together fit a cause, but for a factor that is the same for all. */
const fitOf = (singles: Diagnosis['singles'], cause: Cause): number =>
  (singles.find((single) => single.cause === cause)?.probability ?? 0) / HYPOTHESES[cause].prior

/** How many times less well is told in figures between these. */
const FEWEST_TOLD = 2
const MOST_TOLD = 1000

interface Line {
  readonly line: Evidence
  readonly apart: number
}

function lineOf({ observable, read, expected }: ReadingOutlook, cause: Cause): readonly Line[] {
  const spread = expected[cause]
  if (read === undefined || !spread) return []
  const apart = Math.abs(read - spread.mean) / spread.sd
  const shown = SHOWN[observable]
  const statement =
    apart > APART
      ? say`${shown.label} would be ${shown.value(spread)}; it is not, it is ${shown.value({ mean: read, sd: 0 })}`
      : say`${shown.label} would be ${shown.value(spread)}; it is ${shown.value({ mean: read, sd: 0 })}`
  return [{ line: evidence(statement), apart }]
}

interface Shown {
  readonly label: Statement
  readonly value: (spread: Spread) => Quantity
}

const of = (label: Statement, dimension: 'temperature' | 'temperature difference'): Shown => ({
  label,
  value: ({ mean, sd }) => (sd > 0 ? quantity(dimension, mean, sd) : quantity(dimension, mean)),
})

/** Known by its logarithm. */
const ofPower = (label: Statement): Shown => ({
  label,
  value: ({ mean, sd }) =>
    sd > 0 ? quantity('power', Math.exp(mean), Math.exp(mean) * sd) : quantity('power', Math.exp(mean)),
})

const SHOWN: Readonly<Record<Observable, Shown>> = {
  evaporating: of(say`Evaporating temperature`, 'temperature'),
  superheat: of(say`Superheat`, 'temperature difference'),
  condensing: of(say`Condensing temperature`, 'temperature'),
  subcooling: of(say`Subcooling`, 'temperature difference'),
  discharge: of(say`Discharge temperature`, 'temperature'),
  condenserAirRise: of(say`Rise of the condenser air`, 'temperature difference'),
  supplyAirDrop: of(say`Drop from return to supply air`, 'temperature difference'),
  compressorPower: ofPower(say`Compressor power`),
  power: ofPower(say`Power of the whole system`),
  drierDrop: of(say`Drop over the drier`, 'temperature difference'),
  standstill: of(say`Saturation of the standing pressure above the air around it`, 'temperature difference'),
}
