import { type Cycle, cycle } from './cycle.ts'
import { type NewtonResult, newton, type Vector3 } from './newton.ts'
import { type Outcome, outcomesOf } from './outcome.ts'
import { type Readings, readingsOf } from './readings.ts'
import type { Conditions, Health, System, Unknowns } from './system.ts'

export type Solution = SteadyState | Overfull | NoSolution

export interface SteadyState {
  readonly kind: 'steady'
  readonly readings: Readings
  readonly outcomes: readonly Outcome[]
  readonly cycle: Cycle
  readonly unknowns: Unknowns
  readonly iterations: number
}

/**
 * The system holds more liquid than fits: even at the highest pressure of the tables, above any pressure switch, it would
 * hold less than its charge.
 */
export interface Overfull {
  readonly kind: 'overfull'
  readonly pressure_Pa: number
  readonly excess_kg: number
  readonly iterations: number
}

/** No steady state was found from any start; says which balance stayed open, and by how much of its scale. */
export interface NoSolution {
  readonly kind: 'no-solution'
  readonly open: 'flow' | 'evaporatorOutlet' | 'charge'
  readonly by: number
  readonly iterations: number
}

/**
 * The steady state of a system with its charge.
 *
 * Attempts in order: the caller's start (a neighbouring solution), the rated state moved with the weather, then a walk
 * from the rated state in which weather, charge and faults come on together. A search that a large charge took
 * above every pressure asks first whether that charge fits at all.
 */
export function solve(system: System, at: Conditions, health: Health, start?: Unknowns): Solution {
  let iterations = 0
  let last: NewtonResult | undefined
  const attempt: Attempt = (from, conditions = at, state = health) => {
    last = newton((x) => residuals(system, conditions, state, x), scaled(from), STEP_CAP)
    iterations += last.iterations
    return last.converged && inTables(system, last.x) ? unscaled(last.x) : undefined
  }
  const moved = movedWithWeather(system, at, health)
  const near = (start && attempt(start)) ?? attempt(moved)
  if (near) return steady(system, at, health, near, iterations)
  const wentTooHigh = Math.exp(last!.x[1]) > system.properties.range.max_Pa
  const mayNotFit = wentTooHigh && health.charge_kg > system.rated.charge_kg
  const early = mayNotFit ? overfull(system, at, health, moved, iterations) : undefined
  if (early) return early
  const walked = walk(system, at, health, attempt)
  if (walked) return steady(system, at, health, walked, iterations)
  return overfull(system, at, health, moved, iterations) ?? noSolution(last!, iterations)
}

type Attempt = (from: Unknowns, at?: Conditions, health?: Health) => Unknowns | undefined

/** Assembles the answer for unknowns that are known to solve the cycle. */
function steady(system: System, at: Conditions, health: Health, unknowns: Unknowns, iterations: number): SteadyState {
  const solved = cycle(system, at, health, unknowns)
  const readings = readingsOf(system, solved)
  return {
    kind: 'steady',
    readings,
    outcomes: outcomesOf(system, solved, readings),
    cycle: solved,
    unknowns,
    iterations,
  }
}

/** The state at the highest pressure, its charge left free: if that charge is less than there is, nothing below holds it. */
function overfull(
  system: System,
  at: Conditions,
  health: Health,
  from: Unknowns,
  iterations: number,
): Overfull | undefined {
  const { properties, rated } = system
  const highest = Math.log(properties.range.max_Pa)
  const pinned = (x: Vector3): Vector3 => {
    const [flow, outlet] = residuals(system, at, health, x)
    return [flow, outlet, x[1] - highest]
  }
  const top = newton(pinned, scaled({ ...from, lnCondensing: highest }), STEP_CAP)
  if (!top.converged) return undefined
  const excess_kg = health.charge_kg - cycle(system, at, health, unscaled(top.x)).charge_kg
  if (!(excess_kg > -EXCESS_SHARE * rated.charge_kg)) return undefined
  return { kind: 'overfull', pressure_Pa: properties.range.max_Pa, excess_kg, iterations: iterations + top.iterations }
}

/** Next below the highest pressure the charge hardly changes any more: what fits there only by this much does not fit. */
const EXCESS_SHARE = 0.01

function noSolution({ residual }: NewtonResult, iterations: number): NoSolution {
  const names = ['flow', 'evaporatorOutlet', 'charge'] as const
  // Not ≤ rather than >: a residual that is no number is the worst.
  const worst = residual.reduce((w, r, i) => (Math.abs(r) <= Math.abs(residual[w]!) ? w : i), 0)
  return { kind: 'no-solution', open: names[worst]!, by: residual[worst]!, iterations }
}

const ENTHALPY_SCALE_J_KG = 1e5
/** A factor of 1.5 in each pressure, 30 kJ/kg. */
const STEP_CAP: Vector3 = [0.4, 0.4, 0.3]

