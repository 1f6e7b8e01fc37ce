/**
 * What is measured. Gauge, absolute and difference are three dimensions of pressure, point and difference two of
 * temperature, because they convert differently: 10 °F of superheat is 5.56 K, a line at 10 °F is 260.9 K.
 */
export type Dimension =
  | 'absolute pressure'
  | 'gauge pressure'
  | 'pressure difference'
  | 'temperature'
  | 'temperature difference'
  | 'mass'
  | 'length'
  | 'mass per length'
  | 'elevation'
  | 'volume'
  | 'airflow'
  | 'specific airflow'
  | 'velocity'
  | 'mass flow'
  | 'power'
  | 'cooling capacity'
  | 'specific enthalpy'
  | 'current'
  | 'voltage'
  | 'relative humidity'
  | 'duration'

/** A measured or derived value in SI: Pa, K, kg, m, m³, m³/s, W, J/kg, A, V, s; relative humidity as a fraction. */
export interface Quantity<D extends Dimension = Dimension> {
  readonly dimension: D
  readonly si: number
  /** Standard uncertainty (one standard deviation), same unit; absent for a value taken as exact. */
  readonly u?: number
}

export function quantity<D extends Dimension>(dimension: D, si: number, u?: number): Quantity<D> {
  return u === undefined ? { dimension, si } : { dimension, si, u }
}

type Pair = { readonly point: Dimension; readonly difference: Dimension }

const PAIRS: readonly Pair[] = [
  { point: 'temperature', difference: 'temperature difference' },
  { point: 'absolute pressure', difference: 'pressure difference' },
  { point: 'gauge pressure', difference: 'pressure difference' },
]

type DifferenceOf<D extends Dimension> = D extends 'temperature'
  ? 'temperature difference'
  : D extends 'absolute pressure' | 'gauge pressure'
    ? 'pressure difference'
    : D

/**
 * a − b. Of two points it is a difference; of two amounts, an amount. The uncertainties are taken as independent and
 * added in quadrature (JCGM 100:2008, eq. 10).
 */
export function subtract<D extends Dimension>(a: Quantity<D>, b: Quantity<D>): Quantity<DifferenceOf<D>> {
  const pair = PAIRS.find((p) => p.point === a.dimension)
  const dimension = (pair?.difference ?? a.dimension) as DifferenceOf<D>
  return quantity(dimension, a.si - b.si, inQuadrature(a.u, b.u))
}

/** A point moved by a difference, or two amounts or differences added; uncertainties in quadrature. */
export function add<D extends Dimension>(a: Quantity<D>, b: Quantity<DifferenceOf<D>>): Quantity<D> {
  return quantity(a.dimension, a.si + b.si, inQuadrature(a.u, b.u))
}

/** Root sum of squares of standard uncertainties; undefined when none is known. */
export function inQuadrature(...us: readonly (number | undefined)[]): number | undefined {
  const known = us.filter((u) => u !== undefined)
  return known.length === 0 ? undefined : Math.hypot(...known)
}
