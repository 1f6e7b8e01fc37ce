import { format, quantity, type UnitPreference } from '@chargewright/quantity'
import type { Refrigerant } from '@chargewright/refrigerant'
import { STATIONS } from '@chargewright/visit'
import type { CyclePoint, CyclePoints } from './cycle-points.ts'
import { bare, written } from './in-unit.ts'
import type { PictureTable } from './picture.ts'

/** The plate in a sentence or two, for those who do not see it. */
export function describeCycle(
  { name }: Refrigerant,
  { low, high, points }: CyclePoints,
  preference: UnitPreference,
): string {
  const levels = [
    low && `evaporating at ${format(bare(low.reading), preference)} (dew ${written(low.saturation, preference)})`,
    high && `condensing at ${format(bare(high.reading), preference)} (bubble ${written(high.saturation, preference)})`,
  ].filter((each) => each !== undefined)
  const what = levels.length > 0 ? `${name}, ${levels.join(', ')}` : `${name}; no pressure was read`
  const drawn = points.map(({ station }) => station).join(', ')
  const stations = drawn === '' ? 'No station could be placed.' : `Stations placed: ${drawn}.`
  return `${what}. ${stations} The discharge is taken to be at the pressure of the liquid line.`
}

export function tableOfCycle({ points }: CyclePoints, preference: UnitPreference): PictureTable {
  return {
    head: ['station', 'temperature', 'pressure', 'enthalpy, kJ/kg'],
    rows: points.map((point) => [
      `${point.station} ${stationName(point)}`,
      written(point.temperature, preference),
      format(quantity('absolute pressure', point.state.pressure), preference),
      (point.state.enthalpy / 1000).toFixed(1),
    ]),
  }
}

const stationName = ({ station }: CyclePoint): string => STATIONS.find(({ number }) => number === station)?.label ?? ''
