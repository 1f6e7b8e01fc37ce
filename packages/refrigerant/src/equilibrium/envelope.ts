import { ancillary, roughLiquidDensity, roughSaturationPressure } from '../mixture/ancillary.ts'
import type { MixtureModel } from '../mixture/mixture-model.ts'
import { type Incipient, incipient, type Side, solveIncipient, tangent } from './incipient.ts'

/**
 * The bubble or the dew line of one composition, followed in small steps of the spread S from a place where the first
 * guess is safe. Equations of state have many false roots inside the dome that satisfy equal fugacity and equal
 * pressure; a point on the connected line cannot be one of them. Every later solve starts from between two nodes.
 */
export interface Envelope {
  readonly side: Side
  /** From the coldest node to the one nearest the critical point. */
  readonly nodes: readonly EnvelopeNode[]
}

export interface EnvelopeNode {
  /** ln ρ_given − ln ρ_incipient. */
  readonly S: number
  readonly lnP: number
  /** d(ln p)/dS. */
  readonly dLnP: number
  /** The unknowns of `Incipient`, the last of them ln T. */
  readonly u: Float64Array
  readonly du: Float64Array
}

/** Reduced temperatures at which the first point is tried, by the mole-fraction mean of the critical temperatures. */
const FIRST_TRIES = [0.75, 0.7, 0.8, 0.65, 0.85, 0.6]
const FIRST_ITERATIONS = 40
const ITERATIONS = 6
const LONGEST_STEP = 0.6
const SHORTEST_STEP = 0.002
/** The trace ends at this spread; nearer the critical point the two phases cannot be told apart reliably. */
const LAST_SPREAD = 0.08

/** Follows one line from `minTemperature` to the neighbourhood of the critical point; undefined if no start is found. */
export function traceEnvelope(
  model: MixtureModel,
  z: Float64Array,
  side: Side,
  minTemperature: number,
): Envelope | undefined {
  const work = incipient(model, z, side)
  if (!firstPoint(work)) return undefined
  const sign = side === 'bubble' ? 1 : -1
  const first = nodeOf(work)
  const lnTMin = Math.log(minTemperature)
  const colder = follow(work, first, sign, (node) => node.u[node.u.length - 1]! < lnTMin)
  const warmer = follow(work, first, -sign, (node) => Math.abs(node.S) <= LAST_SPREAD)
  return { side, nodes: [...colder.reverse(), first, ...warmer] }
}

function firstPoint(work: Incipient): boolean {
  const { model, z } = work
  let kay = 0
  for (let i = 0; i < z.length; i++) kay += z[i]! * model.components[i]!.critical.temperature_K
  return FIRST_TRIES.some((fraction) => {
    guess(work, fraction * kay)
    return solveIncipient(work, 'temperature', Math.log(fraction * kay), FIRST_ITERATIONS) > 0 && plausible(work)
  })
}

/** Raoult's law with the components' own saturation lines, and their liquid volumes added. */
export function guess(work: Incipient, temperature: number): void {
  const { model, z, u, side } = work
  const count = z.length
  const RT = model.gasConstant_J_molK * temperature
  let pressure = 0
  for (let i = 0; i < count; i++) {
    const p = roughSaturationPressure(model.components[i]!, temperature)
    u[i] = p
    pressure += side === 'bubble' ? z[i]! * p : z[i]! / p
  }
  if (side === 'dew') pressure = 1 / pressure
  let volume = 0
  let compressibility = 0
  for (let i = 0; i < count; i++) {
    const fluid = model.components[i]!
    const ratio = side === 'bubble' ? u[i]! / pressure : pressure / u[i]!
    const liquid = side === 'bubble' ? z[i]! : z[i]! * ratio
    const vapour = side === 'bubble' ? z[i]! * ratio : z[i]!
    u[i] = Math.log(z[i]! * ratio)
    volume += liquid / roughLiquidDensity(fluid, temperature)
    compressibility += vapour * roughCompressibility(model, i, temperature)
  }
  const lnLiquid = -Math.log(volume)
  const lnVapour = Math.log(pressure / (compressibility * RT))
  for (let i = 0; i < count; i++) u[i]! += side === 'bubble' ? lnVapour : lnLiquid
  u[count] = side === 'bubble' ? lnLiquid : lnVapour
  u[count + 1] = Math.log(temperature)
}

