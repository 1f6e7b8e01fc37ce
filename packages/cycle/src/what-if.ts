import { fail, ok, outOfRange, type Problem, type Result } from '@chargewright/quantity'
import { type Solution, solve } from './solve.ts'
import {
  type Conditions,
  conditions as conditionsOf,
  type Health,
  SOUND,
  type System,
  type Unknowns,
} from './system.ts'

/** What can be varied, its unit and its range. */
export const WHAT_IFS = {
  charge: { unit: 'kg/kg', min: 0.3, max: 2, meaning: 'charge over nameplate charge' },
  outdoor: { unit: 'K', min: 253.15, max: 328.15, meaning: 'outdoor dry bulb' },
  wetBulb: { unit: 'K', min: 243.15, max: 308.15, meaning: 'indoor wet bulb, the dry bulb as far above it as given' },
  indoorAir: { unit: 'm³/m³', min: 0.2, max: 1.5, meaning: 'airflow through the evaporator over the rated one' },
  outdoorAir: { unit: 'm³/m³', min: 0.2, max: 1.5, meaning: 'airflow through the condenser over the rated one' },
  restriction: { unit: 'Pa', min: 0, max: 2e6, meaning: 'additional drop in the liquid line at the rated flow' },
  nonCondensable: { unit: 'Pa', min: 0, max: 5e5, meaning: 'partial pressure of air in the condenser at 300 K' },
  wear: { unit: '1', min: 0, max: 0.5, meaning: 'share of the swept gas that leaks back, at a pressure ratio of 3' },
  drier: { unit: 'm³', min: 0, max: 0.01, meaning: 'inside volume of the filter-drier' },
} as const

export type WhatIf = keyof typeof WHAT_IFS

export interface WhatIfPoint {
  readonly value: number
  readonly solution: Solution
}

/** States along one variable, all else as given; each solution starts from its neighbour. */
export function whatIf(
  system: System,
  at: Conditions,
  health: Health,
  variable: WhatIf,
  values: readonly number[],
): Result<readonly WhatIfPoint[], Problem> {
  const { min, max, unit } = WHAT_IFS[variable]
  const points: WhatIfPoint[] = []
  let start: Unknowns | undefined
  for (const value of values) {
    const problem = outOfRange(variable, value, min, max, unit)
    if (problem) return fail(problem)
    const changed = varied(system, at, health, variable, value)
    if (!changed.ok) return changed
    const solution = solve(changed.value.system, changed.value.at, changed.value.health, start)
    start = solution.kind === 'steady' ? solution.unknowns : undefined
    points.push({ value, solution })
  }
  return ok(points)
}

interface Case {
  readonly system: System
  readonly at: Conditions
  readonly health: Health
}

function varied(
  system: System,
  at: Conditions,
  health: Health,
  variable: WhatIf,
  value: number,
): Result<Case, Problem> {
  const with_ = (changed: Partial<Health>) => ok({ system, at, health: { ...health, ...changed } })
  const { outdoor, indoor } = at
  switch (variable) {
    case 'charge':
      return with_({ charge_kg: value * system.rated.charge_kg })
    case 'indoorAir':
      return with_({ indoorAirShare: value })
    case 'outdoorAir':
      return with_({ outdoorAirShare: value })
    case 'restriction':
      return with_({ restriction_Pa: value })
    case 'nonCondensable':
      return with_({ nonCondensable_Pa: value })
    case 'wear':
      return with_({ wear: value })
    case 'outdoor':
      return inWeather(system, health, conditionsOf(value, indoor.dryBulb_K, indoor.wetBulb_K, indoor.pressure_Pa))
    case 'wetBulb': {
      const dryBulb = value + indoor.dryBulb_K - indoor.wetBulb_K
      return inWeather(system, health, conditionsOf(outdoor.dryBulb_K, dryBulb, value, indoor.pressure_Pa))
    }
    case 'drier':
      return ok({ system: { ...system, liquidLine: { ...system.liquidLine, drierVolume_m3: value } }, at, health })
  }
}

function inWeather(system: System, health: Health, at: Result<Conditions, Problem>): Result<Case, Problem> {
  return at.ok ? ok({ system, at: at.value, health }) : at
}

/** A sound system at its nameplate charge. */
export const soundHealth = (system: System): Health => ({ ...SOUND, charge_kg: system.rated.charge_kg })
