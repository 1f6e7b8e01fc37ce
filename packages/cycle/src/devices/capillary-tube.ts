import type { DeviceInlet } from './inlet.ts'

/** A long narrow tube; what matters is its bore and its friction length f·L/D. */
export interface CapillaryTube {
  readonly kind: 'capillary'
  /** Of one tube, or of one tube as wide as all in parallel. */
  readonly diameter_m: number
  /** Darcy friction factor times length over diameter, with the loss at the inlet. */
  readonly friction: number
}

const MOST_STEPS = 25
const CLOSE = 1e-11

/**
 * Mass flow of an adiabatic capillary tube, kg/s: liquid until it boils, then homogeneous two-phase flow that speeds up
 * to the speed of sound at the exit or to the pressure behind it. Closed-form momentum balance along the tube with the
 * specific volume v/vs = ω(ps/p − 1) + 1, solved for the logarithm of the flux by Newton's method: the friction length
 * that a flux needs falls all the way with it.
 *
 * @source the ω method for flashing flow, Leung 1986, 1987, REMEMBERED; ω fitted here between the bubble pressure and
 *   half of it. Assumed away: heat exchange with the suction line, metastable liquid, change of friction with quality.
 */
export function capillaryFlow(tube: CapillaryTube, inlet: DeviceInlet, omega: number, downstream_Pa: number): number {
  const ps = inlet.bubblePressure_Pa
  const vs = 1 / inlet.density_kg_m3
  const liquidDrop = inlet.at.pressure_Pa - ps
  const [a, b] = [omega * ps, 1 - omega]
  let G = Math.sqrt((2 * (liquidDrop + 0.4 * ps)) / (vs * tube.friction))
  for (let i = 0; i < MOST_STEPS; i++) {
    const choked = G * Math.sqrt(vs * omega * ps)
    const exit = Math.min(Math.max(choked, downstream_Pa), ps)
    // ∫ dp/v from exit to bubble pressure, with v/vs = (ω ps + (1 − ω) p)/p.
    const integral = (ps - exit) / b - (a / (b * b)) * Math.log((a + b * ps) / (a + b * exit))
    const drive = (2 * (liquidDrop + integral)) / (vs * G * G)
    const needed = drive - 2 * Math.log(omega * (ps / exit - 1) + 1)
    // At the exit pressure of choked flow both terms answer alike to it, so that the slope is that of the drive alone.
    const step = (needed - tube.friction) / (2 * Math.max(drive, LEAST_DRIVE))
    G *= Math.exp(Math.min(Math.max(step, -1), 1))
    if (Math.abs(step) < CLOSE) break
  }
  return (Math.PI / 4) * tube.diameter_m ** 2 * G
}

/** Keeps the slope of a tube without pressure difference, whose flux goes to nothing, from being none. */
const LEAST_DRIVE = 1e-6
