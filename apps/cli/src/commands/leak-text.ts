import { absoluteInBoth, differenceInBoth, temperatureInBoth } from '../text/both-systems.ts'
import { columns } from '../text/columns.ts'
import { page } from '../text/page.ts'
import { wrap } from '../text/wrap.ts'
import type { LeakAnswer, LeakContent } from './leak.ts'

/** Composition, pressure and the error of the nominal chart, before and after a leak, and after topping up. */
export function leakText(answer: LeakAnswer, width: number): string {
  const { refrigerant, temperature_K, from, before, after, topped_up } = answer
  const contents = [before, after, ...(topped_up ? [topped_up] : [])]
  const row = (name: string, cell: (content: LeakContent) => string) => [name, ...contents.map(cell)]
  const twoRows = (name: string, cells: (content: LeakContent) => readonly [string, string]) => [
    row(name, (c) => cells(c)[0]),
    row('', (c) => cells(c)[1]),
  ]
  const rows = [
    ['', 'before', 'after', ...(topped_up ? ['topped up'] : [])],
    ...Object.keys(before.components).map((name) => row(name, (c) => percent(c.components[name] ?? 0))),
    row('liquid, of the volume', (c) => percent(c.liquid_volume_fraction)),
    ...twoRows('pressure at rest', (c) => absoluteInBoth(c.pressure_Pa)),
    ...twoRows('glide', (c) => differenceInBoth(0, c.glide_K)),
    ...twoRows('chart shows superheat', (c) => off(c.chart_error.superheat_K)),
    ...twoRows('chart shows subcooling', (c) => off(c.chart_error.subcooling_K)),
  ]
  const gone = answer.liquid_gone_at
  const notes = [
    'A slow leak at rest and at one temperature. The chart is that of the nominal blend; “high” shows more than there is.',
    ...(gone === undefined ? [] : [`The last liquid went when ${percent(gone)} was lost.`]),
  ]
  const at = temperatureInBoth(temperature_K).join(', ')
  return page(
    wrap(`${refrigerant}: ${percent(after.lost)} lost as ${from} at ${at}`, width),
    columns(rows, ['left', 'right', 'right', 'right']).map((line) => `  ${line}`),
    wrap(notes.join(' '), width),
  )
}

const percent = (share: number) => `${(share * 100).toFixed(1)} %`

/** Differences with their direction in a word, so that no one has to remember which way the sign goes. */
function off(difference_K: number): readonly [string, string] {
  const direction = difference_K > 0 ? 'high' : 'low'
  const [inchPound, metric] = differenceInBoth(0, Math.abs(difference_K))
  const said = (shown: string) => (Number.parseFloat(shown) === 0 ? 'right' : `${shown} ${direction}`)
  return [said(inchPound), said(metric)]
}
