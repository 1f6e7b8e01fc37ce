/**
 * Solves A·x = b in place by elimination with partial pivoting; A is n×n by rows with the given stride, and b becomes
 * x. Returns false for a singular matrix.
 */
export function solveLinear(A: Float64Array, b: Float64Array, n: number, stride: number): boolean {
  for (let k = 0; k < n; k++) {
    let pivot = k
    let largest = Math.abs(A[k * stride + k]!)
    for (let i = k + 1; i < n; i++) {
      const size = Math.abs(A[i * stride + k]!)
      if (size > largest) {
        largest = size
        pivot = i
      }
    }
    if (!(largest > 0)) return false
    if (pivot !== k) {
      for (let j = k; j < n; j++) {
        const t = A[k * stride + j]!
        A[k * stride + j] = A[pivot * stride + j]!
        A[pivot * stride + j] = t
      }
      const t = b[k]!
      b[k] = b[pivot]!
      b[pivot] = t
    }
    const inverse = 1 / A[k * stride + k]!
    for (let i = k + 1; i < n; i++) {
      const factor = A[i * stride + k]! * inverse
      if (factor === 0) continue
      for (let j = k + 1; j < n; j++) A[i * stride + j]! -= factor * A[k * stride + j]!
      b[i]! -= factor * b[k]!
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = b[i]!
    for (let j = i + 1; j < n; j++) sum -= A[i * stride + j]! * b[j]!
    b[i] = sum / A[i * stride + i]!
  }
  return true
}
