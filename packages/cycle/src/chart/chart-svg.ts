import type { ChargingChart } from './charging-chart.ts'

const WIDTH = 720
const HEIGHT = 520
const LEFT = 64
const RIGHT = 56
const TOP = 56
const BOTTOM = 56
const MOST_CURVES = 9

/**
 * A chart as a plain drawing: target over outdoor temperature, one curve per indoor temperature, labelled at its end.
 * Lines and figures only, so that it prints; the label says that it is an estimate.
 */
export function chartSvg(chart: ChargingChart, unit: '°F' | '°C'): string {
  const point = (K: number) => (unit === '°F' ? (K - 273.15) * 1.8 + 32 : K - 273.15)
  const difference = (K: number) => (unit === '°F' ? K * 1.8 : K)
  const { outdoor_K, indoor_K, cells } = chart
  const most = Math.max(10, ...cells.flat().map((cell) => (cell.kind === 'target' ? difference(cell.value_K) : 0)))
  const [first, last] = [point(outdoor_K[0]!), point(outdoor_K.at(-1)!)]
  const x = (T: number) => LEFT + ((T - first) / Math.max(last - first, 1e-9)) * (WIDTH - LEFT - RIGHT)
  const y = (dT: number) => HEIGHT - BOTTOM - (dT / most) * (HEIGHT - TOP - BOTTOM)
  const every = Math.ceil(indoor_K.length / MOST_CURVES)
  const curves = indoor_K.flatMap((T, j) => {
    if (j % every !== 0) return []
    const points = cells.flatMap((row, i) => {
      const cell = row[j]!
      return cell.kind === 'target' ? [[x(point(outdoor_K[i]!)), y(difference(cell.value_K))] as const] : []
    })
    if (points.length < 2) return []
    const path = points.map(([px, py]) => `${px.toFixed(1)},${py.toFixed(1)}`).join(' ')
    const [endX, endY] = points.at(-1)!
    return [
      `<polyline points="${path}" fill="none" stroke="currentColor"/>`,
      `<text x="${(endX + 4).toFixed(1)}" y="${(endY + 4).toFixed(1)}">${point(T).toFixed(0)}</text>`,
    ]
  })
  const name = chart.measure === 'superheat_K' ? 'Superheat' : 'Subcooling'
  const indoor = chart.family.kind === 'wet-bulb' ? 'indoor wet bulb' : 'indoor dry bulb'
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${HEIGHT}" font-family="sans-serif" font-size="12">`,
    `<text x="${LEFT}" y="24" font-size="16">${name} over outdoor temperature, by ${indoor} (${unit})</text>`,
    `<text x="${LEFT}" y="42">${chart.source}</text>`,
    ...scale(first, last, 10).map((T) =>
      tick(x(T), y(0), x(T), y(most), String(T), x(T), HEIGHT - BOTTOM + 18, 'middle'),
    ),
    ...scale(0, most, 5).map((dT) => tick(x(first), y(dT), x(last), y(dT), String(dT), LEFT - 8, y(dT) + 4, 'end')),
    ...curves,
    '</svg>',
  ].join('\n')
}

function scale(from: number, to: number, step: number): readonly number[] {
  const start = Math.ceil(from / step) * step
  return Array.from({ length: Math.max(Math.floor((to - start) / step) + 1, 0) }, (_, i) => start + i * step)
}

function tick(x1: number, y1: number, x2: number, y2: number, text: string, tx: number, ty: number, anchor: string) {
  const [a, b, c, d, e, f] = [x1, y1, x2, y2, tx, ty].map((v) => v.toFixed(1))
  return `<line x1="${a}" y1="${b}" x2="${c}" y2="${d}" stroke="currentColor" stroke-opacity="0.2"/><text x="${e}" y="${f}" text-anchor="${anchor}">${text}</text>`
}
