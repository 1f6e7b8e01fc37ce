/** Lower triangle L with L Lᵀ = A; undefined where A is not positive definite. Rows of a square matrix in one array. */
export function cholesky(A: Float64Array, n: number): Float64Array | undefined {
  const L = new Float64Array(n * n)
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = A[i * n + j]!
      for (let k = 0; k < j; k++) sum -= L[i * n + k]! * L[j * n + k]!
      if (i === j) {
        if (!(sum > 0)) return undefined
        L[i * n + i] = Math.sqrt(sum)
      } else L[i * n + j] = sum / L[j * n + j]!
    }
  }
  return L
}

/** ln det A from its triangle. */
export function lnDeterminant(L: Float64Array, n: number): number {
  let sum = 0
  for (let i = 0; i < n; i++) sum += Math.log(L[i * n + i]!)
  return 2 * sum
}

/** A⁻¹ b from the triangle of A. */
export function solved(L: Float64Array, b: Float64Array): Float64Array {
  const n = b.length
  const x = Float64Array.from(b)
  for (let i = 0; i < n; i++) {
    let sum = x[i]!
    for (let k = 0; k < i; k++) sum -= L[i * n + k]! * x[k]!
    x[i] = sum / L[i * n + i]!
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = x[i]!
    for (let k = i + 1; k < n; k++) sum -= L[k * n + i]! * x[k]!
    x[i] = sum / L[i * n + i]!
  }
  return x
}

export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!
  return sum
}
