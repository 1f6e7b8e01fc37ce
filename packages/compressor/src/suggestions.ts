import { type Statement, say } from '@chargewright/quantity'
import type { RatingSide } from './judge-rating.ts'
import type { RatedQuantity } from './rated-quantity.ts'

/**
 * What a reading off its rating points at, the easiest to check first: common practice. None of these is a verdict: a
 * wrong pressure or a wrong supply makes a sound compressor look bad.
 */
export function suggestions(what: RatedQuantity, side: RatingSide): readonly Statement[] {
  switch (side) {
    case 'inside':
      return [say`It runs as rated at these pressures: the compressor does not explain what is wrong`]
    case 'too-close':
      return [
        say`Read pressures, voltage and ${what} again with better instruments: the band and the uncertainty overlap`,
      ]
    case 'below':
      return below(what)
    case 'above':
      return above(what)
  }
}

function below(what: RatedQuantity): readonly Statement[] {
  switch (what) {
    case 'power':
    case 'current':
      return [
        say`Read both pressures and the voltage again: what is expected is only as good as they are`,
        say`Vapour leaks back inside: worn or broken valves, scroll or cylinder, a relief or unloader that stands open`,
        say`It runs unloaded, or slower than rated`,
      ]
    case 'mass flow':
    case 'capacity':
      return [
        say`Read both pressures again, and see that the suction strainer and the line are free`,
        say`Vapour leaks back inside: worn or broken valves, scroll or cylinder, a relief or reversing valve that leaks`,
        say`Liquid or much oil comes back with the suction gas`,
      ]
  }
}

function above(what: RatedQuantity): readonly Statement[] {
  switch (what) {
    case 'power':
    case 'current':
      return [
        say`Read the voltage at the terminals and each phase, and the run capacitor: low or unequal voltage draws more amps`,
        say`It turns hard: bearings, lack of oil, liquid in the oil`,
        say`The winding is failing, or the meter reads more than the compressor`,
      ]
    case 'mass flow':
    case 'capacity':
      return [
        say`Read pressures, airflow and air temperatures again: more than rated is a sign of a reading that is off`,
        say`The curve is of another compressor or refrigerant`,
      ]
  }
}
