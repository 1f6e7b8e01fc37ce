import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { kelvin } from '../../packages/quantity/src/index.ts'
import { type Content, findRefrigerant, leak } from '../../packages/refrigerant/src/index.ts'

/** Draws packages/refrigerant/docs/leak.svg: three blends after 10, 20 and 40 % of a vapour leak at 25 °C. */
const BLENDS = ['R-454B', 'R-448A', 'R-407C']
const LOST = [0.1, 0.2, 0.4]
const INK = '#14181c'
const RULE = '#b9c0c6'
const ACCENT = '#0b5fa5'
const WIDTH = 820
const ROW = 30
const BAR = { left: 170, width: 300 }
const PRESSURE = 490
const ERROR = 620

const lines: string[] = []
let y = 74
for (const name of BLENDS) {
  const found = findRefrigerant(name)
  if (!found.ok) throw new Error(name)
  const states = LOST.map((lost) => {
    const result = leak({ refrigerant: found.value, temperature: kelvin(298.15), lost })
    if (!result.ok) throw new Error(name)
    return result.value
  })
  text(20, y + 20, name, 16, 700)
  row(y, 0, states[0]!.before)
  for (const [k, state] of states.entries()) row(y + ROW * (k + 1), LOST[k]!, state.after)
  y += ROW * (LOST.length + 1)
  lines.push(`<path d="M20 ${y + 6}H${WIDTH - 20}" stroke="${RULE}"/>`)
  y += 18
}

const height = y + 36
const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" font-family="system-ui, sans-serif" role="img" aria-labelledby="title">
<title id="title">Composition, pressure and superheat error of R-454B, R-448A and R-407C after a vapour leak</title>
<rect width="${WIDTH}" height="${height}" fill="#fdfdfb"/>
${label(20, 30, 'After a slow vapour leak at rest, 25 °C, 30 % of the volume liquid before', 15, 700)}
${label(100, 56, 'lost', 12)}${label(BAR.left, 56, 'what is left, % by mass', 12)}${label(PRESSURE, 56, 'pressure, kPa', 12)}${label(ERROR, 56, 'excess superheat on chart, K', 12)}
${lines.join('\n')}
${label(20, height - 16, 'Superheat at the nominal dew pressure of 5 °C. Computed by this package; no measured leak stands behind it.', 11)}
</svg>
`
writeFileSync(join(import.meta.dirname, '../../packages/refrigerant/docs/leak.svg'), svg)

/** One state: its loss, its composition as a divided bar, its pressure and what the chart gets wrong. */
function row(top: number, lost: number, content: Content): void {
  text(100, top + 20, `${lost * 100} %`, 13)
  let x = BAR.left
  for (const [k, fraction] of Object.values(content.massFractions).entries()) {
    const width = fraction * BAR.width
    const shade = k % 2 === 0 ? '#e4e8eb' : '#f6f7f8'
    lines.push(
      `<rect x="${x.toFixed(1)}" y="${top + 5}" width="${width.toFixed(1)}" height="20" fill="${shade}" stroke="${INK}" stroke-width=".8"/>`,
    )
    const component = Object.keys(content.massFractions)[k]!.slice(2)
    const written =
      lost === 0 && width > 7 * (component.length + 5)
        ? `${component} ${(100 * fraction).toFixed(1)}`
        : (100 * fraction).toFixed(1)
    if (width > 24) text(x + width / 2, top + 19, written, 11, 400, 'middle')
    x += width
  }
  const shift = lost === 0 ? '' : ` (${(content.pressureShift_Pa / 1000).toFixed(0).replace('-', '−')})`
  text(PRESSURE, top + 20, `${(content.pressure_Pa / 1000).toFixed(0)}${shift}`, 13)
  const error = content.chartError.superheat_K
  lines.push(
    `<rect x="${ERROR}" y="${top + 8}" width="${(Math.abs(error) * 40).toFixed(1)}" height="14" fill="${ACCENT}"/>`,
  )
  if (lost > 0) text(ERROR + 6 + Math.abs(error) * 40, top + 20, error.toFixed(1), 13)
}

function text(x: number, at: number, content: string, size: number, weight = 400, anchor = 'start'): void {
  lines.push(label(x, at, content, size, weight, anchor))
}

function label(x: number, at: number, content: string, size: number, weight = 400, anchor = 'start'): string {
  return `<text x="${x.toFixed(1)}" y="${at}" font-size="${size}" font-weight="${weight}" text-anchor="${anchor}" fill="${INK}">${content}</text>`
}
