import type { ReducingConstants } from './mixture-model.ts'

/** Y(x) with its first and second derivatives by the amounts, where it is homogeneous of degree two. */
export interface Reduced {
  value: number
  readonly first: Float64Array
  readonly second: Float64Array
}

export function reduced(count: number): Reduced {
  return { value: 0, first: new Float64Array(count), second: new Float64Array(count * count) }
}

/**
 * A reducing function at mole fractions x. Written in amounts it is homogeneous of degree two, so its plain partial
 * derivatives are all that the fugacities need: n·∂ln Y/∂n_i = Y_i/Y − 2.
 */
export function reduce(constants: ReducingConstants, x: Float64Array, out: Reduced): void {
  const { pure, b, c } = constants
  const { first, second } = out
  const count = pure.length
  let value = 0
  for (let i = 0; i < count; i++) {
    const xi = x[i]!
    value += xi * xi * pure[i]!
    first[i] = 2 * xi * pure[i]!
    second[i * count + i] = 2 * pure[i]!
  }
  let k = 0
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++, k++) {
      const xi = x[i]!
      const xj = x[j]!
      const bk = b[k]!
      const ck = c[k]!
      const q = bk * xi + xj
      // w = (x_i + x_j)/q; from w·q = x_i + x_j all its derivatives follow.
      const w = (xi + xj) / q
      const wi = (1 - bk * w) / q
      const wj = (1 - w) / q
      value += ck * xi * xj * w
      first[i]! += ck * xj * (w + xi * wi)
      first[j]! += ck * xi * (w + xj * wj)
      second[i * count + i]! += (ck * xj * 2 * wi * (q - bk * xi)) / q
      second[j * count + j]! += (ck * xi * 2 * wj * (q - xj)) / q
      const mixed = ck * (w + xi * wi + xj * wj - (xi * xj * (bk * wj + wi)) / q)
      second[i * count + j] = mixed
      second[j * count + i] = mixed
    }
  }
  out.value = value
}
