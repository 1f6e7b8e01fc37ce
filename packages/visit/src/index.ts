export { type ArchiveFile, ArchiveFileSchema, readArchiveFile } from './archive-file.ts'
export type { CylinderWeighing, WeighedCylinder } from './cylinder.ts'
export {
  type EventOf,
  EventSchema,
  type Fact,
  type FactOf,
  FactSchema,
  type Instrument,
  InstrumentSchema,
  type VisitEvent,
} from './event.ts'
export { type FactName, factLabel } from './fact-label.ts'
export { fold } from './fold.ts'
export { hasPlaceFor } from './has-place-for.ts'
export { lastChange } from './last-change.ts'
export { type Measured, measured } from './measured.ts'
export { CARRIED_OVER, isTyped, MOVED_ALONG, TRADE_DEFAULT } from './not-typed.ts'
export {
  type AnswerOf,
  OBSERVATION_IDS,
  type ObservationId,
  type ObservationKind,
  observationKind,
} from './observation-kind.ts'
export { INSTRUMENT_IDS, type InstrumentId, type InstrumentSort, instrumentSort } from './plain-instrument.ts'
export type { PressureTest, PressureTestReading } from './pressure-test.ts'
export { readInstrument } from './read-instrument.ts'
export { doubtReading } from './reading.ts'
export { READING_IDS, type ReadingId, type ReadingKind, readingKind, STATIONS, type StationId } from './reading-kind.ts'
export { runningWait } from './running-wait.ts'
export type { Supply } from './supply.ts'
export {
  APPLICATIONS,
  type Application,
  FIGURE_IDS,
  type FigureId,
  type FigureKind,
  figureKind,
  type MakersChart,
  MakersChartSchema,
  METERING_DEVICES,
  type MeteringDevice,
  type SystemFacts,
  type SystemStatement,
  SystemStatementSchema,
} from './system.ts'
export type { VacuumReading, VacuumTest } from './vacuum-test.ts'
export { vacuumText } from './vacuum-text.ts'
export type {
  Adjustment,
  BegunWait,
  EntryProblem,
  Figure,
  LogEntry,
  Move,
  Observation,
  Origin,
  Reading,
  System,
  Visit,
  Wait,
} from './visit.ts'
export { checkVisitFile, readVisitFile, type VisitFile, VisitFileSchema } from './visit-file.ts'
export type { Gear } from './weighing-gear.ts'
