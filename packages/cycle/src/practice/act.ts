import { fail, ok, outOfRange, type Problem, type Result } from '@chargewright/quantity'
import { conditions } from '../system.ts'
import { type Practice, truthPoint, withStem } from './practice.ts'

/** Everything that can be done to a practice system. Masses in kg. */
export type Action =
  | { readonly kind: 'add'; readonly mass_kg: number; readonly phase: 'vapour' | 'liquid' }
  | { readonly kind: 'recover'; readonly mass_kg: number }
  | { readonly kind: 'vent'; readonly mass_kg: number }
  | { readonly kind: 'turn-stem'; readonly turns: number }
  | { readonly kind: 'open-doors' }
  | { readonly kind: 'indoor-fan'; readonly share: number }
  | { readonly kind: 'clean-indoor-coil' }
  | { readonly kind: 'clean-condenser' }
  | { readonly kind: 'change-drier' }
  | { readonly kind: 'recover-evacuate-recharge'; readonly mass_kg: number }
  /** The drier with it; recovered before, evacuated and weighed in after. */
  | { readonly kind: 'replace-compressor'; readonly mass_kg: number }
  | { readonly kind: 'restart' }

/** Warm, moist air let in: a high load. */
const DOORS_K = 4
const MOST_KG = 50

/** The practice after an act; nothing has settled yet. Refused only where the act is impossible, never where it is unwise. */
export function act(practice: Practice, action: Action): Result<Practice, Problem> {
  const before = truthPoint(practice)
  const done = perform(practice, action)
  if (!done.ok) return done
  const line = { clock_s: practice.clock_s, act: describe(action), before, after: truthPoint(done.value) }
  return ok({ ...done.value, log: [...practice.log, line] })
}

function perform(practice: Practice, action: Action): Result<Practice, Problem> {
  const { hidden, harm } = practice
  const health = (changed: Partial<typeof hidden.health>): Practice => ({
    ...practice,
    hidden: { ...hidden, health: { ...hidden.health, ...changed } },
  })
  switch (action.kind) {
    case 'add': {
      const problem = outOfRange('mass to add', action.mass_kg, 0, MOST_KG, 'kg')
      if (problem) return fail(problem)
      const added = health({ charge_kg: hidden.health.charge_kg + action.mass_kg })
      if (action.phase === 'vapour' || !practice.isRunning) return ok(added)
      return ok({ ...added, harm: { ...harm, liquidIntoSuction_kg: harm.liquidIntoSuction_kg + action.mass_kg } })
    }
    case 'recover':
      return taken(practice, action.mass_kg, 'cylinder')
    case 'vent':
      return taken(practice, action.mass_kg, 'air')
    case 'turn-stem': {
      if (hidden.system.device.kind !== 'thermostatic') return fail(noStem(hidden.system.device.kind))
      const problem = outOfRange('turns', action.turns, -10, 10, '1')
      if (problem) return fail(problem)
      return ok({
        ...practice,
        hidden: {
          ...hidden,
          system: withStem(hidden.system, action.turns),
          stemTurns: hidden.stemTurns + action.turns,
        },
      })
    }
    case 'open-doors': {
      const { outdoor, indoor } = practice.conditions
      const warmer = conditions(
        outdoor.dryBulb_K,
        indoor.dryBulb_K + DOORS_K,
        indoor.wetBulb_K + DOORS_K,
        indoor.pressure_Pa,
      )
      return warmer.ok ? ok({ ...practice, conditions: warmer.value }) : warmer
    }
    case 'indoor-fan': {
      const problem = outOfRange('fan speed', action.share, 0.3, 1.3, 'of rated airflow')
      return problem ? fail(problem) : ok(health({ indoorAirShare: hidden.indoorDirt * action.share }))
    }
    case 'clean-indoor-coil':
      return ok({
        ...practice,
        hidden: {
          ...hidden,
          indoorDirt: 1,
          health: { ...hidden.health, indoorAirShare: hidden.health.indoorAirShare / hidden.indoorDirt },
        },
      })
    case 'clean-condenser':
      return ok(health({ outdoorAirShare: 1 }))
    case 'change-drier':
      return ok(health({ restriction_Pa: 0 }))
    case 'recover-evacuate-recharge':
    case 'replace-compressor': {
      const emptied = taken(practice, hidden.health.charge_kg, 'cylinder')
      if (!emptied.ok) return emptied
      const problem = outOfRange('mass to weigh in', action.mass_kg, 0.1, MOST_KG, 'kg')
      if (problem) return fail(problem)
      const renewed = action.kind === 'replace-compressor' ? { wear: 0, restriction_Pa: 0 } : {}
      const filled = { ...hidden.health, ...renewed, charge_kg: action.mass_kg, nonCondensable_Pa: 0 }
      return ok({ ...emptied.value, hidden: { ...hidden, health: filled } })
    }
    case 'restart':
      return ok({ ...practice, isRunning: true })
  }
}

/** Takes refrigerant out, never more than there is. */
function taken(practice: Practice, mass_kg: number, into: 'cylinder' | 'air'): Result<Practice, Problem> {
  const { hidden, harm, cylinder } = practice
  const problem = outOfRange('mass to take out', mass_kg, 0, hidden.health.charge_kg, 'kg')
  if (problem) return fail(problem)
  const left = { ...hidden, health: { ...hidden.health, charge_kg: hidden.health.charge_kg - mass_kg } }
  if (into === 'air') return ok({ ...practice, hidden: left, harm: { ...harm, vented_kg: harm.vented_kg + mass_kg } })
  const held_kg = cylinder.held_kg + mass_kg
  const overfilled_kg = Math.max(held_kg - cylinder.most_kg, 0)
  return ok({
    ...practice,
    hidden: left,
    cylinder: { ...cylinder, held_kg },
    harm: { ...harm, overfilled_kg: Math.max(harm.overfilled_kg, overfilled_kg) },
  })
}

function noStem(device: string): Problem {
  return { kind: 'unknown', field: 'valve stem', value: device, accepted: 'a system with a thermostatic valve' }
}

function describe(action: Action): string {
  switch (action.kind) {
    case 'add':
      return `add ${grams(action.mass_kg)} as ${action.phase}`
    case 'recover':
      return `recover ${grams(action.mass_kg)}`
    case 'vent':
      return `vent ${grams(action.mass_kg)}`
    case 'turn-stem':
      return `turn the valve stem ${action.turns} turns`
    case 'indoor-fan':
      return `set the indoor fan to ${action.share} of its rated airflow`
    case 'recover-evacuate-recharge':
      return `recover all, evacuate, weigh in ${grams(action.mass_kg)}`
    case 'replace-compressor':
      return `recover all, replace compressor and drier, evacuate, weigh in ${grams(action.mass_kg)}`
    case 'open-doors':
    case 'clean-indoor-coil':
    case 'clean-condenser':
    case 'change-drier':
    case 'restart':
      return action.kind.replaceAll('-', ' ')
  }
}

const grams = (kg: number) => `${Math.round(kg * 1000)} g`
