/** Relative standard uncertainty of an airflow out of a maker's table: common practice. */
export const MAKERS_TABLE = 0.05

/** Index of the entry at or before a value that lies on a rising axis, so that there is always one after it. */
export function placeIn(axis: readonly number[], value: number): number {
  return Math.min(
    axis.findLastIndex((v) => v <= value),
    axis.length - 2,
  )
}
