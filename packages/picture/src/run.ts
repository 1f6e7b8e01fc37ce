import type { Level, PlateState } from './cycle-points.ts'
import type { Point } from './svg.ts'

/** Where a state lies on the sheet. */
export type Place = (state: PlateState) => Point

/** A level between two enthalpies. */
export interface Run {
  readonly level: Level
  readonly from: number
  readonly to: number
}
