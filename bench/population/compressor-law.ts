import { type Fluid, type Saturated, superheated, temperatureOf } from './fluid.ts'

/** A hermetic compressor. Both laws give volumetric and isentropic efficiency in their own way. */
export type Compressor = {
  /** Swept volume per second, m³/s. */
  readonly sweep: number
  /** Of the electric power that leaves through the shell. */
  readonly shellLoss: number
  /** Gas that slips back from discharge to suction, kg/s at 1 Pa difference and 1 kg/m³: grows with worn valves. */
  readonly slip: number
  /** Motor efficiency at its best load, and how it falls off beside it. */
  readonly motor: number
  readonly motorFall: number
  readonly ratedPower_W: number
} & (
  | {
      readonly kind: 'piston'
      readonly clearance: number
      /** Kelvin that the gas gains in the shell at rated power. */
      readonly shellGain: number
      /** Share of pressure lost through suction and discharge reeds. */
      readonly reeds: number
      readonly friction: number
    }
  | {
      readonly kind: 'scroll'
      /** Built-in volume ratio: beyond or below it the work is wasted. */
      readonly volumeRatio: number
      readonly friction: number
      /** Volumetric loss per unit of pressure ratio. */
      readonly fall: number
    }
)

export interface Pumped {
  readonly flow: number
  readonly power_W: number
  readonly discharge_h: number
}

/**
 * Flow, power and discharge enthalpy at suction (p, h) and discharge pressure. Liquid in the suction gas takes room and
 * is carried along.
 */
export function pump(c: Compressor, fluid: Fluid, suction: Saturated, h: number, discharge_Pa: number): Pumped {
  const ratio = Math.max(discharge_Pa / suction.p_Pa, 1.02)
  let mixed = h
  let result = { flow: 0, power_W: 0, discharge_h: h }
  // Gas that slipped back is hot and warms what is drawn in; three rounds settle it.
  for (let k = 0; k < 3; k++) {
    const rho = densityAt(suction, mixed)
    const drawn = c.kind === 'piston' ? piston(c, suction, mixed, ratio, rho) : scroll(c, ratio, rho)
    // Liquid drops are carried along and take no compressing.
    const dryness = Math.min((mixed - suction.hLiquid) / (suction.hVapour - suction.hLiquid), 1)
    const shaft = drawn.flow * dryness * work(c, fluid, suction, mixed, discharge_Pa, ratio)
    const load = shaft / (c.motor * c.ratedPower_W)
    const power_W = shaft / (c.motor * (1 - c.motorFall * (load - 1) ** 2))
    const back = c.slip * Math.sqrt((discharge_Pa - suction.p_Pa) * rho * ratio)
    const flow = Math.max(drawn.flow - back, 0.05 * drawn.flow)
    const discharge_h = h + (power_W * (1 - c.shellLoss)) / flow
    result = { flow, power_W, discharge_h }
    if (c.slip === 0) return result
    mixed = h + ((drawn.flow - flow) / drawn.flow) * (discharge_h - h)
  }
  return result
}

function piston(
  c: Extract<Compressor, { kind: 'piston' }>,
  suction: Saturated,
  h: number,
  ratio: number,
  rho: number,
): { readonly flow: number } {
  const T = temperatureOf(suction, h)
  const warmed = T / (T + c.shellGain)
  const filled = 1 - c.clearance * (ratio ** (1 / 1.12) - 1) - c.reeds
  return { flow: c.sweep * rho * warmed * Math.max(filled, 0.1) }
}

function scroll(c: Extract<Compressor, { kind: 'scroll' }>, ratio: number, rho: number): { readonly flow: number } {
  return { flow: c.sweep * rho * Math.max(0.99 - c.fall * (ratio - 1), 0.1) }
}

/** Shaft work per kilogram of vapour drawn in, J/kg. */
function work(c: Compressor, fluid: Fluid, suction: Saturated, h: number, discharge_Pa: number, ratio: number): number {
  const dry = Math.max(h, suction.hVapour)
  const rubbing = (2.2 * c.friction * suction.p_Pa) / densityAt(suction, dry)
  switch (c.kind) {
    case 'piston': {
      // Reeds make the cylinder work against more than the lines show; the shell's warmth thickens the work with T.
      const ideal = fluid.isentropic(suction.p_Pa, dry, discharge_Pa * (1 + c.reeds)) - dry
      const T = temperatureOf(suction, dry)
      return (ideal * (1 + c.shellGain / T)) / (1 - c.reeds) + rubbing
    }
    case 'scroll': {
      // Closed volumes compress to a fixed ratio, then the port opens at once to what is there.
      const n = 1.13
      const whole = (n / (n - 1)) * (ratio ** ((n - 1) / n) - 1)
      const trapped = (c.volumeRatio ** (n - 1) - 1) / (n - 1)
      const excess = (trapped + ratio / c.volumeRatio - 1) / whole
      const ideal = fluid.isentropic(suction.p_Pa, dry, discharge_Pa) - dry
      return ideal * excess + rubbing
    }
  }
}

/** Vapour by its swell; a wet gas as a homogeneous mixture. */
function densityAt(at: Saturated, h: number): number {
  if (h >= at.hVapour) return at.rhoVapour / (1 + at.swell * (h - at.hVapour))
  const x = Math.max((h - at.hLiquid) / (at.hVapour - at.hLiquid), 0.05)
  return 1 / (x / at.rhoVapour + (1 - x) / at.rhoLiquid)
}

/** Share of the flow that slips back at these pressures for a given loss at rating. */
export function slipFor(
  c: Compressor,
  fluid: Fluid,
  suction_Pa: number,
  superheat_K: number,
  discharge_Pa: number,
  loss: number,
) {
  const suction = fluid.at(suction_Pa)
  const h = superheated(suction, superheat_K)
  const sound = pump({ ...c, slip: 0 }, fluid, suction, h, discharge_Pa).flow
  const by = (slip: number) => 1 - pump({ ...c, slip }, fluid, suction, h, discharge_Pa).flow / sound
  let [low, high] = [0, (2 * loss * sound) / Math.sqrt((discharge_Pa - suction_Pa) * suction.rhoVapour)]
  for (let k = 0; k < 40; k++) {
    const middle = 0.5 * (low + high)
    if (by(middle) < loss) low = middle
    else high = middle
  }
  return low
}
