import { quantity, type Statement, say } from '@chargewright/quantity'
import type { Action } from './act.ts'

/** What an act was, in the reader's units. */
export function actInWords(action: Action): Statement {
  switch (action.kind) {
    case 'add':
      return say`added ${mass(action.mass_kg)} as ${action.phase}`
    case 'recover':
      return say`recovered ${mass(action.mass_kg)}`
    case 'vent':
      return say`vented ${mass(action.mass_kg)}`
    case 'turn-stem':
      return say`turned the valve stem by ${action.turns}, clockwise counted up`
    case 'open-doors':
      return say`opened the doors`
    case 'indoor-fan':
      return say`set the indoor fan to ${Math.round(100 * action.share)} %`
    case 'clean-indoor-coil':
      return say`cleaned the indoor coil and its filter`
    case 'clean-condenser':
      return say`cleaned the condenser`
    case 'change-drier':
      return say`changed the filter-drier`
    case 'recover-evacuate-recharge':
      return say`recovered all, evacuated, weighed in ${mass(action.mass_kg)}`
    case 'replace-compressor':
      return say`recovered all, replaced the compressor and the drier, evacuated, weighed in ${mass(action.mass_kg)}`
    case 'restart':
      return say`restarted it`
  }
}

const mass = (kg: number) => quantity('mass', kg)
