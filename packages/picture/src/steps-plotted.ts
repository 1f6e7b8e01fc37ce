import { type Assessment, LIMITS } from '@chargewright/charging'
import { format, type Quantity, type UnitPreference } from '@chargewright/quantity'
import { type Axis, axisTitle, linearAxis } from './axis.ts'
import type { ChargeStep } from './charge-steps.ts'
import { bare, reach, shown, written } from './in-unit.ts'
import type { Point } from './svg.ts'

export interface StepPoint {
  readonly at: Point
  readonly spread: Point
  readonly name: string
}

/** The steps as points between their axes, in the reader's units, with what they close on. */
export interface StepsPlotted {
  readonly points: readonly StepPoint[]
  readonly target?: { readonly value: number; readonly name: string }
  readonly tolerance?: number
  readonly across: Axis
  readonly up: Axis
}

/** Over the mass that went in where the method watches a measure and it was read, else the mass itself over the steps. */
export const stepsPlotted = (
  steps: readonly ChargeStep[],
  watched: 'superheat' | 'subcooling' | undefined,
  assessment: Assessment,
  preference: UnitPreference,
): StepsPlotted => (watched ? byMeasure(steps, watched, assessment, preference) : byMass(steps, assessment, preference))

function byMeasure(
  steps: readonly ChargeStep[],
  watched: 'superheat' | 'subcooling',
  { target }: Assessment,
  preference: UnitPreference,
): StepsPlotted {
  const points = steps.flatMap(({ net, measure }) =>
    measure
      ? [
          {
            at: { x: shown(net, preference), y: shown(measure, preference) },
            spread: { x: reach(net, preference), y: reach(measure, preference) },
            name: written(measure, preference),
          },
        ]
      : [],
  )
  const limit = watched === 'superheat' ? LIMITS.superheatTolerance : LIMITS.subcoolingTolerance
  const tolerance = shown(limit.quantity, preference)
  const aim = target && targetOf(target.quantity, preference)
  return {
    points,
    ...(aim ? { target: aim, tolerance } : {}),
    across: linearAxis(
      axisTitle('refrigerant in', 'mass', preference),
      [0, ...steps.map(({ net }) => shown(net, preference))],
      5,
    ),
    up: linearAxis(
      axisTitle(watched, 'temperature difference', preference),
      [
        0,
        ...points.flatMap(({ at, spread }) => [at.y - spread.y, at.y + spread.y]),
        ...(aim ? [aim.value + tolerance] : []),
      ],
      5,
    ),
  }
}

function byMass(steps: readonly ChargeStep[], { target }: Assessment, preference: UnitPreference): StepsPlotted {
  const points = steps.map(({ net }, i) => ({
    at: { x: i, y: shown(net, preference) },
    spread: { x: 0, y: reach(net, preference) },
    name: written(net, preference),
  }))
  const aim = target?.quantity.dimension === 'mass' ? targetOf(target.quantity, preference) : undefined
  const across = linearAxis('weighed steps', [0, steps.length - 1], 4)
  return {
    points,
    ...(aim ? { target: aim } : {}),
    across: { ...across, ticks: across.ticks.filter(Number.isInteger) },
    up: linearAxis(
      axisTitle('refrigerant in', 'mass', preference),
      [0, ...points.map(({ at }) => at.y), ...(aim ? [aim.value] : [])],
      5,
    ),
  }
}

const targetOf = (target: Quantity, preference: UnitPreference) => ({
  value: shown(target, preference),
  name: `target ${format(bare(target), preference)}`,
})
