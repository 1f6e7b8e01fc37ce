import { type Air, CP_AIR, dewPointOf, enthalpyOf, saturatedWater } from './air.ts'
import { guessAir, guessed, improveGuess, swept } from './air-between-rows.ts'
import { type Coil, volumeOf } from './coil.ts'
import type { Saturated } from './fluid.ts'
import { boilingShape, condensingShape, singlePhase } from './tube-film.ts'
import { voidShare } from './void-law.ts'
import { wetWall } from './wet-wall.ts'

/** What the march through one slab leaves behind; one for all, because it is made millions of times. */
export const slab = { h: 0.1, charge: 0.1, vapour: 0.1, airT: 0.1, airW: 0.1 }

/**
 * Marches refrigerant through one slab of a coil, again and again where rows meet the air against its way.
 *
 * @param a saturation where refrigerant enters, `b` where it leaves; between them all is straight
 * @param flow refrigerant, `airflow` air, both kg/s and through this slab, as is `fin`, the air side's W/K
 * @param part of the coil that this slab is
 */
export function marchSlab(
  coil: Coil,
  a: Saturated,
  b: Saturated,
  hIn: number,
  flow: number,
  air: Air,
  airflow: number,
  fin: number,
  film: number,
  part: number,
): void {
  const { rows, perRow, bore_m: D, voidLaw } = coil
  const cells = rows * perRow
  const boils = a.bubble_K < air.T_K
  const G = flow / (coil.circuits * part * 0.25 * Math.PI * D * D)
  const wall = (coil.grooves * Math.PI * D * coil.length_m * part) / cells
  const liquidFilm = wall * singlePhase(G, D, a.muLiquid, a.kLiquid, a.cpLiquid)
  const vapourFilm = wall * singlePhase(G, D, b.muVapour, b.kVapour, 1 / b.slope)
  const room = (volumeOf(coil) * part) / cells
  const airCell = airflow / perRow
  // Share of the way from air to wall that air goes in one row, and what that carries per kelvin in one cell.
  const reach = 1 - Math.exp(-fin / rows / (airflow * CP_AIR))
  const grip = airCell * CP_AIR * reach
  guessAir(coil, air, 0.5 * (b.bubble_K + b.dew_K), reach)
  // Along the air the row before is done already; against it only the last sweep has seen it.
  const upstream = coil.order === 'along' ? swept : guessed
  const sweeps = rows === 1 || coil.order === 'along' ? 1 : SWEEPS

  for (let s = 0; s < sweeps; s++) {
    let [h, charge, vapour] = [hIn, 0, 0]
    for (let i = 0; i < cells; i++) {
      const share = (i + 0.5) / cells
      const hL = a.hLiquid + share * (b.hLiquid - a.hLiquid)
      const hV = a.hVapour + share * (b.hVapour - a.hVapour)
      const bubble = a.bubble_K + share * (b.bubble_K - a.bubble_K)
      const dew = a.dew_K + share * (b.dew_K - a.dew_K)
      const rhoV = a.rhoVapour + share * (b.rhoVapour - a.rhoVapour)
      const rhoL = a.rhoLiquid + share * (b.rhoLiquid - a.rhoLiquid)
      const along = (i / perRow) | 0
      const row = coil.order === 'counter' ? rows - 1 - along : along
      const column = along % 2 === 0 ? i - along * perRow : perRow - 1 - (i - along * perRow)
      const here = row * perRow + column
      const Ta = row === 0 ? air.T_K : upstream.T[here - perRow]!
      const wa = row === 0 ? air.w : upstream.w[here - perRow]!
      let [left, dT, dw] = [1, 0, 0]

      // At most three phases meet in one cell; on an edge the direction of the heat tells which one it is in.
      for (let phase = 0; phase < 3 && left > 1e-9; phase++) {
        const isVapour = Ta > dew ? h >= hV - EDGE : h > hV + EDGE
        const isLiquid = Ta > bubble ? h < hL - EDGE : h <= hL + EDGE
        let Tr: number
        let inner: number
        /** W/K that warm the refrigerant itself; 0 in two phases, where temperature stays. */
        let heat = 0
        if (isVapour) {
          const slope = a.slope + a.bend * (h - hV)
          Tr = dew + (h - hV) * slope
          inner = vapourFilm
          heat = flow / slope
        } else if (isLiquid) {
          Tr = bubble - (hL - h) / a.cpLiquid
          inner = liquidFilm
          heat = flow * a.cpLiquid
        } else {
          const x = (h - hL) / (hV - hL)
          Tr = bubble + x * (dew - bubble)
          inner = boils
            ? film * boilingShape(x, liquidFilm, vapourFilm, coil, rhoL / rhoV)
            : film * liquidFilm * condensingShape(x, a)
        }

        let Tw = (grip * Ta + inner * Tr) / (grip + inner)
        const isWet = boils && Tw < dewPointOf(wa)
        if (isWet) Tw = wetWall(Tw, Tr, inner, airCell * reach, enthalpyOf(Ta, wa))
        const rate = inner * (Tw - Tr)
        const apart = Ta - Tr
        const pull = Math.abs(apart) > 1e-6 ? Math.max(rate / apart, 0) : 0
        const q = heat > 0 ? heat * (1 - Math.exp((-pull * left) / heat)) * apart : rate * left

        // The phase ends inside the cell where its edge takes less than the whole stretch would.
        const edge = q > 0 ? (isLiquid ? hL : isVapour ? Infinity : hV) : isVapour ? hV : isLiquid ? -Infinity : hL
        const needed = (edge - h) * flow
        const ends = Math.abs(needed) < Math.abs(q)
        const taken = ends ? needed : q
        let stretch = left
        if (ends) {
          const place = heat > 0 ? (-heat / pull) * Math.log(1 - needed / (heat * apart)) : needed / rate
          stretch = Math.min(Math.max(place, 0), left)
        }
        const after = ends ? edge : h + q / flow

        const middle = 0.5 * (h + after)
        const gas = isVapour ? 1 : isLiquid ? 0 : voidShare(voidLaw, (middle - hL) / (hV - hL), a, G, D)
        const rho = isVapour
          ? rhoV / (1 + a.swell * (middle - hV))
          : isLiquid
            ? rhoL * (1 + (SHRINK * (hL - middle)) / a.cpLiquid)
            : gas * rhoV + (1 - gas) * rhoL
        charge += room * stretch * rho
        vapour += room * stretch * gas
        // What the air gives is what the refrigerant took, however that fell off along the stretch.
        const given = rate === 0 ? 0 : (taken / rate) * reach
        dT -= given * (Ta - Tw)
        if (isWet) dw -= given * Math.max(wa - saturatedWater(Tw), 0)
        h = after
        left -= stretch
      }
      swept.T[here] = Ta + dT
      swept.w[here] = wa + dw
    }
    slab.h = h
    slab.charge = charge
    slab.vapour = vapour
    if (s < sweeps - 1) improveGuess(cells, s === 0)
  }

  slab.airT = 0
  slab.airW = 0
  for (let j = cells - perRow; j < cells; j++) {
    slab.airT += swept.T[j]! / perRow
    slab.airW += swept.w[j]! / perRow
  }
}

/** Closes the energy of air and refrigerant to 0.5 % in most coils and to 3 % in the worst of a hundred. */
const SWEEPS = 8
/** Nearer than this to saturation a state lies on the edge of its phase, J/kg. */
const EDGE = 1e-6
/** Of the liquid's density per kelvin of subcooling. */
const SHRINK = 0.0042