/** p/ρRT of a component's saturated vapour at the same reduced temperature, at most 0.96. */
function roughCompressibility(model: MixtureModel, i: number, temperature: number): number {
  const { pressure, vapourDensity } = model.components[i]!.ancillary
  const T = Math.min(temperature, 0.96 * pressure.temperature_K)
  return ancillary(pressure, T) / (ancillary(vapourDensity, T) * model.gasConstant_J_molK * T)
}

/** Liquid and vapour densities such as real fluids have at these temperatures: false roots fail one of them. */
function plausible(work: Incipient): boolean {
  const { model, z, given, other, side, u } = work
  const liquid = side === 'bubble' ? given : other
  const vapour = side === 'bubble' ? other : given
  const T = Math.exp(u[z.length + 1]!)
  let volume = 0
  for (let i = 0; i < z.length; i++) volume += liquid.x[i]! / roughLiquidDensity(model.components[i]!, T)
  const ratio = liquid.density * volume
  const Z = vapour.P / vapour.density
  return ratio > 0.85 && ratio < 1.25 && Z > 0.3 && Z <= 1 && liquid.P_density > 0 && vapour.P_density > 0
}

function nodeOf(work: Incipient): EnvelopeNode {
  const dLnP = tangent(work, 'spread')
  const { u, du, given, other } = work
  return {
    S: Math.log(given.density / other.density),
    lnP: work.lnP,
    dLnP,
    u: u.slice(),
    du: du.slice(),
  }
}

/** Steps in S towards more or less spread until `done`, or until even the shortest step fails. */
function follow(work: Incipient, from: EnvelopeNode, direction: number, done: (node: EnvelopeNode) => boolean) {
  const nodes: EnvelopeNode[] = []
  let last = from
  let before: EnvelopeNode | undefined
  let length = LONGEST_STEP
  while (!done(last)) {
    // Towards the critical point the step shrinks with the spread that is left.
    const left = Math.abs(last.S)
    const inward = direction * last.S < 0
    const step = inward
      ? Math.min(length, Math.max(0.2 * left, left - LAST_SPREAD > 0.2 * left ? 0 : left - LAST_SPREAD))
      : length
    const S = last.S + direction * step
    predict(work.u, last, before, S)
    const iterations = solveIncipient(work, 'spread', S, ITERATIONS)
    const node = iterations > 0 ? nodeOf(work) : undefined
    if (node && smooth(last, node)) {
      nodes.push(node)
      before = last
      last = node
      if (iterations <= 3) length = Math.min(LONGEST_STEP, length * 1.5)
    } else {
      length = step / 2
      if (length < SHORTEST_STEP) break
    }
  }
  return nodes
}

/** Along the tangent; from the second node on, along the cubic through both nodes and their tangents. */
function predict(u: Float64Array, last: EnvelopeNode, before: EnvelopeNode | undefined, S: number): void {
  if (before) hermite(before, last, before.S, last.S, 1, 1, S, u)
  else for (let k = 0; k < u.length; k++) u[k] = last.u[k]! + last.du[k]! * (S - last.S)
}

/** A step that landed on another line shows as a jump against the trapezoid of both tangents. */
function smooth(a: EnvelopeNode, b: EnvelopeNode): boolean {
  const half = (b.S - a.S) / 2
  const k = a.u.length - 1
  const expected = (a.du[k]! + b.du[k]!) * half
  const jump = Math.abs(b.u[k]! - a.u[k]! - expected)
  return Number.isFinite(b.dLnP) && jump < 0.02 + 0.2 * Math.abs(expected)
}

/**
 * Cubic through two nodes as a function of any s with known ds/dS: s = S, ln T or ln p. `s0`, `s1` are its values and
 * `r0`, `r1` its slopes at the nodes.
 */
export function hermite(
  a: EnvelopeNode,
  b: EnvelopeNode,
  s0: number,
  s1: number,
  r0: number,
  r1: number,
  s: number,
  out: Float64Array,
): void {
  const h = s1 - s0
  const t = (s - s0) / h
  const t2 = t * t
  const h01 = t2 * (3 - 2 * t)
  const h00 = 1 - h01
  const h10 = (t * (1 - t) * (1 - t) * h) / r0
  const h11 = (t2 * (t - 1) * h) / r1
  for (let k = 0; k < out.length; k++) {
    out[k] = h00 * a.u[k]! + h10 * a.du[k]! + h01 * b.u[k]! + h11 * b.du[k]!
  }
}
