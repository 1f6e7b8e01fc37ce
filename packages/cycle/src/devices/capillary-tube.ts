import type { DeviceInlet } from './inlet.ts'

/** A long narrow tube; what matters is its bore and its friction length f·L/D. */
export interface CapillaryTube {
  readonly kind: 'capillary'
  /** Of one tube, or of one tube as wide as all in parallel. */
  readonly diameter_m: number
  /** Darcy friction factor times length over diameter, with the loss at the inlet. */
  readonly friction: number
}

const STEPS = 25
const CLOSE = 1e-10

/**
 * Mass flow of an adiabatic capillary tube, kg/s: liquid until it boils, then homogeneous two-phase flow that speeds up
 * to the speed of sound at the exit or to the pressure behind it. Closed-form momentum balance along the tube with the
 * specific volume v/vs = ω(ps/p − 1) + 1, solved for the flux by Newton's method (the balance is monotone in it).
 *
 * @source the ω method for flashing flow, Leung 1986, 1987, REMEMBERED; ω fitted here between the bubble pressure and
 *   half of it. Assumed away: heat exchange with the suction line, metastable liquid, change of friction with quality.
 */
export function capillaryFlow(tube: CapillaryTube, inlet: DeviceInlet, omega: number, downstream_Pa: number): number {
  const ps = inlet.bubblePressure_Pa
  const vs = 1 / inlet.density_kg_m3
  const liquidDrop = inlet.at.pressure_Pa - ps
  let lnG = Math.log(Math.sqrt((2 * (liquidDrop + 0.4 * ps)) / (vs * tube.friction)))
  for (let i = 0; i < STEPS; i++) {
    const [here, ahead] = [0, 1e-6].map((d) =>
      balance(tube.friction, Math.exp(lnG + d), ps, vs, liquidDrop, omega, downstream_Pa),
    )
    const step = -here! / ((ahead! - here!) / 1e-6)
    lnG += Math.min(Math.max(step, -1), 1)
    if (Math.abs(step) < CLOSE) break
  }
  return (Math.PI / 4) * tube.diameter_m ** 2 * Math.exp(lnG)
}

/** Friction length that a flux needs, minus the one there is, as a share of it. */
function balance(
  friction: number,
  G: number,
  ps: number,
  vs: number,
  liquidDrop: number,
  omega: number,
  downstream: number,
): number {
  const choked = G * Math.sqrt(vs * omega * ps)
  const exit = Math.min(Math.max(choked, downstream), ps)
  const expansion = omega * (ps / exit - 1) + 1
  // ∫ dp/v from exit to bubble pressure, with v/vs = (ω ps + (1 − ω) p)/p.
  const a = omega * ps
  const b = 1 - omega
  const integral = (ps - exit) / b - (a / (b * b)) * Math.log((a + b * ps) / (a + b * exit))
  const needed = (2 * (liquidDrop + integral)) / (vs * G * G) - 2 * Math.log(expansion)
  return needed / friction - 1
}
