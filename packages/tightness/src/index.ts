export { type Caution, EVACUATION_CAUTIONS, PRESSURE_TEST_CAUTIONS } from './cautions.ts'
export { FEWEST_READINGS, fitRise, type RiseFit } from './fit-rise.ts'
export { HOLD_CRITERIA, type HoldCriterion } from './hold-criterion.ts'
export { HOLD_WORDS, type HoldKind } from './hold-verdict.ts'
export { type EvacuationFinding, type EvacuationOptions, judgeEvacuation } from './judge-evacuation.ts'
export {
  FULL_TEST,
  judgePressureTest,
  PRESSURE_TEST_WORDS,
  type PressureTest,
  type PressureTestFinding,
  type TestReading,
} from './judge-pressure-test.ts'
export { judgeStandingTest, type StandingTest, type TimedReading } from './judge-standing-test.ts'
export type { LeakInterval } from './leak-interval.ts'
export {
  type PressureAndTemperature,
  pressureAtTemperature,
  pressureChange,
  type Resolution,
} from './pressure-change.ts'
export { type LogEntry, type PressureLog, pressureLog } from './pressure-log.ts'
export { readPressureLog } from './read-pressure-log.ts'
export { type RiseCause, riseCause } from './rise-cause.ts'
export { pressureAt, type RiseKind, type RiseModel } from './rise-model.ts'
export { type JudgedVacuum, pressureTestOfVisit, vacuumTestOfVisit } from './tests-of-visit.ts'
export { vacuumUnits } from './vacuum-units.ts'
export { waterVapourPressure } from './water-vapour-pressure.ts'
