import { type Compressor, type Operating, ratedReturnGas } from '@chargewright/compressor'
import { kelvin, ok, type Pascal, type Problem, pascal, type Result } from '@chargewright/quantity'
import { type Refrigerant, saturationAtTemperature } from '@chargewright/refrigerant'
import { suctionGas } from './suction-gas.ts'

/** The gas as rated and as found, at the pressures of the two dew temperatures. */
export function measuredGas(
  figures: Compressor,
  suctionDew_K: number,
  dischargeDew_K: number,
  returnGas_K: number,
  refrigerant: Refrigerant,
): Result<Operating['gas'], Problem> {
  const low = dewPressure(refrigerant, suctionDew_K)
  if (!low.ok) return low
  const high = dewPressure(refrigerant, dischargeDew_K)
  if (!high.ok) return high
  const at = (temperature_K: number) => suctionGas(refrigerant, low.value, high.value, temperature_K)
  const rated = at(ratedReturnGas(figures, suctionDew_K))
  if (!rated.ok) return rated
  const actual = at(returnGas_K)
  return actual.ok ? ok({ kind: 'measured', rated: rated.value, actual: actual.value }) : actual
}

function dewPressure(refrigerant: Refrigerant, dew_K: number): Result<Pascal, Problem> {
  const at = saturationAtTemperature(refrigerant, kelvin(dew_K))
  return at.ok ? ok(pascal(at.value.dew.pressure_Pa)) : at
}
