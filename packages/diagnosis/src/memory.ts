/**
 * What earlier visits taught about one system: the joint Gaussian of its nuisances, by name. Plain data, kept with the
 * system; made for one version of the twin, and not believed by another.
 */
export interface Memory {
  readonly version: 1
  readonly twin: string
  readonly visits: number
  readonly names: readonly string[]
  readonly mean: readonly number[]
  readonly covariance: readonly (readonly number[])[]
}
