import { fail, type Kelvin, kelvin, ok, type Pascal, type Problem, pascal, type Result } from '@chargewright/quantity'
import { blend } from '../blend.ts'
import type { Refrigerant } from '../refrigerant.ts'
import { type Saturation, saturationAtPressure, saturationAtTemperature } from '../saturation.ts'

/** What the chart of the nominal blend makes of a system that holds this composition. */
export interface ChartError {
  /** At the nominal dew pressure of the evaporating temperature. */
  readonly suctionPressure_Pa: number
  /** At the nominal bubble pressure of the condensing temperature. */
  readonly liquidPressure_Pa: number
  /** Superheat as charted less true superheat: positive when the chart shows more than there is. */
  readonly superheat_K: number
  /** Subcooling as charted less true subcooling. */
  readonly subcooling_K: number
  /** Dew less bubble temperature of this composition at the suction pressure. */
  readonly glide_K: number
}

const EVAPORATING = kelvin(278.15)
const CONDENSING = kelvin(313.15)

/** Where superheat and subcooling are read, by the nominal chart. */
export interface ReadingPressures {
  readonly suction: Pascal
  readonly liquid: Pascal
}

export function readingPressures(
  refrigerant: Refrigerant,
  evaporating: Kelvin = EVAPORATING,
  condensing: Kelvin = CONDENSING,
): Result<ReadingPressures, Problem> {
  const suction = saturationAtTemperature(refrigerant, evaporating)
  if (!suction.ok) return fail({ ...suction.error, field: 'evaporating' })
  const liquid = saturationAtTemperature(refrigerant, condensing)
  if (!liquid.ok) return fail({ ...liquid.error, field: 'condensing' })
  return ok({ suction: pascal(suction.value.dew.pressure_Pa), liquid: pascal(liquid.value.bubble.pressure_Pa) })
}

/** The nominal saturation temperatures against those of the composition that is really there, at the same pressures. */
export function chartErrorOf(
  nominal: Refrigerant,
  massFractions: Readonly<Record<string, number>>,
  pressures: ReadingPressures,
): Result<ChartError, Problem> {
  const shifted = blend(massFractions)
  if (!shifted.ok) return shifted
  const chart = readings(nominal, pressures)
  if (!chart.ok) return chart
  const real = readings(shifted.value, pressures)
  if (!real.ok) return real
  return ok({
    suctionPressure_Pa: pressures.suction,
    liquidPressure_Pa: pressures.liquid,
    superheat_K: real.value.suction.dew.temperature_K - chart.value.suction.dew.temperature_K,
    subcooling_K: chart.value.liquid.bubble.temperature_K - real.value.liquid.bubble.temperature_K,
    glide_K: real.value.suction.dew.temperature_K - real.value.suction.bubble.temperature_K,
  })
}

function readings(
  refrigerant: Refrigerant,
  pressures: ReadingPressures,
): Result<{ readonly suction: Saturation; readonly liquid: Saturation }, Problem> {
  const suction = saturationAtPressure(refrigerant, pressures.suction)
  if (!suction.ok) return suction
  const liquid = saturationAtPressure(refrigerant, pressures.liquid)
  return liquid.ok ? ok({ suction: suction.value, liquid: liquid.value }) : liquid
}
