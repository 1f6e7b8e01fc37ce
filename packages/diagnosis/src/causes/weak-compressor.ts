import type { Hypothesis } from '../hypothesis.ts'

export const weakCompressor: Hypothesis = {
  cause: 'weak-compressor',
  devices: ['fixed-orifice', 'capillary', 'thermostatic'],
  label: 'weak compressor',
  does: 'Pumps less than it should, because gas leaks back: suction pressure up, high-side pressure, power and superheat down.',
  lookAlikes: ['short-of-charge', 'low-indoor-air'],
  confirms:
    'The flow and power of its rating at these two pressures; suction pressure that will not pull down with the liquid line closed.',
  parameter: { unit: '1', meaning: 'share of the swept gas that leaks back at a pressure ratio of 3' },
  grid: [0.06, 0.12, 0.2, 0.3],
  prior: 0.05,
  priorSource: 'common practice: seldom, in old systems',
  apply: ({ system, health }, severity) => ({ system, health: { ...health, wear: health.wear + severity } }),
}
