import type { NonanalyticTerms, ResidualPart } from '../data-file.ts'
import { type Decay, separableTerms, type Term, type Warp } from './term.ts'

/**
 * Several residual functions of the same (δ, τ), laid out flat for evaluation. Terms of one function that share their
 * density factor form a group, so that their temperature factors are summed once per temperature. Terms of different
 * functions share the exponentials of the density.
 */
export interface TermTable {
  readonly functionCount: number
  /** Groups of function k: `groupStart[k]` up to `groupStart[k + 1]`. */
  readonly groupStart: Int32Array
  readonly groupPower: Uint8Array
  readonly groupDecay: Uint8Array
  /** Terms of group g: `termStart[g]` up to `termStart[g + 1]`. */
  readonly termStart: Int32Array
  readonly n: Float64Array
  readonly t: Float64Array
  /** Terms with exp(−β(τ − γ)²), and the few with another warp. */
  readonly bellTerm: Int32Array
  readonly bellBeta: Float64Array
  readonly bellGamma: Float64Array
  readonly oddWarps: readonly { readonly term: number; readonly warp: Warp }[]
  /** Decay 0 is "none"; then powers g·δ^l, from `firstBell` on bells η(δ − ε)². */
  readonly decayCount: number
  readonly firstBell: number
  readonly decayA: Float64Array
  readonly decayB: Float64Array
  readonly nonanalytic: readonly { readonly index: number; readonly weight: number; readonly terms: NonanalyticTerms }[]
  readonly scratch: {
    /** Of every term: exponent of its temperature factor, t + Tψ, and TTψ. The last two are constant without a warp. */
    readonly exponent: Float64Array
    readonly q: Float64Array
    readonly q1: Float64Array
    readonly powers: Float64Array
    readonly decay: Float64Array
    readonly decay1: Float64Array
    readonly decay2: Float64Array
  }
}

/** What a table keeps of one temperature: Σ C, Σ τ∂C and Σ (τ∂)²C of every group. One bank per phase. */
export interface TauBank {
  tau: number
  readonly c: Float64Array
  readonly c1: Float64Array
  readonly c2: Float64Array
}

/** A residual function is a weighted sum of published parts. */
export type WeightedParts = readonly { readonly weight: number; readonly part: ResidualPart }[]

export function termTable(functions: readonly WeightedParts[]): TermTable {
  const groups = functions.map((parts) => groupsOf(parts))
  const flat = groups.flat()
  const decays = distinctDecays(flat.map((group) => group[0]!.decay))
  const decayIndex = new Map(decays.map((decay, e) => [keyOf(decay), e]))
  const terms = flat.flat()
  const maxPower = Math.max(1, ...terms.map((term) => term.d))
  const firstBell = decays.findIndex((decay) => decay.kind === 'bell')
  const bells = terms.flatMap(({ warp }, term) => (warp.kind === 'bell' ? [{ term, warp }] : []))
  const t = Float64Array.from(terms, (term) => term.t)
  return {
    functionCount: functions.length,
    groupStart: Int32Array.from(runningTotal(groups.map((list) => list.length))),
    groupPower: Uint8Array.from(flat, (group) => group[0]!.d),
    groupDecay: Uint8Array.from(flat, (group) => decayIndex.get(keyOf(group[0]!.decay))!),
    termStart: Int32Array.from(runningTotal(flat.map((group) => group.length))),
    n: Float64Array.from(terms, (term) => term.n),
    t,
    bellTerm: Int32Array.from(bells, ({ term }) => term),
    bellBeta: Float64Array.from(bells, ({ warp }) => warp.beta),
    bellGamma: Float64Array.from(bells, ({ warp }) => warp.gamma),
    oddWarps: terms.flatMap(({ warp }, term) => (warp.kind === 'power' || warp.kind === 'gao' ? [{ term, warp }] : [])),
    decayCount: decays.length,
    firstBell: firstBell < 0 ? decays.length : firstBell,
    decayA: Float64Array.from(decays, (d) => (d.kind === 'none' ? 0 : d.kind === 'power' ? d.g : d.eta)),
    decayB: Float64Array.from(decays, (d) => (d.kind === 'none' ? 0 : d.kind === 'power' ? d.l : d.epsilon)),
    nonanalytic: functions.flatMap((parts, index) =>
      parts.flatMap(({ weight, part }) => (part.nonanalytic ? [{ index, weight, terms: part.nonanalytic }] : [])),
    ),
    scratch: {
      exponent: new Float64Array(terms.length),
      q: t.slice(),
      q1: new Float64Array(terms.length),
      powers: new Float64Array(maxPower + 1),
      decay: new Float64Array(decays.length),
      decay1: new Float64Array(decays.length),
      decay2: new Float64Array(decays.length),
    },
  }
}

export function tauBank(table: TermTable): TauBank {
  const size = table.groupPower.length
  return { tau: Number.NaN, c: new Float64Array(size), c1: new Float64Array(size), c2: new Float64Array(size) }
}

/** Terms with the same density factor together, weights multiplied in. */
function groupsOf(parts: WeightedParts): Term[][] {
  const groups = new Map<string, Term[]>()
  for (const { weight, part } of parts) {
    for (const term of separableTerms(part)) {
      const key = `${term.d} ${keyOf(term.decay)}`
      const group = groups.get(key)
      const weighted = { ...term, n: term.n * weight }
      if (group) group.push(weighted)
      else groups.set(key, [weighted])
    }
  }
  return [...groups.values()]
}

function distinctDecays(decays: readonly Decay[]): Decay[] {
  const distinct = new Map<string, Decay>([['none', { kind: 'none' }]])
  for (const kind of ['power', 'bell'] as const) {
    for (const decay of decays) if (decay.kind === kind) distinct.set(keyOf(decay), decay)
  }
  return [...distinct.values()]
}

function keyOf(decay: Decay): string {
  switch (decay.kind) {
    case 'none':
      return 'none'
    case 'power':
      return `power ${decay.g} ${decay.l}`
    case 'bell':
      return `bell ${decay.eta} ${decay.epsilon}`
  }
}

function runningTotal(counts: readonly number[]): number[] {
  let total = 0
  return [0, ...counts.map((count) => (total += count))]
}
