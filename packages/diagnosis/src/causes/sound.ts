import type { Hypothesis } from '../hypothesis.ts'

export const sound: Hypothesis = {
  cause: 'sound',
  devices: ['fixed-orifice', 'capillary', 'thermostatic'],
  label: 'nothing wrong',
  does: 'Every reading is where a system of this nameplate has it in this weather, its charge within a few per cent.',
  lookAlikes: ['short-of-charge', 'overcharged'],
  confirms: 'The readings stay so a quarter of an hour later.',
  parameter: { unit: '1', meaning: 'none' },
  grid: [0],
  prior: 0.3,
  priorSource: 'common practice: about a third of the systems that someone suspects have nothing wrong',
  apply: (state) => state,
}
