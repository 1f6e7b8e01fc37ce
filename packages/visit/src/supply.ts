import { type Problem, parse, type Quantity } from '@chargewright/quantity'
import type { FactOf } from './event.ts'
import { measured } from './measured.ts'
import { instrumentSort } from './plain-instrument.ts'
import type { Origin } from './visit.ts'

/** The supply at the terminals, under load, and what the nameplate asks for. */
export interface Supply extends Origin {
  /** One, or three between phases. */
  readonly voltages: readonly Quantity<'voltage'>[]
  readonly nominal: Quantity<'voltage'>
}

/** Reads the supply; one voltage that cannot be read leaves all of it out, because the others tell no unbalance. */
export function readSupply(
  fact: FactOf<'supply-measured'>,
  origin: Origin,
  refuse: (problem: Problem) => void,
): Supply | undefined {
  const { accuracy } = instrumentSort('voltmeter')
  const read = fact.voltages.map((typed, i) => measured(typed, ['voltage'], accuracy, undefined, `Voltage ${i + 1}`))
  const nominal = parse(fact.nominal, 'voltage', { field: 'Nameplate voltage' })
  for (const each of [...read, nominal]) if (!each.ok) refuse(each.error)
  const voltages = read.flatMap((each) => (each.ok ? [each.value.quantity] : []))
  return nominal.ok && voltages.length === read.length ? { ...origin, voltages, nominal: nominal.value } : undefined
}
