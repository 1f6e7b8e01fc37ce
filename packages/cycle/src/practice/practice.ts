import type { Outcome } from '../outcome.ts'
import { type Solution, solve } from '../solve.ts'
import type { Conditions, Health, System } from '../system.ts'
import { atRest, drawInstruments, followed, type GaugeValues, read, truthOf } from './gauges.ts'
import type { Random, Scenario } from './scenario.ts'

/** A practice run, plain data: every function returns the next one. What is under `hidden` is for the debrief. */
export interface Practice {
  readonly hidden: {
    readonly scenario: Scenario
    readonly system: System
    readonly health: Health
    readonly errors: GaugeValues
    /** Turns of the stem away from the maker's setting, as it stands. */
    readonly stemTurns: number
    /** Share of its air that the indoor coil lets through as dirty as it is. */
    readonly indoorDirt: number
  }
  readonly conditions: Conditions
  readonly clock_s: number
  readonly isRunning: boolean
  readonly shown: GaugeValues
  /** Recovery cylinder: what is in it and what it may hold, 80 % of its volume. */
  readonly cylinder: { readonly held_kg: number; readonly most_kg: number }
  readonly log: readonly LogLine[]
  readonly harm: Harm
}

/** One act with what the truth was right before and long after it. */
export interface LogLine {
  readonly clock_s: number
  readonly act: string
  readonly before: TruthPoint
  readonly after: TruthPoint
}

export interface TruthPoint {
  readonly charge_kg: number
  readonly superheat_K?: number
  readonly subcooling_K?: number
}

export interface Harm {
  /** Seconds during which liquid reached the compressor. */
  readonly liquidAtCompressor_s: number
  /** Liquid let into the running low side, kg. */
  readonly liquidIntoSuction_kg: number
  readonly vented_kg: number
  /** Beyond 80 % of the recovery cylinder. */
  readonly overfilled_kg: number
  /** Times the high-pressure switch opened. */
  readonly trips: number
}

const NO_HARM: Harm = {
  liquidAtCompressor_s: 0,
  liquidIntoSuction_kg: 0,
  vented_kg: 0,
  overfilled_kg: 0,
  trips: 0,
}
const CYLINDER_KG = 10

/** A run at its beginning: the system just started, nothing settled. */
export function startPractice(system: System, scenario: Scenario, conditions: Conditions, random: Random): Practice {
  const equalised = system.properties.bubblePressure(conditions.outdoor.dryBulb_K)
  return {
    hidden: {
      scenario,
      system: withStem(system, scenario.stemTurns),
      health: scenario.health,
      errors: drawInstruments(random),
      stemTurns: scenario.stemTurns,
      indoorDirt: scenario.health.indoorAirShare,
    },
    conditions,
    clock_s: 0,
    isRunning: true,
    shown: atRest(conditions, equalised),
    cylinder: { held_kg: 0, most_kg: CYLINDER_KG },
    log: [],
    harm: NO_HARM,
  }
}

/** Lets time pass, as much as is asked for at once. Liquid at the compressor counts for as long as it lasts. */
export function wait(practice: Practice, seconds: number): Practice {
  const next = { ...practice, clock_s: practice.clock_s + seconds }
  if (!practice.isRunning) return next
  const state = stateOf(practice)
  const { harm } = practice
  const tripped = { ...next, isRunning: false, harm: { ...harm, trips: harm.trips + 1 } }
  if (state.kind === 'overfull') return tripped
  if (state.kind === 'no-solution') return { ...next, isRunning: false }
  const has = (kind: Outcome['kind']) => state.outcomes.some((outcome) => outcome.kind === kind)
  if (has('high-pressure-trip')) return tripped
  return {
    ...next,
    shown: followed(practice.shown, truthOf(state.readings), seconds),
    harm: has('flooded') ? { ...harm, liquidAtCompressor_s: harm.liquidAtCompressor_s + seconds } : harm,
  }
}

/** What the instruments show now. */
export const look = (practice: Practice, random: Random): GaugeValues =>
  read(practice.shown, practice.hidden.errors, random)

/** The steady state that the hidden system is heading for. */
function stateOf({ hidden, conditions }: Practice): Solution {
  return solve(hidden.system, conditions, hidden.health)
}

export function truthPoint(practice: Practice): TruthPoint {
  const state = stateOf(practice)
  const { charge_kg } = practice.hidden.health
  if (state.kind !== 'steady') return { charge_kg }
  const { superheat_K, subcooling_K } = state.readings
  return { charge_kg, superheat_K, subcooling_K }
}

/** About 2 °F of superheat per turn, as one service manual has it; it differs from valve to valve. */
const STEM_K_PER_TURN = 2 / 1.8

/** The system with its valve stem turned, clockwise for more superheat. Other devices have no stem. */
export function withStem(system: System, turns: number): System {
  const { device } = system
  if (device.kind !== 'thermostatic') return system
  return { ...system, device: { ...device, staticSuperheat_K: device.staticSuperheat_K + turns * STEM_K_PER_TURN } }
}
