/** Where a function of a length that is negative for a short coil turns positive; undefined when it never does. */
export function lengthWhere(g: (L: number) => number, from: number, to: number): number | undefined {
  let [low, high] = [from, from]
  while (g(high) < 0) {
    low = high
    high *= 1.4
    if (high > to) return undefined
  }
  if (high === from) return undefined
  for (let k = 0; k < 30; k++) {
    const middle = Math.sqrt(low * high)
    if (g(middle) < 0) low = middle
    else high = middle
  }
  return Math.sqrt(low * high)
}
