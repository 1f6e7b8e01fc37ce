import type { Quantity } from '@chargewright/quantity'
import type { SaturationPoint } from '@chargewright/refrigerant'
import { absoluteInBoth, differenceInBoth, gaugeInBoth, property, temperatureInBoth } from '../text/both-systems.ts'
import { type Align, columns } from '../text/columns.ts'
import { page } from '../text/page.ts'
import { wrap } from '../text/wrap.ts'
import type { SaturationAnswer } from './saturation.ts'

const ALIGN: readonly Align[] = ['left', 'right', 'right', 'left', 'right', 'right']

/** The two points side by side, in the units of both systems, with a word on which is for what. */
export function saturationText(
  { refrigerant, bubble, dew }: SaturationAnswer,
  atmosphere: Quantity<'absolute pressure'>,
  width: number,
): string {
  const both = (cells: (p: SaturationPoint) => readonly [string, string]) => [...cells(bubble), '', ...cells(dew)]
  const one = (cell: (p: SaturationPoint) => string) => both((p) => ['', cell(p)])
  const rows = [
    ['', 'bubble', '', '', 'dew', ''],
    ['temperature', ...both((p) => temperatureInBoth(p.temperature_K))],
    ['gauge pressure', ...both((p) => gaugeInBoth(p.pressure_Pa, atmosphere))],
    ['absolute pressure', ...both((p) => absoluteInBoth(p.pressure_Pa))],
    ['density', ...one((p) => property(p.density_kg_m3, 'kg/m³'))],
    ['enthalpy', ...one((p) => property(p.enthalpy_J_kg / 1e3, 'kJ/kg'))],
    ['entropy', ...one((p) => property(p.entropy_J_kgK / 1e3, 'kJ/(kg·K)'))],
  ]
  return page(
    [refrigerant],
    columns(rows, ALIGN).map((line) => `  ${line}`),
    wrap(
      `${whichForWhat(bubble, dew)} Gauge pressures count from an atmosphere of ${absoluteInBoth(atmosphere.si).join(' or ')}.`,
      width,
    ),
  )
}

/** Smaller differences come from the last digits of two solutions, not from a glide. */
const SAME = 1e-9

function whichForWhat(bubble: SaturationPoint, dew: SaturationPoint): string {
  const isPure = isSame(bubble.temperature_K, dew.temperature_K) && isSame(bubble.pressure_Pa, dew.pressure_Pa)
  if (isPure) return 'A pure fluid: superheat and subcooling count from one temperature.'
  const rule = 'Superheat counts from the dew temperature, subcooling from the bubble temperature of one pressure'
  return isSame(bubble.pressure_Pa, dew.pressure_Pa)
    ? `${rule}; they lie ${differenceInBoth(bubble.temperature_K, dew.temperature_K).join(' or ')} apart here.`
    : `${rule}; the pressures of one temperature, as here, differ too.`
}

const isSame = (a: number, b: number) => Math.abs(a - b) <= SAME * Math.abs(a)
