import {
  bubblePressure,
  buildTable,
  dewPressure,
  enthalpyAtTemperature,
  entropyAt,
  findRefrigerant,
  lookUp,
  type PropertyTable,
  pascal,
  type Refrigerant,
  saturationAtPressure,
  tableState,
  vapourEnthalpyAtEntropy,
} from '@chargewright/refrigerant'
import { TRANSPORT, type TransportAt } from './transport.ts'

/** Everything the simulator asks of one pressure, so that the cells of a coil need no further look-up. */
export interface Saturated extends TransportAt {
  readonly p_Pa: number
  readonly bubble_K: number
  readonly dew_K: number
  readonly hLiquid: number
  readonly hVapour: number
  readonly rhoLiquid: number
  readonly rhoVapour: number
  readonly cpLiquid: number
  /** T − dew = y·(slope + bend·y) of the superheated vapour, y = h − hVapour in J/kg. */
  readonly slope: number
  readonly bend: number
  /** Specific volume of the superheated vapour over that of the saturated one is 1 + swell·y. */
  readonly swell: number
}

/** A refrigerant, asked by pressure and enthalpy; SI, J/kg, absolute pressures. */
export interface Fluid {
  readonly name: string
  readonly critical_Pa: number
  readonly at: (p_Pa: number) => Saturated
  readonly dewPressure: (T_K: number) => number
  readonly bubblePressure: (T_K: number) => number
  /** Enthalpy after an isentropic compression from the state (p, h) to a higher pressure. */
  readonly isentropic: (p_Pa: number, h: number, to_Pa: number) => number
  /** Density of any state, kg/m³. */
  readonly density: (p_Pa: number, h: number) => number
}

const made = new Map<string, Fluid>()

/** The refrigerant of that name, its table built once. */
export function fluid(name: string): Fluid {
  const known = made.get(name)
  if (known) return known
  const found = findRefrigerant(name)
  if (!found.ok) throw new Error(`${name} is no refrigerant`)
  const table = buildTable(found.value)
  if (!table.ok) throw new Error(`no table for ${name}`)
  const built = over(found.value, table.value)
  made.set(name, built)
  return built
}

/** Superheats, as enthalpies above the dew point, through which the vapour's curve is laid, J/kg. */
const NEAR = 15e3
const FAR = 60e3
const state = tableState()
/** Pressures of the grid, between these temperatures of the bubble point and 0.93 of the critical pressure. */
const COLDEST_K = 228
const NODES = 500

function over(refrigerant: Refrigerant, table: PropertyTable): Fluid {
  const critical_Pa = Math.exp(table.lnCriticalPressure)
  const first = Math.log(bubblePressure(table, COLDEST_K))
  const step = (Math.log(0.93 * critical_Pa) - first) / NODES
  const nodes = Array.from({ length: NODES + 1 }, (_, k) => saturatedAt(refrigerant, table, Math.exp(first + k * step)))
  const within = (p: number) => Math.min(Math.max(p, nodes[0]!.p_Pa), nodes[NODES]!.p_Pa)
  return {
    name: refrigerant.name,
    critical_Pa,
    at: (p) => {
      const place = (Math.log(within(p)) - first) / step
      const k = Math.min(place | 0, NODES - 1)
      return between(nodes[k]!, nodes[k + 1]!, place - k)
    },
    dewPressure: (T) => dewPressure(table, T),
    bubblePressure: (T) => bubblePressure(table, T),
    isentropic: (p, h, to) => vapourEnthalpyAtEntropy(table, within(to), entropyAt(table, within(p), h)),
    density: (p, h) => (lookUp(table, within(p), h, state) ? state.density_kg_m3 : Number.NaN),
  }
}

function saturatedAt(refrigerant: Refrigerant, table: PropertyTable, p_Pa: number): Saturated {
  const transport = TRANSPORT[refrigerant.name]
  if (!transport) throw new Error(`no transport data for ${refrigerant.name}`)
  const seen = (h: number) => {
    if (!lookUp(table, p_Pa, h, state)) throw new Error(`${refrigerant.name} has no vapour at ${p_Pa} Pa, ${h} J/kg`)
    return { T: state.temperature_K, rho: state.density_kg_m3 }
  }
  const lines = saturationAtPressure(refrigerant, pascal(p_Pa))
  if (!lines.ok) throw new Error(`${refrigerant.name} has no saturation at ${p_Pa} Pa`)
  const { bubble, dew } = lines.value
  const [bubble_K, dew_K, hVapour] = [bubble.temperature_K, dew.temperature_K, dew.enthalpy_J_kg]
  const near = seen(hVapour + NEAR).T - dew_K
  const { T, rho } = seen(hVapour + FAR)
  const bend = ((T - dew_K) / FAR - near / NEAR) / (FAR - NEAR)
  return {
    p_Pa,
    bubble_K,
    dew_K,
    hLiquid: bubble.enthalpy_J_kg,
    hVapour,
    rhoLiquid: bubble.density_kg_m3,
    rhoVapour: dew.density_kg_m3,
    cpLiquid: (bubble.enthalpy_J_kg - enthalpyAtTemperature(table, p_Pa, bubble_K - 8)) / 8,
    slope: near / NEAR - bend * NEAR,
    bend,
    swell: (dew.density_kg_m3 / rho - 1) / FAR,
    ...transport(0.5 * (bubble_K + dew_K)),
  }
}

/** Temperature at an enthalpy on one pressure, any phase; glide is straight between bubble and dew. */
export function temperatureOf(at: Saturated, h: number): number {
  if (h >= at.hVapour) {
    const y = h - at.hVapour
    return at.dew_K + y * (at.slope + at.bend * y)
  }
  if (h <= at.hLiquid) return at.bubble_K - (at.hLiquid - h) / at.cpLiquid
  return at.bubble_K + ((h - at.hLiquid) / (at.hVapour - at.hLiquid)) * (at.dew_K - at.bubble_K)
}

/** Enthalpy of the vapour superheated by so many kelvin. */
export function superheated(at: Saturated, by_K: number): number {
  return at.hVapour + (2 * by_K) / (at.slope + Math.sqrt(at.slope * at.slope + 4 * at.bend * by_K))
}

/** Enthalpy of the liquid subcooled by so many kelvin. */
export function subcooled(at: Saturated, by_K: number): number {
  return at.hLiquid - at.cpLiquid * by_K
}

/** Between two neighbouring pressures. */
function between(a: Saturated, b: Saturated, share: number): Saturated {
  const mix = (x: number, y: number) => x + share * (y - x)
  return {
    p_Pa: mix(a.p_Pa, b.p_Pa),
    bubble_K: mix(a.bubble_K, b.bubble_K),
    dew_K: mix(a.dew_K, b.dew_K),
    hLiquid: mix(a.hLiquid, b.hLiquid),
    hVapour: mix(a.hVapour, b.hVapour),
    rhoLiquid: mix(a.rhoLiquid, b.rhoLiquid),
    rhoVapour: mix(a.rhoVapour, b.rhoVapour),
    cpLiquid: mix(a.cpLiquid, b.cpLiquid),
    slope: mix(a.slope, b.slope),
    bend: mix(a.bend, b.bend),
    swell: mix(a.swell, b.swell),
    muLiquid: mix(a.muLiquid, b.muLiquid),
    muVapour: mix(a.muVapour, b.muVapour),
    kLiquid: mix(a.kLiquid, b.kLiquid),
    kVapour: mix(a.kVapour, b.kVapour),
    sigma: mix(a.sigma, b.sigma),
  }
}
