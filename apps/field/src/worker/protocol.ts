import type { Assessment, CompressorOfVisit, VisitWeighIn } from '@chargewright/charging'
import type { SupplyFinding } from '@chargewright/compressor'
import type { BenchRequest } from '@chargewright/cycle'
import type { ApplianceUse, BookBalance, SystemLeakRate } from '@chargewright/ledger'
import type { Airflow } from '@chargewright/moist-air'
import type { Picture } from '@chargewright/picture'
import type { Problem, Quantity, Result, UnitPreference } from '@chargewright/quantity'
import type { NameRead } from '@chargewright/refrigerant'
import type { RecordOptions } from '@chargewright/report'
import type { EvacuationFinding, StandingTest } from '@chargewright/tightness'
import type { EntryProblem, Fact, SystemStatement, VisitEvent } from '@chargewright/visit'
import type { Case, Practised } from '../practice/practised.ts'
import type { SystemSoFar } from '../session/system-so-far.ts'
import type { TypedDuct } from '../steps/typed-duct.ts'
import type { Language } from '../words/language.ts'
import type { NamedVisit, SystemHistory } from './system-history.ts'

/**
 * Everything the page asks of the engine, by name: what it hands over and what it gets back. Both are plain data, for
 * they are copied from one thread to the other. A new task is a line here and its work in `tasks.ts`.
 */
export interface Tasks {
  readonly assess: (visit: VisitEvents) => Assessed
  /** Works out beforehand what judging the visit with one more entry will ask for. */
  readonly foresee: (visit: VisitEvents, entry: Fact) => void
  readonly draw: (
    visit: VisitEvents,
    units: UnitPreference,
    size: SheetSize,
    language: Language,
  ) => Promise<readonly Picture[]>
  /** The service record as the bytes of a PDF; without its system it says nothing of a leak rate. */
  readonly record: (
    visit: VisitEvents,
    wish: RecordWish,
    system: SystemSoFar | undefined,
  ) => Promise<Uint8Array<ArrayBuffer>>
  /** The same as a table or as data. */
  readonly recordText: (
    visit: VisitEvents,
    wish: RecordWish,
    system: SystemSoFar | undefined,
    form: 'csv' | 'json',
  ) => Promise<string>
  /** What the visits to one system came to, the first visit first. */
  readonly history: (visits: readonly NamedVisit[], units: UnitPreference, language: Language) => Promise<SystemHistory>
  /** How many of these visits to one system taught something of it, the first one first. */
  readonly learntFrom: (visits: readonly VisitEvents[]) => number
  /** What stands on the plate of a practice case. */
  readonly practicePlate: (of: Case) => Result<SystemStatement, readonly Problem[]>
  /** The practice bench after everything that was asked of it. */
  readonly practise: (of: Case, requests: readonly BenchRequest[]) => Result<Practised, readonly Problem[]>
  /** What the tests under vacuum and under pressure found. */
  readonly tightness: (
    visit: VisitEvents,
    units: UnitPreference,
    size: SheetSize,
    language: Language,
  ) => Promise<Tightness>
  /** What the cylinders of the visit hold, and what still fits into them. */
  readonly cylinders: (visit: VisitEvents) => CylinderAnswer
  /** What to weigh in, and how, step by step; else what is missing for it. */
  readonly weighIn: (visit: VisitEvents) => Result<VisitWeighIn, readonly Problem[]>
  /** What the law asks after the last addition to a system, by both of its methods. */
  readonly leakRate: (visits: readonly VisitEvents[], use: ApplianceUse) => Result<SystemLeakRate, Problem>
  /** The compressor against its maker’s figures, and the supply against the nameplate. */
  readonly compressor: (
    visit: VisitEvents,
    units: UnitPreference,
    size: SheetSize,
    language: Language,
  ) => Promise<CompressorAnswer>
  /** The airflow from what was measured for it, in the air of the visit. */
  readonly airflow: (visit: VisitEvents, way: AirflowWay) => Result<Airflow, Problem>
  /** Designations of all refrigerants that can be computed. */
  readonly refrigerants: () => readonly string[]
  /** The designation that a typed name stands for, or those that it could. */
  readonly refrigerantNamed: (typed: string) => NameRead
}

export type TaskName = keyof Tasks
export type Given<Name extends TaskName> = Parameters<Tasks[Name]>
export type Gotten<Name extends TaskName> = Awaited<ReturnType<Tasks[Name]>>

/** What a drawing has room for. */
export type SheetSize = 'phone' | 'desk'

/** What a record is made with. The words of a language do not cross to another thread, its name does. */
export type RecordWish = Omit<RecordOptions, 'language'> & { readonly language: Language }

export interface VisitEvents {
  readonly id: string
  readonly events: readonly VisitEvent[]
  /** The visits to the same system whose lessons it begins with, the first one first. */
  readonly earlier?: readonly VisitEvents[]
}

export interface Assessed {
  readonly assessment: Assessment
  /** How many earlier visits taught something that it was judged with. */
  readonly learntFrom: number
  /** The designation of the refrigerant, whatever name was typed; absent where none is known by it. */
  readonly refrigerant?: string
}

export interface CompressorAnswer {
  /** Absent without the maker’s figures. */
  readonly rating?: Result<JudgedCompressor, Problem>
  /** Absent while it was not measured. */
  readonly supply?: Result<SupplyFinding, Problem>
}

export interface JudgedCompressor extends Omit<CompressorOfVisit, 'compressor' | 'operating'> {
  /** The curve of each that was judged, as far as the figures reach. */
  readonly pictures: readonly Picture[]
}

/** How an airflow was found, as typed. */
export type AirflowWay =
  | {
      readonly kind: 'electric-heat'
      readonly volts: string
      readonly amps: string
      readonly rise: string
      readonly phases: 1 | 3
      readonly blower?: string
    }
  | {
      readonly kind: 'traverse'
      readonly duct: TypedDuct
      /** One at every point, each with its unit. */
      readonly readings: readonly string[]
    }
  | { readonly kind: 'pressure-drop' | 'fan-table'; readonly table: string; readonly pressure: string }

/** The last test of each sort, or why it cannot be judged. */
export interface Tightness {
  readonly vacuum?: Result<{ readonly finding: EvacuationFinding; readonly picture: Picture }, Problem>
  readonly pressure?: Result<StandingTest, Problem>
}

export interface CylinderAnswer {
  readonly balance: BookBalance
  /** In the order of the cylinders; undefined for one that may only be emptied. */
  readonly room: readonly (Result<Quantity<'mass'>, Problem> | undefined)[]
  /** Moves that cannot be counted. */
  readonly problems: readonly EntryProblem[]
}

/** From the page to the engine. The turn tells answers apart. */
export type Ask = { readonly [Name in TaskName]: { turn: number; task: Name; given: Given<Name> } }[TaskName]

/** From the engine to the page. */
export type Answer =
  | { readonly turn: number; readonly ok: true; readonly value: unknown }
  | { readonly turn: number; readonly ok: false; readonly detail: string }
