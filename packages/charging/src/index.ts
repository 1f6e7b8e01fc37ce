export { assess } from './assess.ts'
export {
  type Act,
  type Assessment,
  type Caution,
  type Condition,
  type Dose,
  FINDINGS,
  type Finding,
  type FindingKind,
  type LookAlike,
  METHODS,
  type MethodId,
  type NextEntry,
  type Step,
  type Target,
} from './assessment.ts'
export { type CompressorOfVisit, compressorOfVisit, type JudgedRating } from './compressor-of-visit.ts'
export { judgeSpecificAirflow } from './conditions/airflow.ts'
export {
  type Channel,
  type ChannelSteadiness,
  type Sample,
  STEADY_WINDOW,
  type Steadiness,
  steadiness,
  steadyValue,
} from './conditions/steadiness.ts'
export * from './decision/index.ts'
export { type Decision, decide, type FaultElsewhere } from './decision/index.ts'
export { CAUSE_WORDS, type CauseWords } from './diagnosis/cause-words.ts'
export { type DecisionWords, decisionWords } from './diagnosis/decision-words.ts'
export { explanation } from './diagnosis/explanation.ts'
export { wantedReading } from './diagnosis/wanted-readings.ts'
export { type WeighedCauses, weighedCauses } from './diagnosis/weighed-causes.ts'
export { doubtStep } from './doubt-step.ts'
export { entryLabel } from './entry-label.ts'
export { LIMITS, type Limit } from './limit.ts'
export { dewAt } from './measures/dew-at.ts'
export type { MeasureId, Measures } from './measures/measures.ts'
export { sitePressure } from './measures/site-pressure.ts'
export { type LearntTwin, learntTwin } from './twin/learnt-twin.ts'
export { sizedSystem } from './twin/sized-system.ts'
export { VERSION } from './version.ts'
export { WAIT_TIMES } from './wait-times.ts'
export * from './weigh-in/index.ts'
export { type VisitWeighIn, weighInOfVisit } from './weigh-in-of-visit.ts'
