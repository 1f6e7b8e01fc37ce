import { type Air, CP_AIR, dewPointOf, enthalpyOf, saturatedWater } from './air.ts'
import type { Saturated } from './fluid.ts'
import { boilingShape, condensingShape, singlePhase } from './tube-film.ts'
import { type VoidLaw, voidShare } from './void-law.ts'

/** A finned coil that air crosses row by row while the refrigerant runs through it cell by cell. */
export interface Coil {
  readonly rows: number
  /** Cells along one row. */
  readonly perRow: number
  /** The refrigerant begins at the row that the air leaves last (counter) or at the one it meets first (along). */
  readonly order: 'counter' | 'along'
  readonly circuits: number
  readonly bore_m: number
  /** Of all tubes together. */
  readonly length_m: number
  /** Air side conductance of a metre of tube with its fins at rated airflow, W/(m·K). */
  readonly fin_W_mK: number
  /** Conductance goes with airflow to this power. */
  readonly finExponent: number
  /** What grooves in the bore add to the smooth tube's film. */
  readonly grooves: number
  /** Boiling only: share of nucleate boiling, and the quality from which the wall dries. */
  readonly nucleate: number
  readonly dryFrom: number
  /** Share of the air that each slab of the coil gets; each slab gets the same refrigerant. */
  readonly slabs: readonly number[]
  /** Pressure lost, Pa per kg/m³ of vapour's specific volume at 1 kg/s; goes with flow^1.75. */
  readonly drop: number
  readonly voidLaw: VoidLaw
  /** Inner volume beside the tubes' own: headers and bends, and what production adds. Factor. */
  readonly roomy: number
}

export interface CoilState {
  readonly outlet_h: number
  readonly charge_kg: number
  /** Room that vapour takes in it, m³. */
  readonly vapour_m3: number
  /** Into the refrigerant, negative in a condenser. */
  readonly heat_W: number
  readonly airOut: Air
}

export const volumeOf = (coil: Coil) => 0.25 * Math.PI * coil.bore_m ** 2 * coil.length_m * coil.roomy

const MOST_CELLS = 64
const airT = new Float64Array(MOST_CELLS)
const airW = new Float64Array(MOST_CELLS)
const freshT = new Float64Array(MOST_CELLS)
const freshW = new Float64Array(MOST_CELLS)
const lastT = new Float64Array(MOST_CELLS)
const lastW = new Float64Array(MOST_CELLS)
const lastStep = new Float64Array(MOST_CELLS)
const SWEEPS = 8

/**
 * Steady state by marching along the refrigerant: in each cell local films by phase and quality, air as it arrives
 * there, the wall wet where it is colder than that air's dew point. A cell in which a phase ends is split at that place.
 * Counter-crossed rows are swept until the air between rows has settled.
 *
 * @param inlet at the pressure where refrigerant enters; `outlet` where it leaves
 * @param flow kg/s of refrigerant through the whole coil
 * @param air entering, `airflow` in kg/s, `fin` the air-side conductance of the whole coil, W/K
 * @param film factor on the two-phase film, below 1 where gas blankets it
 */
export function march(
  coil: Coil,
  inlet: Saturated,
  outlet: Saturated,
  h: number,
  flow: number,
  air: Air,
  airflow: number,
  fin: number,
  film: number,
): CoilState {
  let [outlet_h, charge, vapour, T, w] = [0, 0, 0, 0, 0]
  const n = coil.slabs.length
  for (const share of coil.slabs) {
    sweep(coil, inlet, outlet, h, flow / n, air, airflow * share, fin / n, film, 1 / n)
    outlet_h += slab.h / n
    charge += slab.charge
    vapour += slab.vapour
    T += share * slab.airT
    w += share * slab.airW
  }
  return { outlet_h, charge_kg: charge, vapour_m3: vapour, heat_W: flow * (outlet_h - h), airOut: { T_K: T, w } }
}

