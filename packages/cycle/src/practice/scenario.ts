import { type Health, SOUND, type System } from '../system.ts'

/** Numbers evenly spread from 0 to 1, passed in: the package makes none. */
export type Random = () => number

/** What is hidden in a practice system, apart from its charge. */
export const PRACTICE_FAULTS = {
  none: 'no fault but, perhaps, in its charge',
  'low-indoor-air': 'a dirty coil and filter indoors',
  'poor-condenser-air': 'a condenser clogged with dirt',
  restriction: 'a filter-drier that is nearly blocked',
  'non-condensable': 'air in the system',
  'worn-compressor': 'a compressor whose valves leak',
  'valve-setting': 'a valve stem that someone has turned',
} as const

export type PracticeFault = keyof typeof PRACTICE_FAULTS

/** The hidden truth of a practice run. */
export interface Scenario {
  readonly fault: PracticeFault
  readonly health: Health
  /** Turns of the valve stem away from the maker's setting, clockwise (more superheat) positive. */
  readonly stemTurns: number
}

const START_SD = 0.18
const FAULT_SHARE = 0.5

/** Draws a wrong charge, a fault, or both; sometimes neither, which is the hardest lesson. */
export function drawScenario({ rated, device }: System, random: Random): Scenario {
  const possible = (Object.keys(PRACTICE_FAULTS) as PracticeFault[]).filter(
    (fault) => fault !== 'none' && (fault !== 'valve-setting' || device.kind === 'thermostatic'),
  )
  const fault = random() < FAULT_SHARE ? possible[Math.floor(random() * possible.length)]! : 'none'
  const chargeIsRight = random() < 0.25
  const share = chargeIsRight ? 1 : Math.min(Math.max(1 + START_SD * normal(random), 0.6), 1.4)
  return scenario(rated.charge_kg * share, fault, 0.4 + 0.6 * random())
}

/** A scenario by hand: a charge, a fault and how far it has gone, 0 to 1. */
export function scenario(charge_kg: number, fault: PracticeFault, severity: number): Scenario {
  const health: Health = { ...SOUND, charge_kg }
  const hidden = (changed: Partial<Health>, stemTurns = 0): Scenario => ({
    fault,
    health: { ...health, ...changed },
    stemTurns,
  })
  switch (fault) {
    case 'none':
      return hidden({})
    case 'low-indoor-air':
      return hidden({ indoorAirShare: 1 - 0.5 * severity })
    case 'poor-condenser-air':
      return hidden({ outdoorAirShare: 1 - 0.6 * severity })
    case 'restriction':
      return hidden({ restriction_Pa: 1e6 * severity })
    case 'non-condensable':
      return hidden({ nonCondensable_Pa: 2e5 * severity })
    case 'worn-compressor':
      return hidden({ wear: 0.3 * severity })
    case 'valve-setting':
      return hidden({}, 4 * severity)
  }
}

function normal(random: Random): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random())
}
