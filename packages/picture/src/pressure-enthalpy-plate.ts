import type { Assessment } from '@chargewright/charging'
import {
  fromSi,
  inEnglish,
  preferredUnit,
  quantity,
  say,
  teller,
  toSi,
  type UnitPreference,
  verbatim,
  type Words,
} from '@chargewright/quantity'
import { findRefrigerant, type Refrigerant } from '@chargewright/refrigerant'
import type { Visit } from '@chargewright/visit'
import { axisTitle, exactAxis, logAxis, tickText } from './axis.ts'
import { clip } from './clip.ts'
import { cycleDrawing } from './cycle-drawing.ts'
import { type CyclePoints, cyclePoints, type PlateState } from './cycle-points.ts'
import { describeCycle, tableOfCycle } from './cycle-words.ts'
import { draw } from './draw.ts'
import { shown } from './in-unit.ts'
import { isotherm } from './isotherm.ts'
import { label } from './label.ts'
import { DESK, type Picture, type Sheet } from './picture.ts'
import { enthalpySpan, plateWindow } from './plate-window.ts'
import { lineIn, type Plot, plot } from './plot.ts'
import { saturationLines, type Window } from './saturation-lines.ts'
import type { Point } from './svg.ts'
import { textWidth } from './text-width.ts'
import { STROKE } from './tokens.ts'

/**
 * The pressure–enthalpy plate of a refrigerant: bubble line, dew line and isotherms from its equations, and over them
 * the cycle of a visit in heavy ink, its points numbered as the stations are, its uncertainty shaded.
 *
 * Pressure is absolute, because saturation does not know what the weather is; the levels carry the readings as typed.
 * Undefined where the cycle lies outside what the equations cover.
 */
export function pressureEnthalpyPlate(
  refrigerant: Refrigerant,
  cycle: CyclePoints,
  preference: UnitPreference,
  sheet: Sheet = DESK,
  words: Words = inEnglish,
): Picture | undefined {
  const tell = teller(preference, words)
  const window = plateWindow(refrigerant, cycle)
  if (!window) return undefined
  const pressure = (si: number) => shown(quantity('absolute pressure', si), preference)
  const enthalpy = (si: number) => shown(quantity('specific enthalpy', si), preference)
  const inUnits = (state: PlateState): Point => ({ x: enthalpy(state.enthalpy), y: pressure(state.pressure) })

  const [from, to] = enthalpySpan(refrigerant, window, cycle)
  const across = exactAxis(
    axisTitle(tell(say`enthalpy`), 'specific enthalpy', preference),
    enthalpy(from),
    enthalpy(to),
    Math.floor(sheet.width / (6 * sheet.text)),
  )
  const up = logAxis(
    axisTitle(tell(say`pressure`), 'absolute pressure', preference),
    pressure(window.bottom_Pa),
    pressure(window.top_Pa),
  )
  const at = plot(sheet, across, up, { text: '000°', share: 1 })
  const place = (state: PlateState) => at.place(inUnits(state))
  const { bubble, dew } = saturationLines(refrigerant, window)
  const { text, palette } = sheet
  return draw(
    sheet,
    {
      title: tell(say`Pressure and enthalpy of ${verbatim(refrigerant.name)}, with this cycle`),
      description: describeCycle(refrigerant, cycle, tell),
      table: tableOfCycle(cycle, preference, tell),
    },
    at.grid,
    isothermsIn(at, isotherms(refrigerant, window, preference), place, sheet),
    lineIn(at, bubble.map(place), palette.ink, STROKE.line * text),
    lineIn(at, dew.map(place), palette.ink, STROKE.line * text),
    cycleDrawing(cycle, refrigerant, place, tell, sheet),
  )
}

/** The plate of a visit's own refrigerant with its cycle; undefined also where the refrigerant cannot be computed. */
export function plateOfVisit(
  visit: Visit,
  assessment: Assessment,
  preference: UnitPreference,
  sheet: Sheet = DESK,
  words: Words = inEnglish,
): Picture | undefined {
  const refrigerant = findRefrigerant(visit.system.facts.refrigerant ?? '')
  if (!refrigerant.ok) return undefined
  const cycle = cyclePoints(visit, assessment, refrigerant.value)
  return pressureEnthalpyPlate(refrigerant.value, cycle, preference, sheet, words)
}

interface Isotherm {
  readonly name: string
  readonly states: readonly PlateState[]
}

/** Between two isotherms, in the units that are read off them. */
const STEP: Readonly<Record<string, number>> = { '°F': 40, '°C': 20, K: 20 }

function isotherms(refrigerant: Refrigerant, window: Window, preference: UnitPreference): readonly Isotherm[] {
  const unit = preferredUnit('temperature', preference)
  const step = STEP[unit.symbol] ?? 20
  const [coldest, hottest] = [fromSi(window.coldest_K, unit), fromSi(window.hottest_K, unit)]
  const first = Math.ceil(coldest / step)
  const count = Math.max(0, Math.floor(hottest / step) - first + 1)
  return Array.from({ length: count }, (_, i) => (first + i) * step).map((value) => ({
    name: `${tickText(value)}°`,
    states: isotherm(refrigerant, toSi(value, unit), window),
  }))
}

/** Thin lines, each with its temperature where it ends at the bottom or leaves at the right, as far as there is room. */
function isothermsIn(at: Plot, lines: readonly Isotherm[], place: (state: PlateState) => Point, sheet: Sheet): string {
  const { text, palette } = sheet
  const { right, bottom } = at.box
  let taken = Number.NEGATIVE_INFINITY
  const drawn = lines.map(({ name, states }) => {
    const path = states.map(place)
    const line = lineIn(at, path, palette.soft, STROKE.grid * text)
    const end = clip(path, at.box).at(-1)?.at(-1)
    if (!end) return line
    if (end.x >= right - 1)
      return line + label(name, right + 0.3 * text, end.y + 0.35 * text, sheet, { fill: palette.soft })
    const from = end.x - textWidth(name, text) / 2
    if (end.y < bottom - 1 || from < taken) return line
    taken = from + textWidth(name, text) + 0.4 * text
    return line + label(name, from, bottom - 0.4 * text, sheet, { fill: palette.soft, onPaper: true })
  })
  return drawn.join('')
}
