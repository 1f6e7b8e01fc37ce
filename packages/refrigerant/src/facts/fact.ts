/** A value with where it comes from. What was written from memory is not confirmed and must be shown as such. */
export interface Fact<Value> {
  readonly value: Value
  /** Key in `data/sources.bib`, *common practice*, or how it was computed. */
  readonly source: string
  readonly confirmed: boolean
}
