import { preferredUnit, quantity, say, type Tell, type UnitPreference, verbatim } from '@chargewright/quantity'
import type { Refrigerant } from '@chargewright/refrigerant'
import { STATIONS } from '@chargewright/visit'
import type { CyclePoint, CyclePoints } from './cycle-points.ts'
import { bare, shown } from './in-unit.ts'
import type { PictureTable } from './picture.ts'

/** The plate in a sentence or two, for those who do not see it. */
export function describeCycle({ name }: Refrigerant, { low, high, points }: CyclePoints, tell: Tell): string {
  const levels = [
    low && say`evaporating at ${bare(low.reading)} (dew ${low.saturation})`,
    high && say`condensing at ${bare(high.reading)} (bubble ${high.saturation})`,
  ].filter((each) => each !== undefined)
  const what = levels.length > 0 ? levels.map(tell).join(', ') : tell(say`no pressure was read`)
  const drawn = points.map(({ station }) => station).join(', ')
  return [
    say`${verbatim(name)}, ${verbatim(what)}.`,
    drawn === '' ? say`No station could be placed.` : say`Stations placed: ${drawn}.`,
    say`The discharge is taken to be at the pressure of the liquid line.`,
  ]
    .map(tell)
    .join(' ')
}

export function tableOfCycle({ points }: CyclePoints, preference: UnitPreference, tell: Tell): PictureTable {
  const { symbol } = preferredUnit('specific enthalpy', preference)
  return {
    head: [say`station`, say`temperature`, say`pressure`, say`enthalpy, ${verbatim(symbol)}`].map(tell),
    rows: points.map((point) => [
      `${point.station} ${tell(say`${stationName(point)}`)}`,
      tell(say`${point.temperature}`),
      tell(say`${quantity('absolute pressure', point.state.pressure)}`),
      shown(quantity('specific enthalpy', point.state.enthalpy), preference).toFixed(1),
    ]),
  }
}

const stationName = ({ station }: CyclePoint): string => STATIONS.find(({ number }) => number === station)?.label ?? ''
