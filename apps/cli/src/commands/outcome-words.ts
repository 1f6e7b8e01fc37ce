import type { Outcome, Solution } from '@chargewright/cycle'
import { quantity, type Statement, say } from '@chargewright/quantity'

/** What a state means for the machine; nothing where it simply runs. */
export function outcomeWords(solution: Solution): readonly Statement[] {
  switch (solution.kind) {
    case 'steady':
      return solution.outcomes.map(words)
    case 'overfull':
      return [say`The charge does not fit: ${quantity('mass', solution.excess_kg)} too much, at any pressure`]
    case 'no-solution':
      return [say`No steady state was found: ${BALANCES[solution.open]} stays open by ${percent(solution.by)}`]
  }
}

function words(outcome: Outcome): Statement {
  switch (outcome.kind) {
    case 'flooded':
      return say`Liquid reaches the compressor: ${percent(1 - outcome.quality)} of what arrives there`
    case 'flashing-at-device':
      return say`Vapour reaches the metering device: ${percent(outcome.quality)} of what arrives there`
    case 'receiver-empty':
      return say`The receiver is empty`
    case 'receiver-full':
      return say`The receiver is full`
    case 'high-pressure-trip':
      return say`The high-pressure switch would stop it: ${absolute(outcome.pressure_Pa)}, above ${absolute(outcome.limit_Pa)}`
    case 'low-pressure-trip':
      return say`The low-pressure switch would stop it: ${absolute(outcome.pressure_Pa)}, below ${absolute(outcome.limit_Pa)}`
    case 'frost':
      return say`Ice grows on the coil, which is at ${quantity('temperature', outcome.wall_K)}`
    case 'valve-wide-open':
      return say`The valve is wide open and no longer holds its superheat`
  }
}

const BALANCES = { flow: 'the balance of flow', evaporatorOutlet: 'that of the evaporator', charge: 'that of charge' }

const percent = (share: number) => `${(100 * share).toFixed(1)} %`

/** Limits are absolute: the switch of a real system is set by its gauge, the model's by its refrigerant. */
const absolute = (pressure_Pa: number) => quantity('absolute pressure', pressure_Pa)
