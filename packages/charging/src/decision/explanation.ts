import {
  type Cause,
  type Diagnosis,
  HYPOTHESES,
  OBSERVABLES,
  type Observable,
  type Spread,
} from '@chargewright/diagnosis'
import { type Evidence, evidence, type Quantity, quantity, say } from '@chargewright/quantity'

/** Readings shown per pair of causes: the most telling ones. */
const MOST = 4
/** A reading that tells two causes apart by less than this, in squared standard deviations, is not shown. Own choice. */
const LEAST_CONTRAST = 0.5

/**
 * Why the best cause and not the runner-up: the readings that tell them apart, each beside what either cause would have
 * made of it, given all the others. The most telling first.
 */
export function explanation({ singles, readings }: Diagnosis): Evidence {
  const [best, other] = singles
  if (!best || !other) return evidence(say`only one cause is known for such a system`)
  const telling = readings
    .flatMap(({ observable, read, expected }) => {
      const [asBest, asOther] = [expected[best.cause], expected[other.cause]]
      if (read === undefined || !asBest || !asOther) return []
      const contrast = squares(read, asOther) - squares(read, asBest)
      return [{ observable, read, asBest, asOther, contrast }]
    })
    .filter(({ contrast }) => Math.abs(contrast) > LEAST_CONTRAST)
    .toSorted((a, b) => Math.abs(b.contrast) - Math.abs(a.contrast))
    .slice(0, MOST)
  const rows = telling.map(({ observable, read, asBest, asOther, contrast }) => {
    const against = contrast > 0 ? other.cause : best.cause
    const label = OBSERVABLES[observable].label
    const wouldBe = shown(observable, contrast > 0 ? asOther : asBest)
    return evidence(
      say`were it ${labelOf(against)}, ${label} would be about ${wouldBe}; it is ${shown(observable, { mean: read, sd: 0 })}`,
    )
  })
  return evidence(
    say`${labelOf(best.cause)} explains the readings better than ${labelOf(other.cause)}`,
    undefined,
    rows,
  )
}

const squares = (read: number, { mean, sd }: Spread) => ((read - mean) / sd) ** 2

const labelOf = (cause: Cause): string => HYPOTHESES[cause].label

/** Temperatures as points, differences as differences, and power out of its logarithm. */
function shown(observable: Observable, { mean, sd }: Spread): Quantity {
  switch (observable) {
    case 'evaporating':
    case 'condensing':
    case 'discharge':
      return uncertain('temperature', mean, sd)
    case 'superheat':
    case 'subcooling':
    case 'condenserAirRise':
    case 'supplyAirDrop':
    case 'drierDrop':
    case 'standstill':
      return uncertain('temperature difference', mean, sd)
    case 'compressorPower':
    case 'power':
      return uncertain('power', Math.exp(mean), Math.exp(mean) * sd)
  }
}

const uncertain = <D extends Quantity['dimension']>(dimension: D, value: number, sd: number): Quantity<D> =>
  sd === 0 ? quantity(dimension, value) : quantity(dimension, value, sd)
