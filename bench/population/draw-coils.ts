import type { Coil } from './coil.ts'
import type { Random } from './random.ts'

/**
 * A condenser of one row or two, its length still to be found.
 *
 * @param drop Pa at the design's flow, times the density of the vapour that enters
 */
export function drawCondenser({ uniform, one }: Random, flow: number, voidLaw: Coil['voidLaw'], drop: number): Coil {
  const bore_m = one([0.0048, 0.0064, 0.0064, 0.0088, 0.0088])
  const rows = one([1, 1, 2])
  return {
    rows,
    perRow: rows === 1 ? 24 : 13,
    order: 'counter',
    circuits: circuitsFor(flow, uniform(170, 340), bore_m),
    bore_m,
    length_m: 0,
    fin_W_mK: bore_m * uniform(2900, 4300),
    finExponent: uniform(0.4, 0.62),
    grooves: uniform(1.2, 1.9),
    nucleate: 0,
    dryFrom: 1,
    slabs: [1],
    drop: drop / flow ** 1.75,
    voidLaw,
    roomy: uniform(1.03, 1.12),
  }
}

/**
 * An evaporator in two slabs that share the air unevenly, its length still to be found.
 *
 * @param isCool gas leaves it hardly superheated: only then may it leave in air that is cold already
 */
export function drawEvaporator(
  { uniform, one, chance }: Random,
  flow: number,
  voidLaw: Coil['voidLaw'],
  drop: number,
  isCool: boolean,
): Coil {
  const bore_m = one([0.0064, 0.0088, 0.0088])
  const rows = one([3, 3, 4])
  const uneven = uniform(0, 0.06)
  return {
    rows,
    perRow: rows === 3 ? 7 : 5,
    order: isCool && chance(0.3) ? 'along' : 'counter',
    circuits: circuitsFor(flow, uniform(100, 230), bore_m),
    bore_m,
    length_m: 0,
    fin_W_mK: bore_m * uniform(2900, 4300),
    finExponent: uniform(0.4, 0.62),
    grooves: uniform(1.1, 1.8),
    nucleate: uniform(1.2, 3),
    dryFrom: uniform(0.86, 0.96),
    slabs: [0.5 + uneven, 0.5 - uneven],
    drop: drop / flow ** 1.75,
    voidLaw,
    roomy: uniform(1.03, 1.12),
  }
}

function circuitsFor(flow: number, massFlux: number, bore: number): number {
  return Math.max(Math.round(flow / (massFlux * 0.25 * Math.PI * bore ** 2)), 1)
}
