import type { Weather } from './unit.ts'

/** The kinds of system that are drawn. All cool rooms in comfort cooling; none has a receiver. */
export type DeviceKind = 'fixed-orifice' | 'capillary' | 'thermostatic'

/** What is really wrong with a drawn system; see `Truth` for what a severity counts. */
export type Trouble =
  | 'short-of-charge'
  | 'overcharged'
  | 'low-indoor-air'
  | 'poor-condenser-air'
  | 'liquid-line-restriction'
  | 'non-condensables'
  | 'weak-compressor'
  | 'valve-feeds-too-little'
  | 'valve-feeds-too-much'

/** What the maker printed on it, rounded as makers do. */
export interface Plate {
  readonly refrigerant: string
  readonly device: DeviceKind
  readonly capacity_W: number
  readonly charge_kg: number
  /** Capacity over total power at the rating point (35 °C outdoors, 26.7 °C and 19.4 °C wet bulb indoors). */
  readonly cop: number
  /** Printed on systems with a thermostatic valve. */
  readonly subcooling_K?: number
}

/**
 * What a technician wrote down: true values distorted by instruments, bad clamps and unsettled minutes. What was not
 * read is absent. Pressures absolute.
 */
export interface ReadingSet {
  readonly outdoor_K: number
  readonly returnAir_K: number
  readonly returnWetBulb_K: number
  readonly suctionPressure_Pa: number
  readonly suctionLine_K: number
  readonly liquidPressure_Pa?: number
  readonly liquidLine_K?: number
  readonly dischargeLine_K?: number
  readonly condenserLeavingAir_K?: number
  readonly supplyAir_K?: number
  readonly drierInlet_K?: number
  readonly drierOutlet_K?: number
  /** Power of the compressor and of the whole system, W. */
  readonly compressorPower_W?: number
  readonly power_W?: number
  /** At rest, equalised: pressure of the circuit and temperature of both coils' air. */
  readonly standstill?: { readonly pressure_Pa: number; readonly ambient_K: number }
}

/**
 * Charge that is right is what the maker's procedure puts into this system: the charge of his design at the rating
 * point with the lines as they really are. What the technician holds in hand, `Plate.charge_kg`, is that charge rounded,
 * with a line length that he misjudged by some and the maker's own tolerance: 2 % standard deviation in all.
 */
export interface Truth {
  /**
   * Empty for a sound system; two in a fifth of the cases. A severity is a share, and counts
   * charge: of the right charge, missing or too much;
   * air: of the coil's airflow that is missing;
   * restriction: its pressure loss at rated flow, of the pressure from liquid line to suction;
   * gas: the pressure it would have alone in the whole circuit at 25 °C, of one atmosphere;
   * compressor: of the flow at rating, lost by slip;
   * valve: of the opening that rating needs, where the stem is jammed; of 20 K (too little) or 12 K (too much) by which
   * the superheat at which it opens is off, where spring or bulb are wrong.
   */
  readonly troubles: readonly { readonly kind: Trouble; readonly severity: number }[]
  /** Charge over the charge that is right for this very system, minus 1. */
  readonly chargeError: number
}

export interface Case {
  readonly id: number
  /** Plants of the seen half may be used to calibrate and tune; those of the unseen half only to score. */
  readonly half: 'seen' | 'unseen'
  readonly plate: Plate
  readonly readings: ReadingSet
  /** The same visit with everything read, also what this technician leaves out by habit. */
  readonly everything: ReadingSet
  /** What the maker's chart of this model asks for in the weather as it was read, K; behind fixed devices. */
  readonly makersSuperheat_K?: number
  readonly truth: Truth
}

/** A drawn system that takes refrigerant and can be read again: for closed loops. */
export interface Plant {
  readonly plate: Plate
  readonly right_kg: number
  /** Reads it in its present weather with its own instruments. Undefined where it cannot run so. */
  readonly read: (wanted?: 'ordinary' | 'everything') => ReadingSet | undefined
  /** Adds (or, negative, recovers) and lets it settle; tells whether that did harm. */
  /** Superheat on the maker's chart, in whole °F; undefined where he prints none: below 5 °F, and behind a valve. */
  readonly makersSuperheat_K: (weather: Weather) => number | undefined
  readonly weigh: (kg: number) => { readonly harm: boolean }
  readonly truth: () => Truth
}
