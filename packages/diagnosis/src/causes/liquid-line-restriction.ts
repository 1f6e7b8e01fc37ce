import type { Hypothesis } from '../hypothesis.ts'

export const liquidLineRestriction: Hypothesis = {
  cause: 'liquid-line-restriction',
  devices: ['fixed-orifice', 'capillary', 'thermostatic'],
  label: 'restricted liquid line',
  does: 'Starves the evaporator as a lack of charge does, but holds the liquid back in the condenser: superheat up, suction pressure down, subcooling up. Where liquid flashes behind it the line is cold.',
  lookAlikes: ['short-of-charge', 'valve-feeds-too-little'],
  confirms: 'Temperature before and after the drier, and along the line: a drop marks the place.',
  parameter: { unit: '1', meaning: 'pressure drop at rated flow, over that between condenser and evaporator' },
  grid: [0.08, 0.16, 0.28, 0.45, 0.7],
  prior: 0.07,
  priorSource: 'common practice: seldom, mostly after repairs',
  apply: ({ system, health }, severity) => {
    const { lnCondensing, lnSuction } = system.rated.unknowns
    const across_Pa = Math.exp(lnCondensing) - Math.exp(lnSuction)
    return { system, health: { ...health, restriction_Pa: health.restriction_Pa + severity * across_Pa } }
  },
}
