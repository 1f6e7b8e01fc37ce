import { type Assessment, assess } from '@chargewright/charging'
import { kelvin } from '@chargewright/quantity'
import { findRefrigerant, saturationAtTemperature } from '@chargewright/refrigerant'
import { fold, type ReadingId, type VisitEvent } from '@chargewright/visit'
import type { VisitEvents } from './protocol.ts'

/**
 * Work to be done while nobody waits, piece by piece: judges a visit like this one, read in full, in one weather after
 * the other, and at the end the visit itself. Then what is built once for a system is there, and what the browser
 * compiles only after it ran a few times is compiled: without it the first readings that are entered would wait for
 * their finding three times as long as the later ones.
 *
 * @param times how many weathers
 */
export function rehearsal(visit: VisitEvents, times: number): readonly (() => Assessment)[] {
  const facts = visit.events.filter(({ kind }) => kind === 'system-described')
  const { system } = fold({ id: visit.id, events: facts })
  const readings = readingsOf(system.facts.refrigerant, system.figures.nominalCapacity?.quantity.si)
  if (!readings) return []
  const alike = (weather: number): readonly VisitEvent[] => [
    ...facts,
    { id: 'settle', at: BEGUN, kind: 'wait', purpose: 'settle', duration: '15 min' },
    ...Object.entries({ ...readings, 'condenser-entering-air': `${35 + weather / 10} °C` }).map(
      ([what, value]): VisitEvent => ({ id: what, at: READ, kind: 'reading', what: what as ReadingId, value }),
    ),
  ]
  const inWeathers = Array.from({ length: times }, (_, i) => ({ id: visit.id, events: alike(i) }))
  return [...inWeathers, visit].map((one) => () => assess(fold(one)))
}

const BEGUN = '2026-01-01T12:00:00Z'
const READ = '2026-01-01T12:20:00Z'

/** A system short of charge, so that a step is sized too; undefined where no model could be made of it. */
function readingsOf(name: string | undefined, capacity_W: number | undefined) {
  const refrigerant = name === undefined ? undefined : findRefrigerant(name)
  if (!refrigerant?.ok || capacity_W === undefined) return undefined
  const evaporating = saturationAtTemperature(refrigerant.value, kelvin(276))
  const condensing = saturationAtTemperature(refrigerant.value, kelvin(315))
  if (!evaporating.ok || !condensing.ok) return undefined
  return {
    'return-air-dry-bulb': '27 °C',
    'return-air-wet-bulb': '19 °C',
    airflow: `${AIRFLOW_M3_S_W * capacity_W} m³/s`,
    'suction-pressure': `${evaporating.value.dew.pressure_Pa / 1e5} bara`,
    'suction-temperature': '18 °C',
    'liquid-pressure': `${condensing.value.bubble.pressure_Pa / 1e5} bara`,
    'liquid-temperature': '40 °C',
  }
}

/** 400 CFM per ton. */
const AIRFLOW_M3_S_W = 5.37e-5
