import type { Assessment, Target } from '@chargewright/charging'
import { say, type Tell, type UnitPreference } from '@chargewright/quantity'
import { type Axis, axisTitle, linearAxis } from './axis.ts'
import type { ChargeStep } from './charge-steps.ts'
import { bare, reach, shown } from './in-unit.ts'
import type { Point } from './svg.ts'

export interface StepPoint {
  readonly at: Point
  readonly spread: Point
  readonly name: string
}

/** What the steps close on, and how near counts as there. */
export interface Aim {
  readonly value: number
  readonly tolerance: number
  readonly name: string
}

/** The steps as points between their axes, in the reader's units, with what they close on. */
export interface StepsPlotted {
  readonly points: readonly StepPoint[]
  readonly aim?: Aim
  readonly across: Axis
  readonly up: Axis
}

/** Over the mass that went in where the method watches a measure and it was read, else the mass itself over the steps. */
export const stepsPlotted = (
  steps: readonly ChargeStep[],
  watched: 'superheat' | 'subcooling' | undefined,
  assessment: Assessment,
  preference: UnitPreference,
  tell: Tell,
): StepsPlotted =>
  watched ? byMeasure(steps, watched, assessment, preference, tell) : byMass(steps, assessment, preference, tell)

function byMeasure(
  steps: readonly ChargeStep[],
  watched: 'superheat' | 'subcooling',
  { target }: Assessment,
  preference: UnitPreference,
  tell: Tell,
): StepsPlotted {
  const points = steps.flatMap(({ net, measure }) =>
    measure
      ? [
          {
            at: { x: shown(net, preference), y: shown(measure, preference) },
            spread: { x: reach(net, preference), y: reach(measure, preference) },
            name: tell(say`${measure}`),
          },
        ]
      : [],
  )
  const aim = target && aimOf(target, preference, tell)
  return {
    points,
    ...(aim ? { aim } : {}),
    across: linearAxis(
      axisTitle(tell(say`refrigerant in`), 'mass', preference),
      [0, ...steps.map(({ net }) => shown(net, preference))],
      5,
    ),
    up: linearAxis(
      axisTitle(tell(say`${watched}`), 'temperature difference', preference),
      [
        0,
        ...points.flatMap(({ at, spread }) => [at.y - spread.y, at.y + spread.y]),
        ...(aim ? [aim.value + aim.tolerance] : []),
      ],
      5,
    ),
  }
}

function byMass(
  steps: readonly ChargeStep[],
  { target }: Assessment,
  preference: UnitPreference,
  tell: Tell,
): StepsPlotted {
  const points = steps.map(({ net }, i) => ({
    at: { x: i, y: shown(net, preference) },
    spread: { x: 0, y: reach(net, preference) },
    name: tell(say`${net}`),
  }))
  const aim = target?.quantity.dimension === 'mass' ? aimOf(target, preference, tell) : undefined
  const across = linearAxis(tell(say`weighed steps`), [0, steps.length - 1], 4)
  return {
    points,
    ...(aim ? { aim } : {}),
    across: { ...across, ticks: across.ticks.filter(Number.isInteger) },
    up: linearAxis(
      axisTitle(tell(say`refrigerant in`), 'mass', preference),
      [0, ...points.map(({ at }) => at.y), ...(aim ? [aim.value + aim.tolerance] : [])],
      5,
    ),
  }
}

const aimOf = ({ quantity, tolerance }: Target, preference: UnitPreference, tell: Tell): Aim => ({
  value: shown(quantity, preference),
  tolerance: shown(tolerance.quantity, preference),
  name: tell(say`target ${bare(quantity)}`),
})
