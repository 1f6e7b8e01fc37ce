import type { Hypothesis } from '../hypothesis.ts'
import { withValveSetting } from './valve-setting.ts'

export const valveFeedsTooMuch: Hypothesis = {
  cause: 'valve-feeds-too-much',
  devices: ['thermostatic'],
  label: 'valve feeds too much',
  does: 'A loose bulb or a stuck needle lets liquid through: superheat gone, suction pressure up, little liquid left in the condenser.',
  lookAlikes: ['overcharged', 'low-indoor-air'],
  confirms: 'Bulb tight, insulated and in its place; cooling it closes the valve or does not.',
  parameter: { unit: 'K', meaning: 'superheat that it holds above its setting, negative' },
  grid: [-12, -8, -5, -3, -1.8],
  prior: 0.05,
  priorSource: 'common practice',
  apply: withValveSetting,
}
