export { type Air, air } from './air.ts'
export {
  type ChargingChart,
  type ChartCell,
  type ChartFamily,
  type ChartMeasure,
  chargingChart,
  targetAt,
} from './chart/charging-chart.ts'
export { chartCsv } from './chart/chart-csv.ts'
export { chartSvg } from './chart/chart-svg.ts'
export type { Compressor, MappedCompressor } from './components/compressor.ts'
export type { Device } from './devices/device.ts'
export { type DoseCare, type DoseEstimate, type DoseTarget, dose, statedSd } from './dose.ts'
export { type Belief, carriedOver, freshBelief, type Learned, learn } from './learn/learn.ts'
export { OBSERVABLE_NAMES, type Observable, type Observation, type Reading } from './learn/observation.ts'
export { AS_SIZED, adjusted, PARAMETERS, type ParameterName, type Parameters } from './learn/parameter.ts'
export { measuredGas } from './measured-gas.ts'
export type { Outcome, OutcomeKind } from './outcome.ts'
export { type Action, act } from './practice/act.ts'
export {
  type BenchAct,
  type BenchAnswer,
  type BenchSession,
  type BenchStart,
  benchSession,
  targetsSuperheat,
} from './practice/bench.ts'
export { type BenchRequest, LONGEST_WAIT_S } from './practice/bench-request.ts'
export { type Debrief, debrief } from './practice/debrief.ts'
export { type GaugeReading, gaugeReadings } from './practice/gauge-readings.ts'
export { GAUGE_NAMES, type Gauge, type GaugeValues } from './practice/gauges.ts'
export { type Harm, type LogLine, look, type Practice, startPractice, wait } from './practice/practice.ts'
export { PRACTICE_PLATE } from './practice/practice-system.ts'
export {
  drawScenario,
  PRACTICE_FAULTS,
  type PracticeFault,
  type Random,
  type Scenario,
  scenario,
} from './practice/scenario.ts'
export { MOST_SEED, seededRandom } from './practice/seeded-random.ts'
export type { Readings } from './readings.ts'
export { type Properties, propertiesOf } from './refrigerant/properties.ts'
export { responseAt, type Seen } from './response.ts'
export { type CoilShape, type Guess, type Habits, habitsOf } from './size/habits.ts'
export type { CompressorType, CycleApplication, Nameplate, RatedEfficiency } from './size/nameplate.ts'
export { agreedHabits } from './size/rating-point.ts'
export { size } from './size/size.ts'
export { type NoSolution, type Overfull, type Solution, type SteadyState, solve } from './solve.ts'
export { type Conditions, conditions, type Health, SOUND, type System, type Unknowns } from './system.ts'
export { TWIN_VERSION } from './twin-version.ts'
export { VOID_FRACTIONS, type VoidFraction } from './void-fraction.ts'
export { soundHealth, WHAT_IFS, type WhatIf, type WhatIfPoint, whatIf } from './what-if.ts'
