import type { Hypothesis } from '../hypothesis.ts'

export const nonCondensables: Hypothesis = {
  cause: 'non-condensables',
  devices: ['fixed-orifice', 'capillary', 'thermostatic'],
  label: 'air in the refrigerant',
  does: 'Air or other non-condensables add their pressure to the high side: gauge pressure and power up, and an apparent subcooling that no liquid backs.',
  lookAlikes: ['overcharged', 'poor-condenser-air'],
  confirms: 'Stopped, equalised and at ambient, the standing pressure is above saturation.',
  parameter: { unit: '1', meaning: 'its pressure in the empty condenser at 300 K, over the rated condensing pressure' },
  grid: [0.03, 0.06, 0.1, 0.16, 0.25],
  prior: 0.05,
  priorSource: 'common practice: after opening without a vacuum',
  apply: ({ system, health }, severity) => ({
    system,
    health: {
      ...health,
      nonCondensable_Pa: health.nonCondensable_Pa + severity * Math.exp(system.rated.unknowns.lnCondensing),
    },
  }),
}
