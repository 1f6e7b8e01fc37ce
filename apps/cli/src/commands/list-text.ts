import { format, INCH_POUND, METRIC, quantity } from '@chargewright/quantity'
import { columns } from '../text/columns.ts'
import { page } from '../text/page.ts'
import { wrap } from '../text/wrap.ts'
import type { ListedRefrigerant } from './list.ts'

const ALIGN = ['left', 'left', 'right', 'right', 'right', 'right', 'right', 'right'] as const
const HEAD = ['', 'class', 'glide', '', 'boils at', 'AR4', 'AR5', 'AR6']

/** A line each: safety class, glide in both systems, normal boiling point, global warming potentials by edition. */
export function listText(rows: readonly ListedRefrigerant[], width: number): string {
  const notes = [
    `${rows.length === 1 ? 'One refrigerant' : `${rows.length} refrigerants`}.`,
    'Glide (dew above bubble temperature) and boiling point (bubble) at one standard atmosphere, from the equations of state.',
    'AR4, AR5, AR6: global warming potential over 100 years by edition; of a blend, the sum of its components by mass.',
    ...(rows.some(isMarked) ? ['* not checked against its source: look it up before you rely on it.'] : []),
  ]
  return page(columns([HEAD, ...rows.map(cells)], ALIGN), wrap(notes.join(' '), width))
}

function cells(row: ListedRefrigerant): readonly string[] {
  const glide = row.glide_K === undefined ? undefined : quantity('temperature difference', row.glide_K)
  const boils = row.normal_bubble_K === undefined ? undefined : quantity('temperature', row.normal_bubble_K)
  return [
    row.refrigerant,
    marked(row, 'safety_class'),
    glide ? format(glide, INCH_POUND) : '',
    glide ? format(glide, METRIC) : '',
    boils ? format(boils, METRIC) : '',
    marked(row, 'gwp_AR4'),
    marked(row, 'gwp_AR5'),
    marked(row, 'gwp_AR6'),
  ]
}

const MARKED = ['safety_class', 'gwp_AR4', 'gwp_AR5', 'gwp_AR6'] as const

function marked(row: ListedRefrigerant, key: (typeof MARKED)[number]): string {
  const value = row[key]
  if (value === undefined) return ''
  const shown = typeof value === 'number' ? String(Math.round(value)) : value
  return row.unconfirmed.includes(key) ? `${shown}*` : shown
}

const isMarked = (row: ListedRefrigerant) => MARKED.some((key) => row.unconfirmed.includes(key))
