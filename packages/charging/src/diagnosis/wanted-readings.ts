import type { Observable } from '@chargewright/diagnosis'
import type { ReadingId, Visit } from '@chargewright/visit'
import type { NextEntry } from '../assessment.ts'
import { nextReading } from '../gate.ts'

/** The entry that would let an observable be known; undefined where all its readings are there already. */
export function wantedReading(observable: Observable, visit: Visit): NextEntry | undefined {
  const missing = READINGS_OF[observable].find((id) => !visit.readings[id])
  return missing && nextReading(missing)
}

const READINGS_OF: Readonly<Record<Observable, readonly ReadingId[]>> = {
  evaporating: ['suction-pressure'],
  superheat: ['suction-pressure', 'suction-temperature'],
  condensing: ['liquid-pressure'],
  subcooling: ['liquid-pressure', 'liquid-temperature'],
  discharge: ['discharge-temperature'],
  condenserAirRise: ['condenser-leaving-air'],
  supplyAirDrop: ['supply-air-dry-bulb'],
  compressorPower: ['compressor-power'],
  power: ['system-power'],
  drierDrop: ['drier-inlet-temperature', 'drier-outlet-temperature'],
  standstill: ['standstill-pressure', 'standstill-temperature'],
}
