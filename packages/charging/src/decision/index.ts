export { type Circumstances, decide } from './decide.ts'
export type { Decision, FaultElsewhere, Losses, NextReading } from './decision.ts'
export { truthsOf } from './expected-loss.ts'
