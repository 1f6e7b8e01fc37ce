import type { Quantity } from '@chargewright/quantity'
import { absoluteInBoth, gaugeInBoth, property, temperatureInBoth } from '../text/both-systems.ts'
import { type Align, columns } from '../text/columns.ts'
import { page } from '../text/page.ts'
import { wrap } from '../text/wrap.ts'
import type { StateAnswer } from './state.ts'

const ALIGN: readonly Align[] = ['left', 'right', 'right']

/** One state, a property a line, in the units of both systems where a technician reads them. */
export function stateText(answer: StateAnswer, atmosphere: Quantity<'absolute pressure'>, width: number): string {
  const { cp_J_kgK, speed_of_sound_m_s, quality } = answer
  const rows = [
    ['temperature', ...temperatureInBoth(answer.temperature_K)],
    ['gauge pressure', ...gaugeInBoth(answer.pressure_Pa, atmosphere)],
    ['absolute pressure', ...absoluteInBoth(answer.pressure_Pa)],
    ['density', '', property(answer.density_kg_m3, 'kg/m³')],
    ['enthalpy', '', property(answer.enthalpy_J_kg / 1e3, 'kJ/kg')],
    ['entropy', '', property(answer.entropy_J_kgK / 1e3, 'kJ/(kg·K)')],
    ...(cp_J_kgK === undefined ? [] : [['specific heat', '', property(cp_J_kgK / 1e3, 'kJ/(kg·K)')]]),
    ...(speed_of_sound_m_s === undefined ? [] : [['speed of sound', '', property(speed_of_sound_m_s, 'm/s')]]),
    ...(quality === undefined ? [] : [['vapour by mass', '', property(quality * 100, '%')]]),
  ]
  return page(
    [`${answer.refrigerant}: ${answer.phase}`],
    columns(rows, ALIGN).map((line) => `  ${line}`),
    wrap(`The gauge pressure counts from an atmosphere of ${absoluteInBoth(atmosphere.si).join(' or ')}.`, width),
  )
}
