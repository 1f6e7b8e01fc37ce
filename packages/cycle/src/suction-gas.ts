import type { SuctionGas } from '@chargewright/compressor'
import { fail, kelvin, ok, type Pascal, type Problem, type Result } from '@chargewright/quantity'
import { type Refrigerant, type State, saturationAtPressure, stateAt } from '@chargewright/refrigerant'

/** Hotter than any discharge gas, and within the equations of state. */
const HOTTEST_K = 480
const CLOSE_K = 1e-4

/**
 * The properties of suction gas that a correction for return gas needs, from the equations of state: its specific
 * volume, and the rise of enthalpy at constant entropy.
 *
 * @returns also a problem where it is no vapour
 */
export function suctionGas(
  refrigerant: Refrigerant,
  suction: Pascal,
  discharge: Pascal,
  temperature_K: number,
): Result<SuctionGas, Problem> {
  const gas = stateAt(refrigerant, suction, kelvin(temperature_K))
  if (!gas.ok) return gas
  if (gas.value.phase !== 'vapour') return fail(notVapour(gas.value.phase, temperature_K))
  const compressed = atEntropy(refrigerant, discharge, gas.value.entropy_J_kgK)
  if (!compressed.ok) return compressed
  return ok({
    specificVolume_m3_kg: 1 / gas.value.density_kg_m3,
    isentropicRise_J_kg: compressed.value.enthalpy_J_kg - gas.value.enthalpy_J_kg,
  })
}

/** The vapour of a pressure and an entropy, by halving: entropy rises with temperature. */
function atEntropy(refrigerant: Refrigerant, pressure: Pascal, entropy_J_kgK: number): Result<State, Problem> {
  const saturation = saturationAtPressure(refrigerant, pressure)
  if (!saturation.ok) return saturation
  let [low, high] = [saturation.value.dew.temperature_K, HOTTEST_K]
  while (high - low > CLOSE_K) {
    const middle = (low + high) / 2
    const state = stateAt(refrigerant, pressure, kelvin(middle))
    if (!state.ok) return state
    if (state.value.entropy_J_kgK < entropy_J_kgK) low = middle
    else high = middle
  }
  return stateAt(refrigerant, pressure, kelvin(high))
}

const notVapour = (phase: string, temperature_K: number): Problem => ({
  kind: 'unsolved',
  field: 'return gas',
  value: `${temperature_K.toFixed(2)} K`,
  accepted: `it is ${phase} there, not vapour`,
})