/** What the sweep of one slab leaves behind. */
const slab = { h: 0.1, charge: 0.1, vapour: 0.1, airT: 0.1, airW: 0.1 }

function sweep(
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
  const reach = 1 - Math.exp(-fin / rows / (airflow * CP_AIR))
  const grip = airCell * CP_AIR * reach
  guessAir(coil, air, 0.5 * (b.bubble_K + b.dew_K), reach)
  // Along the air the row before is done already; against it only the last sweep has seen it.
  const [upstreamT, upstreamW] = coil.order === 'along' ? [freshT, freshW] : [airT, airW]
  const sweeps = rows === 1 || coil.order === 'along' ? 1 : SWEEPS
  for (let s = 0; s < sweeps; s++) {
    let [h, charge, vapour] = [hIn, 0, 0]
    for (let i = 0; i < cells; i++) {
      const share = (i + 0.5) / cells
      const mixed = (x: number, y: number) => x + share * (y - x)
      const hL = mixed(a.hLiquid, b.hLiquid)
      const hV = mixed(a.hVapour, b.hVapour)
      const bubble = mixed(a.bubble_K, b.bubble_K)
      const dew = mixed(a.dew_K, b.dew_K)
      const rhoV = mixed(a.rhoVapour, b.rhoVapour)
      const rhoL = mixed(a.rhoLiquid, b.rhoLiquid)
      const along = (i / perRow) | 0
      const row = coil.order === 'counter' ? rows - 1 - along : along
      const column = along % 2 === 0 ? i - along * perRow : perRow - 1 - (i - along * perRow)
      const before = (row - 1) * perRow + column
      const Ta = row === 0 ? air.T_K : upstreamT[before]!
      const wa = row === 0 ? air.w : upstreamW[before]!
      let left = 1
      let [dT, dw] = [0, 0]
      // At most three phases meet in one cell; on an edge the direction of the heat tells which one it is in.
      for (let phase = 0; phase < 3 && left > 1e-9; phase++) {
        const x = (h - hL) / (hV - hL)
        const isVapour = Ta > dew ? h >= hV - EDGE : h > hV + EDGE
        const isLiquid = Ta > bubble ? h < hL - EDGE : h <= hL + EDGE
        const y = h - hV
        const slope = a.slope + a.bend * y
        const Tr = isVapour ? dew + y * slope : isLiquid ? bubble - (hL - h) / a.cpLiquid : bubble + x * (dew - bubble)
        const inner = isVapour
          ? vapourFilm
          : isLiquid
            ? liquidFilm
            : film *
              (boils ? boilingShape(x, liquidFilm, vapourFilm, coil, rhoL / rhoV) : liquidFilm * condensingShape(x, a))
        let Tw = (grip * Ta + inner * Tr) / (grip + inner)
        const isWet = boils && Tw < dewPointOf(wa)
        if (isWet) Tw = wetWall(Tw, Tr, inner, airCell * reach, enthalpyOf(Ta, wa))
        const rate = inner * (Tw - Tr)
        // The whole stretch left, its own warming or cooling counted; in two phases the temperature stays.
        const heat = isVapour ? flow / slope : isLiquid ? flow * a.cpLiquid : 0
        const apart = Ta - Tr
        const pull = Math.abs(apart) > 1e-6 ? Math.max(rate / apart, 0) : 0
        const q = heat > 0 ? heat * (1 - Math.exp((-pull * left) / heat)) * apart : rate * left
        const edge = q > 0 ? (isLiquid ? hL : isVapour ? Infinity : hV) : isVapour ? hV : isLiquid ? -Infinity : hL
        const needed = (edge - h) * flow
        let stretch = left
        let taken = q
        if (Math.abs(needed) < Math.abs(q) && Number.isFinite(needed)) {
          taken = needed
          stretch = heat > 0 ? (-heat / pull) * Math.log(1 - needed / (heat * apart)) : needed / rate
          stretch = Math.min(Math.max(stretch, 0), left)
        }
        const after = Math.abs(needed) < Math.abs(q) ? edge : h + taken / flow
        const middle = 0.5 * (h + after)
        const xm = (middle - hL) / (hV - hL)
        const gas = isVapour ? 1 : isLiquid ? 0 : voidShare(voidLaw, xm, a, G, D)
        const rho = isVapour
          ? rhoV / (1 + a.swell * (middle - hV))
          : isLiquid
            ? rhoL * (1 + (SHRINK * (hL - middle)) / a.cpLiquid)
            : gas * rhoV + (1 - gas) * rhoL
        charge += room * stretch * rho
        vapour += room * stretch * gas
        const scale = rate * stretch !== 0 ? taken / (rate * stretch) : 0
        dT -= scale * stretch * reach * (Ta - Tw)
        if (isWet) dw -= scale * stretch * reach * Math.max(wa - saturatedWater(Tw), 0)
        h = after
        left -= stretch
      }
      freshT[row * perRow + column] = Ta + dT
      freshW[row * perRow + column] = wa + dw
    }
    slab.h = h
    slab.charge = charge
    slab.vapour = vapour
    if (s < sweeps - 1) approach(cells, s === 0)
  }
  let [T, w] = [0, 0]
  for (let j = 0; j < perRow; j++) {
    T += freshT[(rows - 1) * perRow + j]! / perRow
    w += freshW[(rows - 1) * perRow + j]! / perRow
  }
  slab.airT = T
  slab.airW = w
}

