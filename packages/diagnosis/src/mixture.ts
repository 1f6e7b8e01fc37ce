import type { Spread } from './diagnosis.ts'
import { normalBelow } from './normal.ts'
import type { Gaussian } from './weigh.ts'

/** Gaussians with their shares, which sum to 1. */
export type Mixture = readonly (Gaussian & { readonly share: number })[]

/** Mean and standard deviation of the whole. */
export function moments(mixture: Mixture): Spread {
  const mean = mixture.reduce((sum, part) => sum + part.share * part.mean, 0)
  const variance = mixture.reduce((sum, part) => sum + part.share * (part.variance + (part.mean - mean) ** 2), 0)
  return { mean, sd: Math.sqrt(variance) }
}

/** The value below which this share of the mixture lies, by bisection between its furthest parts. */
export function quantile(mixture: Mixture, below: number): number {
  const reach = ({ mean, variance }: Gaussian, z: number) => mean + z * Math.sqrt(variance)
  let low = Math.min(...mixture.map((part) => reach(part, -FURTHEST)))
  let high = Math.max(...mixture.map((part) => reach(part, FURTHEST)))
  for (let i = 0; i < BISECTIONS; i++) {
    const middle = (low + high) / 2
    if (belowIn(mixture, middle) < below) low = middle
    else high = middle
  }
  return (low + high) / 2
}

const belowIn = (mixture: Mixture, value: number) =>
  mixture.reduce((sum, { share, mean, variance }) => sum + share * normalBelow((value - mean) / Math.sqrt(variance)), 0)

const FURTHEST = 6
const BISECTIONS = 40
