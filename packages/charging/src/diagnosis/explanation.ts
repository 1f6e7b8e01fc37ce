import type { Cause, Diagnosis, Observable, ReadingOutlook, Spread } from '@chargewright/diagnosis'
import { type Evidence, evidence, type Quantity, quantity, type Statement, say } from '@chargewright/quantity'
import { CAUSE_WORDS } from './cause-words.ts'

/** Where what the causes say comes from. */
export const MODEL = 'estimated by model: twin sized from the nameplate'
/** Readings further than this many standard deviations from what a cause expects speak against it. Own choice. */
const APART = 2

/** What a cause would have made of each reading beside what was read, the ones that fit it worst first. */
export function explanation({ readings }: Diagnosis, cause: Cause): Evidence {
  const last = Math.max(...readings.map(({ set }) => set))
  const lines = readings
    .filter(({ set }) => set === last)
    .flatMap((outlook) => lineOf(outlook, cause))
    .toSorted((a, b) => b.apart - a.apart)
  const against = lines.filter(({ apart }) => apart > APART).length
  const { were } = CAUSE_WORDS[cause]
  const statement =
    against === 0
      ? say`${were}, no reading would be out of place`
      : say`${were}, ${against} of ${lines.length} readings would be elsewhere`
  return evidence(
    statement,
    MODEL,
    lines.map(({ line }) => line),
  )
}

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
