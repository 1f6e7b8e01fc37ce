import type { Hypothesis } from '../hypothesis.ts'

export const lowIndoorAir: Hypothesis = {
  cause: 'low-indoor-air',
  devices: ['fixed-orifice', 'capillary', 'thermostatic'],
  label: 'too little indoor air',
  does: 'Gives the evaporator less heat: suction pressure and superheat down, the supply air colder, the condenser with less to do; the coil may freeze.',
  lookAlikes: ['overcharged', 'valve-feeds-too-much'],
  confirms: 'Look at filter, coil, blower and registers; measure the airflow.',
  parameter: { unit: '1', meaning: 'share of the airflow that is missing' },
  grid: [0.15, 0.25, 0.35, 0.45, 0.6],
  prior: 0.11,
  priorSource: 'common practice: filters, coils and closed registers are found at every other call',
  apply: ({ system, health }, severity) => ({
    system,
    health: { ...health, indoorAirShare: health.indoorAirShare * (1 - severity) },
  }),
}
