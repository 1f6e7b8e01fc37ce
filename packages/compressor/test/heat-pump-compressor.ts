import { boxRegion, type Compressor, type RatingPolynomial, toKelvin } from '../src/index.ts'

/**
 * One published set of coefficients, R-410A, nominally 3 ton, °F, lb/h and W: the compressor file of an open heat-pump
 * model of a university (commit 3b276c63). READ. Map superheat 20 °F READ in a second open model with the same form.
 * The source prints no range of use; 30 to 55 °F and 90 to 140 °F is where these tests use it.
 */
export const MASS_FLOW: RatingPolynomial = {
  what: 'mass flow',
  unit: 'lb/h',
  dewUnit: '°F',
  coefficients: [217.3163128, 5.094492028, -0.593170311, 0.0438, -0.0214, 0.0104, 7.9e-5, -5.73e-5, 0.000179, -8.08e-5],
  region: box(30, 55, 90, 140),
}

export const POWER: RatingPolynomial = {
  what: 'power',
  unit: 'W',
  dewUnit: '°F',
  coefficients: [
    -561.3615705, -15.62601841, 46.92506685, -0.217949552, 0.435062616, -0.442400826, 0.000225, 0.00237, -0.00332,
    0.0025,
  ],
  region: box(30, 55, 90, 140),
}

/** Invented: the published power over 230 V at a power factor of 0.96, so that there are amps to test. */
const CURRENT: RatingPolynomial = {
  ...POWER,
  what: 'current',
  unit: 'A',
  coefficients: POWER.coefficients.map((c) => c / (230 * 0.96)),
}

export const COMPRESSOR: Compressor = {
  ratings: [MASS_FLOW, POWER, CURRENT],
  returnGas: { kind: 'superheat', superheat_K: 20 / 1.8 },
  motor: { voltage_V: 230, phases: 1 },
}

function box(s0: number, s1: number, d0: number, d1: number) {
  const T = (t: number) => toKelvin(t, '°F')
  return boxRegion([T(s0), T(s1)], [T(d0), T(d1)])
}
