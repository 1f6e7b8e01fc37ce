import type { DeviceKind, Trouble } from '../case.ts'
import { inflict, SEVERITIES } from '../inflict.ts'
import type { Running } from '../operate.ts'
import { seeded } from '../random.ts'
import { RATING } from '../rating.ts'
import { mean, type Sample } from './sample.ts'

const SEEN: Readonly<Record<string, (r: Running) => number>> = {
  'T evap': (r) => r.evaporating_K,
  'T cond': (r) => r.condensing_K,
  superheat: (r) => r.superheat_K,
  subcool: (r) => r.subcooling_K,
  'T disch': (r) => r.discharge_K,
  'air cond': (r) => r.condenserLeaving_K,
  'air evap': (r) => RATING.returnAir_K - r.supply_K,
  'drier ΔT': (r) => r.drierInlet_K - r.drierOutlet_K,
  'power %': (r) => 100 * Math.log(r.power_W),
}

/**
 * Published signs, in the order of `SEEN` down to the evaporator's air; 0 stays, blank not said. Orifice and capillary
 * from Rossi and Braun 1997 (READ as reprinted), overcharge and valve from textbooks (REMEMBERED).
 */
const RULES: Readonly<Record<'fixed' | 'valve', Partial<Record<Trouble, string>>>> = {
  fixed: {
    'short-of-charge': '--+-+--',
    overcharged: ' +-+ +0',
    'low-indoor-air': '------+',
    'poor-condenser-air': '++--++-',
    'liquid-line-restriction': '--+++--',
    'non-condensables': ' + ++  ',
    'weak-compressor': '+--- --',
  },
  valve: {
    'short-of-charge': ' - -+--',
    overcharged: '0+0+ +0',
    'low-indoor-air': '--0 - +',
    'poor-condenser-air': ' +0 ++ ',
    'non-condensables': ' + ++  ',
  },
}

/** Mean shift in K at the middle of each trouble's range, and the share of plants that move as the rule says. */
export function signs(kind: DeviceKind, all: readonly Sample[]): string[] {
  const rules = RULES[kind === 'thermostatic' ? 'valve' : 'fixed']
  const names = Object.keys(SEEN)
  const rows = (Object.keys(SEVERITIES) as Trouble[])
    .filter((trouble) => kind === 'thermostatic' || !trouble.startsWith('valve'))
    .map((trouble) => {
      const severity = 0.5 * (SEVERITIES[trouble][0] + SEVERITIES[trouble][1])
      const pairs = all.flatMap((s) => {
        const charge = trouble === 'overcharged' ? 1 + severity : trouble === 'short-of-charge' ? 1 - severity : 1
        const now = s.now({ charge, unit: inflict(s.unit, s.design, trouble, severity, seeded(11)) })
        return now ? [{ now, sound: s.sound }] : []
      })
      const cells = names.map((name, k) => {
        const shifts = pairs.map(({ now, sound }) => SEEN[name]!(now) - SEEN[name]!(sound))
        const rule = rules[trouble]?.[k]
        const wanted = rule === '+' ? 1 : rule === '-' ? -1 : 0
        const agree = wanted ? ` ${Math.round(100 * mean(shifts.map((d) => (d * wanted > 0 ? 1 : 0))))}%` : ''
        return `${mean(shifts).toFixed(1)}${agree}`.padStart(11)
      })
      return `  ${`${trouble} ${severity.toFixed(2)}`.padEnd(30)}${cells.join('')}   (${pairs.length} run)`
    })
  return [`  ${''.padEnd(30)}${names.map((n) => n.padStart(11)).join('')}`, ...rows]
}
