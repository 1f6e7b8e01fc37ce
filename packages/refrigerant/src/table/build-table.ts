import { fail, ok, type Problem, type Result } from '@chargewright/quantity'
import { type Engine, stateOf } from '../engine.ts'
import { solveLine } from '../equilibrium/saturation-line.ts'
import { caloricState } from '../mixture/fixed-composition.ts'
import type { Refrigerant } from '../refrigerant.ts'
import { DOME_EVERY, domeSurface } from './build-dome.ts'
import { liquidSurface, vapourSurface } from './build-single-phase.ts'
import { CURVE, CURVE_COUNT, type PropertyTable } from './property-table.ts'
import { fitSpline } from './spline.ts'

const HIGHEST_FRACTION = 0.97
const COLDEST_K = 213.15
/** The first and the last row are rows of the dome too. */
const ROWS = 15 * DOME_EVERY + 1

/** What a row of the table starts from: both saturated phases at one pressure, densities molar, h without reference. */
export interface Row {
  readonly pressure: number
  readonly bubble: SaturatedPhase
  readonly dew: SaturatedPhase
}

export interface SaturatedPhase {
  readonly temperature: number
  readonly density: number
  readonly enthalpy: number
  readonly entropy: number
}

/**
 * Builds the table of a refrigerant: −60 °C (or its lowest temperature) to 0.97 of the critical pressure, 60 K of
 * subcooling and 100 K of superheat. Some ten to a hundred milliseconds, and about 45 kB.
 *
 * @returns `unsolved`, with the place, if the equations did not close somewhere; no listed refrigerant does that
 */
export function buildTable(refrigerant: Refrigerant): Result<PropertyTable, Problem> {
  const { engine, critical, components, name } = refrigerant
  const criticalPressure_Pa = critical.pressure_Pa
  const minPressure_Pa = lowestPressure(engine)
  const maxPressure_Pa = HIGHEST_FRACTION * criticalPressure_Pa
  const xiStart = Math.sqrt(Math.log(criticalPressure_Pa / maxPressure_Pa))
  const xiStep = (Math.sqrt(Math.log(criticalPressure_Pa / minPressure_Pa)) - xiStart) / (ROWS - 1)
  const rows: Row[] = []
  for (let i = 0; i < ROWS; i++) {
    const row = saturatedRow(engine, criticalPressure_Pa * Math.exp(-((xiStart + i * xiStep) ** 2)))
    if (!row) return fail(unsolved(name, 'a saturation line'))
    rows.push(row)
  }
  const liquid = liquidSurface(engine, rows)
  const vapour = vapourSurface(engine, rows)
  const dome = refrigerant.kind === 'blend' ? domeSurface(engine, rows) : undefined
  if (!liquid) return fail(unsolved(name, 'the liquid'))
  if (!vapour) return fail(unsolved(name, 'the vapour'))
  if (refrigerant.kind === 'blend' && !dome) return fail(unsolved(name, 'two-phase'))
  return ok({
    name,
    composition: components.map((part) => ({ name: part.name, massFraction: part.massFraction })),
    lnCriticalPressure: Math.log(criticalPressure_Pa),
    minPressure_Pa,
    maxPressure_Pa,
    rows: ROWS,
    xiStart,
    rowsPerXi: 1 / xiStep,
    curves: curvesOf(engine, rows, liquid.ranges, vapour.ranges),
    liquid: liquid.surface,
    vapour: vapour.surface,
    ...(dome && { dome }),
  })
}

/** The dew pressure at −60 °C, unless the bubble point of that pressure is colder than the equations go. */
function lowestPressure({ limits, dew }: Engine): number {
  const { minTemperature_K, minPressure_Pa } = limits.saturation
  const T = Math.max(COLDEST_K, minTemperature_K)
  const atColdest = solveLine(dew, 'temperature', Math.log(T)) ? Math.exp(dew.work.lnP) : minPressure_Pa
  return Math.max(atColdest, minPressure_Pa)
}

function saturatedRow(engine: Engine, pressure: number): Row | undefined {
  const { bubble, dew, moleFractions } = engine
  const count = moleFractions.length
  const lnP = Math.log(pressure)
  if (!solveLine(bubble, 'pressure', lnP)) return undefined
  const u = bubble.work.u
  const T = Math.exp(u[count + 1]!)
  const liquid = phase(engine, T, Math.exp(u[count]!))
  if (count === 1) return { pressure, bubble: liquid, dew: phase(engine, T, Math.exp(u[0]!)) }
  if (!solveLine(dew, 'pressure', lnP)) return undefined
  const v = dew.work.u
  return { pressure, bubble: liquid, dew: phase(engine, Math.exp(v[count + 1]!), Math.exp(v[count]!)) }
}

const state = caloricState()

function phase(engine: Engine, temperature: number, density: number): SaturatedPhase {
  stateOf(engine, temperature, density, state)
  return { temperature, density, enthalpy: state.enthalpy_J_kg, entropy: state.entropy_J_kgK }
}

function curvesOf(
  engine: Engine,
  rows: readonly Row[],
  liquidRanges: Float64Array,
  vapourRanges: Float64Array,
): Float64Array {
  const M = engine.fluid.molarMass_kg_mol
  const samples = new Float64Array(rows.length * CURVE_COUNT)
  for (const [i, { pressure, bubble, dew }] of rows.entries()) {
    samples[CURVE.bubbleTemperature * rows.length + i] = bubble.temperature
    samples[CURVE.dewTemperature * rows.length + i] = dew.temperature
    samples[CURVE.liquidEnthalpy * rows.length + i] = bubble.enthalpy
    samples[CURVE.vapourEnthalpy * rows.length + i] = dew.enthalpy
    samples[CURVE.liquidEntropy * rows.length + i] = bubble.entropy
    samples[CURVE.vapourEntropy * rows.length + i] = dew.entropy
    samples[CURVE.liquidDensity * rows.length + i] = bubble.density * M
    samples[CURVE.vapourPressureVolume * rows.length + i] = pressure / (dew.density * M)
    samples[CURVE.liquidRange * rows.length + i] = liquidRanges[i]!
    samples[CURVE.vapourRange * rows.length + i] = vapourRanges[i]!
  }
  const stride = rows.length + 2
  const curves = new Float64Array(CURVE_COUNT * stride)
  for (let k = 0; k < CURVE_COUNT; k++) fitSpline(samples, k * rows.length, 1, rows.length, curves, k * stride, 1)
  return curves
}

const unsolved = (name: string, where: string): Problem => ({
  kind: 'unsolved',
  field: 'refrigerant',
  value: name,
  accepted: `no table: the equations did not close for ${where}`,
})
