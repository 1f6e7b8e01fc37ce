import { checkVisitFile, type Fact, fold, type ReadingId, type SystemFacts, type Visit } from '@chargewright/visit'
import { assess } from '../src/index.ts'

/** Readings as typed, by kind. */
export type Typed = Readonly<Partial<Record<ReadingId, string>>>

export const reading = (what: ReadingId, value: string): Fact => ({ kind: 'reading', what, value })
export const observed = (what: string, answer: string): Fact => ({ kind: 'observation', what, answer }) as Fact
export const described = (facts: SystemFacts): Fact => ({ kind: 'system-described', facts })
export const settledNow = observed('running-time', 'settled')
export const readings = (typed: Typed): readonly Fact[] =>
  Object.entries(typed).map(([what, value]) => reading(what as ReadingId, value))

/** Folds facts, one a minute from an invented noon, through the same check as a file from disk. */
export function visitOf(...facts: (Fact | readonly Fact[])[]): Visit {
  const events = facts.flat().map((fact, minute) => ({ id: `e${minute}`, at: at(minute), ...fact }))
  const file = checkVisitFile({ format: 'chargewright-visit', version: 1, id: 'invented', events })
  if (!file.ok) throw new Error(JSON.stringify(file.error))
  return fold(file.value)
}

export const assessed = (...facts: Parameters<typeof visitOf>) => assess(visitOf(...facts))

function at(minute: number): string {
  return `2026-07-01T${String(12 + Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}:00Z`
}

/** An invented 3-ton fixed-orifice air conditioner. */
export const ORIFICE: SystemFacts = {
  refrigerant: 'R-410A',
  meteringDevice: 'fixed-orifice',
  application: 'comfort-cooling',
  receiver: false,
  nominalCapacity: '3 ton',
  nameplateCharge: '7 lb 4 oz',
}

/** Everything but the superheat in order: 95 °F outdoors, 67 °F wet bulb, 390 CFM per ton, dew 39.8 °F, bubble 118 °F. */
export const ORIFICE_READINGS: Typed = {
  'return-air-dry-bulb': '78 °F',
  'return-air-wet-bulb': '67 °F',
  airflow: '1170 CFM',
  'condenser-entering-air': '95 °F',
  'suction-pressure': '118.3 psig',
  'liquid-pressure': '409 psig',
}

/** An invented heat pump with a thermostatic valve and no receiver. */
export const VALVE: SystemFacts = {
  refrigerant: 'R-454B',
  meteringDevice: 'thermostatic',
  application: 'heat-pump-cooling',
  receiver: false,
  nominalCapacity: '2.5 ton',
  nameplateCharge: '3.2 kg',
  nameplateSubcooling: '10 °F',
}

/** An invented walk-in cooler. */
export const RECEIVER: SystemFacts = {
  refrigerant: 'R-448A',
  meteringDevice: 'thermostatic',
  application: 'medium-temperature',
  receiver: true,
  sightGlass: true,
  nameplateCharge: '9 kg',
  boxSetPoint: '3 °C',
}