const scaled = (u: Unknowns): Vector3 => [u.lnSuction, u.lnCondensing, u.suctionEnthalpy_J_kg / ENTHALPY_SCALE_J_KG]
const unscaled = ([lnSuction, lnCondensing, h]: Vector3): Unknowns => ({
  lnSuction,
  lnCondensing,
  suctionEnthalpy_J_kg: h * ENTHALPY_SCALE_J_KG,
})

function residuals(system: System, at: Conditions, health: Health, x: Vector3): Vector3 {
  const { flow, evaporatorOutlet, charge } = cycle(system, at, health, unscaled(x)).residuals
  return [flow, evaporatorOutlet, charge]
}

/** A root far outside the tables is one of the straight continuation, not of the refrigerant. */
function inTables({ properties: { range } }: System, [lnSuction, lnCondensing]: Vector3): boolean {
  return (
    lnSuction > Math.log(range.min_Pa) - 1.5 && lnCondensing < Math.log(range.max_Pa) + 1 && lnCondensing > lnSuction
  )
}

/** The rated state, its saturation temperatures moved with the air on either side, a little for charge and restriction. */
function movedWithWeather(
  { properties, rated, device }: System,
  { outdoor, indoor }: Conditions,
  health: Health,
): Unknowns {
  const suction = properties.saturated(Math.exp(rated.unknowns.lnSuction))
  const condensing = properties.saturated(Math.exp(rated.unknowns.lnCondensing))
  const warmerOut = outdoor.dryBulb_K - rated.conditions.outdoor.dryBulb_K
  const warmerIn = indoor.wetBulb_K - rated.conditions.indoor.wetBulb_K
  const more = Math.max(Math.min(health.charge_kg / rated.charge_kg - 1, 0.3), -0.5)
  const starved = Math.min(health.restriction_Pa / (condensing.pressure_Pa - suction.pressure_Pa), 1)
  const evaporating_K = suction.dew_K + 0.55 * warmerIn + 0.2 * warmerOut + 12 * Math.min(more, 0) - STARVED_K * starved
  const condensing_K = condensing.dew_K + warmerOut + 12 * more
  const lnSuction = Math.log(properties.dewPressure(evaporating_K))
  const there = properties.saturated(Math.exp(lnSuction))
  const change = 0.5 * (warmerIn - warmerOut) - 40 * more + 2 * STARVED_K * starved
  const holds = device.kind === 'thermostatic' || device.kind === 'electronic' ? VALVE_RESPONSE : 1
  const superheat = Math.max(rated.superheat_K + holds * change, 1)
  return {
    lnSuction,
    lnCondensing: Math.log(properties.dewPressure(condensing_K)),
    suctionEnthalpy_J_kg: there.vapourEnthalpy_J_kg + there.vapourHeat_J_kgK * superheat,
  }
}

/** Share of a fixed device's change of superheat that a valve lets through. */
const VALVE_RESPONSE = 0.1
/** How far a restriction of the whole pressure difference pulls the evaporating temperature down, about. */
const STARVED_K = 20

/** From the rated state to the wanted one in steps that shrink where Newton fails and grow where it does not. */
function walk({ rated }: System, at: Conditions, health: Health, attempt: Attempt): Unknowns | undefined {
  let [unknowns, done, step] = [rated.unknowns, 0, 0.25]
  while (done < 1) {
    const share = Math.min(done + step, 1)
    const reached = attempt(unknowns, partWay(rated.conditions, at, share), partHealth(rated.charge_kg, health, share))
    if (reached) [unknowns, done, step] = [reached, share, step * 1.7]
    else step /= 2
    if (step < SHORTEST_STEP) return undefined
  }
  return unknowns
}

const SHORTEST_STEP = 0.005

function partWay(from: Conditions, to: Conditions, share: number): Conditions {
  if (share === 1) return to
  const mix = <T extends Conditions['outdoor']>(a: T, b: T) =>
    Object.fromEntries(
      Object.entries(a).map(([key, value]) => [key, value + share * ((b[key as keyof T] as number) - value)]),
    ) as unknown as T
  return { outdoor: mix(from.outdoor, to.outdoor), indoor: mix(from.indoor, to.indoor), saturatedAir: to.saturatedAir }
}

function partHealth(ratedCharge: number, to: Health, share: number): Health {
  const toward = (sound: number, value: number) => sound + share * (value - sound)
  return {
    charge_kg: toward(ratedCharge, to.charge_kg),
    restriction_Pa: toward(0, to.restriction_Pa),
    nonCondensable_Pa: toward(0, to.nonCondensable_Pa),
    wear: toward(0, to.wear),
    indoorAirShare: toward(1, to.indoorAirShare),
    outdoorAirShare: toward(1, to.outdoorAirShare),
    deviceShare: toward(1, to.deviceShare),
  }
}
