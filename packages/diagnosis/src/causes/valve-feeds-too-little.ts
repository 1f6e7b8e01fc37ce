import type { Hypothesis } from '../hypothesis.ts'
import { withValveSetting } from './valve-setting.ts'

export const valveFeedsTooLittle: Hypothesis = {
  cause: 'valve-feeds-too-little',
  devices: ['thermostatic'],
  label: 'valve feeds too little',
  does: 'A valve that has lost its bulb charge, or is set too tight, starves the evaporator: superheat up, suction pressure down, liquid held back before it.',
  lookAlikes: ['short-of-charge', 'liquid-line-restriction'],
  confirms: 'Subcooling is there, the line before the valve is warm, and warming the bulb does not open it.',
  parameter: { unit: 'K', meaning: 'superheat that it holds above its setting' },
  grid: [4, 7, 11, 16, 22],
  prior: 0.05,
  priorSource: 'common practice',
  apply: withValveSetting,
}
