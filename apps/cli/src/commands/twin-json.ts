import type { Readings, Solution } from '@chargewright/cycle'
import { render, type UnitPreference } from '@chargewright/quantity'
import { measureKey } from '../json-key.ts'
import { optional } from '../quantity-json.ts'
import { outcomeWords } from './outcome-words.ts'
import type { TwinAnswer } from './twin.ts'
import { whatIfAxis } from './what-if-axis.ts'

/** The sized system, its conditions and its state; pressures are absolute. */
export function twinJson(answer: TwinAnswer, units: UnitPreference): object {
  const { visit, system, conditions, charge_kg, solution, whatIf } = answer
  const { refrigerant, meteringDevice, application } = visit.system.facts
  const { rated } = system
  return {
    source: 'estimated by model',
    system: {
      ...optional('name', visit.system.facts.name),
      refrigerant,
      metering_device: meteringDevice,
      application,
      capacity_W: rated.capacity_W,
      charge_kg: rated.charge_kg,
      superheat_K: rated.superheat_K,
      subcooling_K: rated.subcooling_K,
    },
    outdoor_K: conditions.outdoor.dryBulb_K,
    return_K: conditions.indoor.dryBulb_K,
    wet_bulb_K: conditions.indoor.wetBulb_K,
    site_pressure_Pa: conditions.indoor.pressure_Pa,
    charge_kg,
    ...stateJson(solution, units),
    ...optional(
      'what_if',
      whatIf && {
        axis: whatIf.axis,
        points: whatIf.points.map((point) => ({
          [AXIS_KEYS[whatIfAxis(whatIf.axis).dimension as keyof typeof AXIS_KEYS]]: point.value,
          ...stateJson(point.solution, units),
        })),
      },
    ),
  }
}

const AXIS_KEYS = {
  share: 'value_fraction',
  temperature: 'value_K',
  'pressure difference': 'value_Pa',
  volume: 'value_m3',
} as const

/** A state: whether it is steady, what it means for the machine, and what would be read. */
function stateJson(solution: Solution, units: UnitPreference): object {
  const texts = outcomeWords(solution).map((each) => render(each, units))
  switch (solution.kind) {
    case 'steady':
      return {
        state: solution.kind,
        outcomes: solution.outcomes.map((outcome, i) => ({ ...outcome, text: texts[i] })),
        readings: readingsJson(solution.readings),
      }
    case 'overfull':
      return {
        state: solution.kind,
        outcomes: [{ kind: solution.kind, excess_kg: solution.excess_kg, text: texts[0] }],
      }
    case 'no-solution':
      return { state: solution.kind, outcomes: [{ kind: solution.kind, open: solution.open, text: texts[0] }] }
  }
}

function readingsJson({ cop, glassVapour, ...readings }: Readings): object {
  const named = Object.entries(readings).map(([name, value]) => [readingKey(name), value])
  return { ...Object.fromEntries(named), cop, glass_vapour_fraction: glassVapour }
}

/** `suctionPressure_Pa` as `suction_pressure_Pa`. */
function readingKey(name: string): string {
  const [words = '', ...unit] = name.split('_')
  return [measureKey(words), ...unit].join('_')
}