/** Nearer than this to saturation a state lies on the edge of its phase, J/kg. */
const EDGE = 1e-6

/** Of the liquid's density per kelvin of subcooling. */
const SHRINK = 0.0042

/**
 * The next guess of the air between rows: what the sweep made of the last guess, mixed with what the sweep before made
 * so that the change would vanish were it straight.
 *
 * @source Anderson 1965, with a memory of one
 */
function approach(cells: number, isFirst: boolean): void {
  let [along, square] = [0, 0]
  if (!isFirst) {
    for (let i = 0; i < cells; i++) {
      const step = freshT[i]! - airT[i]!
      const turn = step - lastStep[i]!
      along += step * turn
      square += turn * turn
    }
  }
  const back = square > 1e-12 ? Math.min(Math.max(along / square, -4), 0.5) : 0
  for (let i = 0; i < cells; i++) {
    const [T, w] = [freshT[i]!, freshW[i]!]
    lastStep[i] = T - airT[i]!
    // Nothing of an earlier coil may reach this one, hence no zero times what was left here.
    airT[i] = back === 0 ? T : T - back * (T - lastT[i]!)
    airW[i] = back === 0 ? w : Math.max(w - back * (w - lastW[i]!), 1e-4)
    lastT[i] = T
    lastW[i] = w
  }
}

/** Air between the rows as it would be if the whole coil were at one temperature. */
function guessAir({ rows, perRow }: Coil, air: Air, T: number, reach: number): void {
  const dry = Math.min(saturatedWater(T + 4), air.w)
  for (let row = 0; row < rows; row++) {
    const done = 1 - (1 - 0.7 * reach) ** (row + 1)
    airT.fill(air.T_K + done * (T - air.T_K), row * perRow, (row + 1) * perRow)
    airW.fill(T < air.T_K ? air.w + done * (dry - air.w) : air.w, row * perRow, (row + 1) * perRow)
  }
}

/** Wall temperature at which what comes from the air by enthalpy equals what the refrigerant takes; two Newton steps. */
function wetWall(start: number, Tr: number, inner: number, air: number, h: number): number {
  let T = start
  for (let k = 0; k < 3; k++) {
    const hs = enthalpyOf(T, saturatedWater(T))
    const slope = (enthalpyOf(T + 0.5, saturatedWater(T + 0.5)) - hs) / 0.5
    T += (air * (h - hs) - inner * (T - Tr)) / (air * slope + inner)
  }
  return T
}
