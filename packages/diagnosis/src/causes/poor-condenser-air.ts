import type { Hypothesis } from '../hypothesis.ts'

export const poorCondenserAir: Hypothesis = {
  cause: 'poor-condenser-air',
  devices: ['fixed-orifice', 'capillary', 'thermostatic'],
  label: 'poor condenser air',
  does: 'The condenser must run hotter to give its heat to less air: high-side pressure, power and discharge temperature up, the leaving air hotter, subcooling little changed.',
  lookAlikes: ['non-condensables', 'overcharged'],
  confirms: 'Look at the coil face, the fan and what stands before them; air leaves hotter than usual.',
  parameter: { unit: '1', meaning: 'share of the airflow that is missing' },
  grid: [0.15, 0.25, 0.35, 0.45, 0.6],
  prior: 0.11,
  priorSource: 'common practice: dirt, fences and weak fans are found at every other call',
  apply: ({ system, health }, severity) => ({
    system,
    health: { ...health, outdoorAirShare: health.outdoorAirShare * (1 - severity) },
  }),
}
