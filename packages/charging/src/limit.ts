import { type Dimension, type Quantity, quantity } from '@chargewright/quantity'
import { RA3, WAIT_TIMES } from './wait-times.ts'

/** A threshold as data: never a bare number in a rule. */
export interface Limit<D extends Dimension = Dimension> {
  readonly quantity: Quantity<D>
  readonly source: string
}

const F = 5 / 9
const CFM_PER_TON = 0.3048 ** 3 / 60 / ((12_000 * 1055.05585262) / 3600)
const HABIT = 'common practice'

const limit = <D extends Dimension>(dimension: D, si: number, source: string): Limit<D> => ({
  quantity: quantity(dimension, si),
  source,
})

/**
 * Every threshold the methods use, with its source. Checked on 2026-11-25 against what the named sources print; where a
 * source was recalled and not seen, it says so.
 */
export const LIMITS = {
  ...WAIT_TIMES,

  superheatTolerance: limit('temperature difference', 5 * F, RA3),
  /** Below this target there is no valid superheat test. READ. */
  lowestTargetSuperheat: limit('temperature difference', 5 * F, RA3),
  /** Root mean square of rule minus published grid, outdoor 75 to 105 °F, wet bulb 60 to 72 °F (grid recalled). */
  ruleOfThumbDeparture: limit(
    'temperature difference',
    1.1 * F,
    `${HABIT}, compared with the grid of ${RA3}, recalled`,
  ),
  /** Root mean square of model minus published grid, outdoor 65 to 115 °F, wet bulb 56 to 76 °F, five refrigerants. */
  twinDeparture: limit('temperature difference', 2.8 * F, `own model, compared with the grid of ${RA3}, recalled`),
  outdoorRefused: limit('temperature', (55 + 459.67) * F, RA3),
  outdoorWarned: limit('temperature', (60 + 459.67) * F, HABIT),

  subcoolingTolerance: limit('temperature difference', 3 * F, RA3),
  valveSuperheatMin: limit('temperature difference', 4 * F, RA3),
  valveSuperheatMax: limit('temperature difference', 25 * F, RA3),
  /** Subcooling of a sound air conditioner starts about here; less means little liquid in the condenser. */
  normalSubcooling: limit('temperature difference', 8 * F, HABIT),

  airflowRefused: limit('specific airflow', 300 * CFM_PER_TON, RA3),
  airflowLow: limit('specific airflow', 360 * CFM_PER_TON, `400 CFM per ton ± 10 %, ${HABIT}`),
  airflowHigh: limit('specific airflow', 440 * CFM_PER_TON, `400 CFM per ton ± 10 %, ${HABIT}`),
  splitTolerance: limit('temperature difference', 3 * F, RA3),

  /** A drier that cools the liquid more than this is restricted. */
  drierDrop: limit('temperature difference', 2 * F, `2 to 3 °F, ${HABIT}`),
  /** Condensing temperature above entering air of a sound air conditioner, at most. */
  condensingRise: limit('temperature difference', 30 * F, HABIT),
  /** A box this far above its set point loads the valve fully. */
  boxAboveSetPoint: limit('temperature difference', 10 * F, HABIT),
  /** Liquid may reach the compressor below this superheat. */
  floodingSuperheat: limit('temperature difference', 3 * F, HABIT),

  criticalChargeTolerance: limit('mass', 0.45359237 / 64, `a quarter ounce, ${HABIT}`),
  chargeTolerance: limit('mass', 0.45359237 / 32, `half an ounce, ${HABIT}`),
  habitualStep: limit('mass', 0.45359237 / 8, `2 to 4 oz, ${HABIT}`),
  /** Fed while the glass is watched, where nothing tells how large the system is. */
  watchedStep: limit('mass', 0.45359237 / 2, HABIT),
} as const

/** Share of the nameplate charge in a first step, and the most of it in any step: common practice. */
export const FIRST_STEP_SHARE = 0.05
export const GREATEST_STEP_SHARE = 0.1
/** Share of its volume to which a receiver may stand full of liquid: common practice. */
export const RECEIVER_FILL = 0.8
/** Share of what a receiver holds in one step: own choice, so that several steps fit in before it is full. */
export const RECEIVER_STEP_SHARE = 0.25
/** Steps are this much larger where no liquid reaches the valve: own choice. */
export const STARVED_STEP_FACTOR = 2
/** Share of a critical charge that a quarter ounce must not exceed: own choice, so that a tiny charge is held tighter. */
export const CRITICAL_TOLERANCE_SHARE = 0.05
/** The same of one that burns, whose charge stands close below what is allowed: own choice, about 3 g of 150 g. */
export const BURNING_TOLERANCE_SHARE = 0.02
/** Share of the charge within which a weighed charge counts as right, where it is not critical: common practice. */
export const CHARGE_TOLERANCE_SHARE = 0.01
