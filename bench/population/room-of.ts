import { volumeOf } from './coil.ts'
import type { Unit } from './unit.ts'

/** All the room in the circuit, m³. */
export function roomOf(unit: Unit): number {
  return (
    volumeOf(unit.condenser) +
    volumeOf(unit.evaporator) +
    unit.liquidLine.volume_m3 +
    unit.liquidLine.drier_m3 +
    unit.suctionLine.volume_m3 +
    unit.dischargeLine_m3 +
    unit.shell_m3 +
    unit.accumulator_m3
  )
}
