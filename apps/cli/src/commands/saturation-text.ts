import type { Quantity } from '@chargewright/quantity'
import type { SaturationPoint } from '@chargewright/refrigerant'
import { absoluteInBoth, differenceInBoth, gaugeInBoth, property, temperatureInBoth } from '../text/both-systems.ts'
import { type Align, columns } from '../text/columns.ts'
import { wrap } from '../text/wrap.ts'
import type { SaturationAnswer } from './saturation.ts'

const ALIGN: readonly Align[] = ['left', 'right', 'right', 'left', 'right', 'right']

/** The two points side by side, in the units of both systems, with a word on which is for what. */
export function saturationText(
  { refrigerant, bubble, dew }: SaturationAnswer,
  atmosphere: Quantity<'absolute pressure'>,
  width: number,
): string {
  const both = (cells: (point: SaturationPoint) => readonly [string, string]) => [...cells(bubble), '', ...cells(dew)]
  const one = (cell: (point: SaturationPoint) => string) => both((point) => ['', cell(point)])
  const rows = [
    ['', 'bubble', '', '', 'dew', ''],
    ['temperature', ...both((p) => temperatureInBoth(p.temperature_K))],
    ['gauge pressure', ...both((p) => gaugeInBoth(p.pressure_Pa, atmosphere))],
    ['absolute pressure', ...both((p) => absoluteInBoth(p.pressure_Pa))],
    ['density', ...one((p) => property(p.density_kg_m3, 'kg/m³'))],
    ['enthalpy', ...one((p) => property(p.enthalpy_J_kg / 1e3, 'kJ/kg'))],
    ['entropy', ...one((p) => property(p.entropy_J_kgK / 1e3, 'kJ/(kg·K)'))],
  ]
  const glide = differenceInBoth(bubble.temperature_K, dew.temperature_K)
  return [
    refrigerant,
    '',
    ...columns(rows, ALIGN).map((line) => `  ${line}`),
    '',
    ...wrap(
      `Superheat counts from the dew temperature, subcooling from the bubble temperature; they lie ${glide.join(' or ')} apart. Gauge pressures count from an atmosphere of ${absoluteInBoth(atmosphere.si).join(' or ')}.`,
      width,
    ),
    '',
  ].join('\n')
}
