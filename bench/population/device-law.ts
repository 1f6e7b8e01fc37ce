import { type Fluid, type Saturated, temperatureOf } from './fluid.ts'

/** How the flow through a fixed restriction is reckoned; drawn per plant and open to the caller. */
export type RestrictionLaw = 'late-flash' | 'homogeneous'

export type Device =
  | {
      readonly kind: 'fixed-orifice'
      readonly law: RestrictionLaw
      /** Bore times discharge coefficient, m². */
      readonly area: number
      /** Share of the saturation pressure to which the liquid stretches before it flashes. */
      readonly stretch: number
    }
  | {
      readonly kind: 'capillary'
      readonly law: RestrictionLaw
      /** Bore, m². */
      readonly area: number
      /** Friction factor times length over bore, at `massFlux`. */
      readonly friction: number
      readonly massFlux: number
      readonly stretch: number
    }
  | {
      readonly kind: 'thermostatic'
      readonly law: RestrictionLaw
      /** Through the seat at the opening 1, with its discharge coefficient, m². */
      readonly area: number
      /** Opening at the rating point. */
      readonly rated: number
      /** Opening that the stem ends at. */
      readonly most: number
      /** Bulb pressure over evaporating pressure at which it begins to open. */
      readonly spring_Pa: number
      /** Pressure that takes it from shut to the opening 1. */
      readonly rate_Pa: number
      /** Bulb pressure over the refrigerant's own at the bulb temperature: 1 for a parallel charge. */
      readonly bulb: number
      /** Bulb pressure that its charge cannot exceed. */
      readonly highest_Pa: number
      /** Share of the way from line to air that the bulb feels. */
      readonly bulbToAir: number
      /** Stem friction at this visit, as a pressure. */
      readonly stuck_Pa: number
      /** Opening at which a stem is jammed. */
      readonly jammed?: number
    }

/** What reaches the device and what it feeds. */
export interface Around {
  readonly fluid: Fluid
  readonly inlet: Saturated
  readonly h: number
  /** At the coil's inlet. */
  readonly downstream_Pa: number
  /** At the coil's outlet, where bulb and equaliser sit. */
  readonly bulb_K: number
  readonly air_K: number
  readonly equaliser_Pa: number
}

/** kg/s. */
export function feed(device: Device, around: Around): number {
  switch (device.kind) {
    case 'fixed-orifice':
      return device.area * through(device.law, around, device.stretch)
    case 'capillary': {
      const lead = device.law === 'late-flash' ? device.stretch : 1
      // Blasius: friction goes with flow to −1/4, taken out of the square.
      const square = (2 * pull(around, lead, device.friction)) / device.massFlux ** 2
      return device.area * device.massFlux * square ** (1 / 1.75)
    }
    case 'thermostatic':
      return device.area * opening(device, around) * through(device.law, around, 0.9)
  }
}

/** Mass flux through a short hole, kg/(s·m²). */
function through(law: RestrictionLaw, around: Around, stretch: number): number {
  return law === 'late-flash' ? lateFlash(around, stretch) : Math.sqrt(2 * pull(around, stretch, HOLE_FRICTION))
}

/** Of a homogeneous flow in a short hole, entrance and wall. */
const HOLE_FRICTION = 1.4

/** How far a valve is open; 0 shut. */
export function opening(valve: Extract<Device, { kind: 'thermostatic' }>, around: Around): number {
  if (valve.jammed !== undefined) return valve.jammed
  const felt = around.bulb_K + valve.bulbToAir * (around.air_K - around.bulb_K)
  const bulb = Math.min(valve.bulb * around.fluid.dewPressure(felt), valve.highest_Pa)
  const lift = (bulb - around.equaliser_Pa - valve.spring_Pa + valve.stuck_Pa) / valve.rate_Pa
  return within(lift, BLEED, valve.most)
}

/** A shut valve still bleeds through its notch. */
const BLEED = 0.03

/** Held between two ends with the corners rounded. */
function within(z: number, low: number, high: number): number {
  const round = 0.03
  const over = (x: number) => 0.5 * (x + Math.sqrt(x * x + round * round))
  return high - over(high - low - over(z - low))
}

/**
 * Mass flux of Bernoulli to the pressure at which a liquid flashes, somewhat below saturation because the time in the
 * hole is short; of a two-phase inlet less, by the density of the mixture. Downstream counts where nothing flashes.
 */
function lateFlash({ inlet, h, downstream_Pa, fluid }: Around, stretch: number): number {
  const x = Math.max((h - inlet.hLiquid) / (inlet.hVapour - inlet.hLiquid), 0)
  const boiling = x > 0 ? inlet.p_Pa : fluid.bubblePressure(temperatureOf(inlet, h))
  const throat = Math.max(stretch * boiling, downstream_Pa)
  const thinned = 1 + 0.6 * x * (inlet.rhoLiquid / inlet.rhoVapour - 1)
  return Math.sqrt((2 * inlet.rhoLiquid * Math.max(inlet.p_Pa - throat, 100)) / thinned)
}

const STEPS = 8
/** Inlet quality that halves the stretch. */
const BUBBLES = 0.03

/**
 * Largest of ∫ρ dp / (friction + 2 ln(ρ at inlet / ρ)) over the pressures on the way down: the choked flow of a
 * homogeneous mixture with friction along its path, at constant enthalpy.
 */
function pull({ inlet, h, downstream_Pa, fluid }: Around, stretch: number, friction: number): number {
  const x = (h - inlet.hLiquid) / (inlet.hVapour - inlet.hLiquid)
  const rho0 = x > 0 ? fluid.density(inlet.p_Pa, h) : inlet.rhoLiquid
  const boiling = x > 0 ? inlet.p_Pa : fluid.bubblePressure(temperatureOf(inlet, h))
  // Where bubbles come in with it the liquid has something to boil at, and stretches no longer.
  const flash = boiling * (1 - (1 - stretch) / (1 + Math.max(x, 0) / BUBBLES))
  let area = rho0 * Math.max(inlet.p_Pa - Math.max(flash, downstream_Pa), 100)
  let best = area / friction
  const step = Math.max(flash - Math.max(downstream_Pa, 0.3 * flash), 0) / STEPS
  let before = rho0
  for (let k = 1; k <= STEPS; k++) {
    const rho = fluid.density(flash - k * step, h)
    area += 0.5 * (before + rho) * step
    before = rho
    best = Math.max(best, area / (friction + 2 * Math.log(rho0 / rho)))
  }
  return Math.max(best, 1)
}
