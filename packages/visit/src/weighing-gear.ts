import { type Dimension, type Problem, parse, type Quantity } from '@chargewright/quantity'
import type { FactOf } from './event.ts'
import type { Origin } from './visit.ts'

/** With what a charge is measured out, as far as it was told and can be read. */
export interface Gear extends Origin {
  readonly scaleStep?: Quantity<'mass'>
  readonly hoseLength?: Quantity<'length'>
  readonly hoseInside?: Quantity<'length'>
  readonly cylinderTemperature?: Quantity<'temperature'>
  readonly graduatedFor?: Quantity<'temperature'>
}

const PARTS = {
  scaleStep: { dimension: 'mass', field: 'Step of the scale' },
  hoseLength: { dimension: 'length', field: 'Length of the hose' },
  hoseInside: { dimension: 'length', field: 'Diameter inside of the hose' },
  cylinderTemperature: { dimension: 'temperature', field: 'Liquid in the charging cylinder' },
  graduatedFor: { dimension: 'temperature', field: 'Graduation of the charging cylinder' },
} as const satisfies Readonly<Record<string, { readonly dimension: Dimension; readonly field: string }>>

/** Reads the gear; a part that cannot be read is refused and the rest stands. */
export function readGear(
  { kind: _, ...typed }: FactOf<'weighing-gear'>,
  origin: Origin,
  refuse: (problem: Problem) => void,
): Gear {
  const parts = Object.entries(typed).flatMap(([name, text]) => {
    const { dimension, field } = PARTS[name as keyof typeof PARTS]
    const read = parse(text, dimension, { field })
    if (read.ok) return [[name, read.value] as const]
    refuse(read.error)
    return []
  })
  return { ...origin, ...Object.fromEntries(parts) }
}
