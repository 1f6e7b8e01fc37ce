import {
  APPLICATIONS,
  type Fact,
  type FactName,
  type FactOf,
  factLabel,
  METERING_DEVICES,
  observationKind,
  readingKind,
  type SystemStatement,
} from '@chargewright/visit'
import { t } from '../words/t.ts'

/** A fact as one line of the log: what was entered, and what was typed or chosen. */
export interface FactInWords {
  readonly what: string
  readonly typed: string
}

export function factInWords(fact: Fact): FactInWords {
  switch (fact.kind) {
    case 'system-described':
      return systemInWords(fact.facts)
    case 'reading':
      return { what: t(readingKind(fact.what).label), typed: fact.value }
    case 'observation': {
      const { label, answers } = observationKind(fact.what)
      const known = Object.hasOwn(answers, fact.answer) ? answers[fact.answer] : undefined
      return { what: t(label), typed: known === undefined ? fact.answer : t(known) }
    }
    case 'refrigerant-moved':
      return { what: t(MOVED[fact.direction]), typed: moveInWords(fact) }
    case 'adjustment':
      return { what: t('Adjustment'), typed: fact.what }
    case 'wait':
      return { what: t((fact.ends === undefined ? WAITED : BEGUN)[fact.purpose]), typed: fact.duration }
    case 'cylinder-weighed':
      return {
        what: t('Cylinder on the scale'),
        typed: t(
          '{0}: {1}, tare {2}, water capacity {3}, {4} {5}, {6}',
          fact.cylinder,
          fact.gross,
          fact.tare,
          fact.waterCapacity,
          t(HOLDS[fact.holds]),
          fact.refrigerant,
          t(REFILLABLE[fact.refillable ? 'yes' : 'no']),
        ),
      }
    case 'supply-measured':
      return { what: t('Supply'), typed: t('{0}; nameplate {1}', fact.voltages.join(', '), fact.nominal) }
    case 'weighing-gear':
      return { what: t('Weighing gear'), typed: gearInWords(fact) }
    case 'vacuum-test':
      return { what: t('Vacuum shut off'), typed: vacuumTestInWords(fact) }
    case 'vacuum-reading':
      return { what: t('Vacuum'), typed: t('{0} after {1}', fact.pressure, fact.after) }
    case 'vacuum-log':
      return { what: t('Log of the vacuum gauge'), typed: t('{0} lines', fact.text.trim().split(/\r\n|\n|\r/).length) }
    case 'pressure-test':
      return { what: t('Pressure test'), typed: t('begun under dry nitrogen') }
    case 'pressure-test-reading':
      return { what: t('Test pressure'), typed: t('{0} at {1} after {2}', fact.pressure, fact.temperature, fact.after) }
    case 'lessons-forgotten':
      return { what: t('Forgotten'), typed: t('what {0} visits taught', fact.visits.length) }
    case 'visit-moved':
      return { what: t('Moved to the system'), typed: fact.name ?? t('System without a name') }
    case 'photo':
      return { what: t('Photo'), typed: `${t(fact.subject)} (${fact.file})` }
    case 'note':
      return { what: t('Note'), typed: fact.text }
  }
}

export const MOVED = { 'into-system': 'Into the system', 'out-of-system': 'Out of the system' } as const
export const PHASES = { vapour: 'as vapour', liquid: 'as liquid' } as const
export const PORTS = {
  suction: 'suction port',
  'liquid-line': 'liquid-line port',
  receiver: 'receiver',
  discharge: 'discharge port',
} as const
export const COMPRESSOR = { running: 'compressor running', stopped: 'compressor stopped' } as const
const BEGUN = { settle: 'Wait to settle, begun', equalise: 'Wait to equalise, begun' } as const
export const HOLDS = { new: 'new', recovered: 'recovered' } as const
export const REFILLABLE = { yes: 'refillable', no: 'not refillable' } as const
export const CRITERIA = {
  specification: 'the published specification: 300 micron, at most 500 in 1 h',
  habit: 'the habit: 250 micron, at most 500 in 10 min',
  maker: 'the maker’s own figures',
} as const
export const WAITED = { settle: 'Wait to settle', equalise: 'Wait to equalise' } as const

function moveInWords(fact: FactOf<'refrigerant-moved'>): string {
  const parts = [fact.mass, t(PHASES[fact.phase]), t(PORTS[fact.port]), t(COMPRESSOR[fact.compressor])]
  if (fact.refrigerant !== undefined) parts.push(fact.refrigerant)
  if (fact.cylinder !== undefined) parts.push(t('cylinder {0}', fact.cylinder))
  if (fact.cylinderBefore !== undefined && fact.cylinderAfter !== undefined)
    parts.push(t('on the scale {0} before and {1} after', fact.cylinderBefore, fact.cylinderAfter))
  if (fact.hoses !== undefined) parts.push(t('{0} kept by the hoses', fact.hoses))
  return parts.join(', ')
}

function gearInWords(gear: FactOf<'weighing-gear'>): string {
  const { scaleStep, hoseLength, hoseInside, cylinderTemperature, graduatedFor } = gear
  const parts = [
    scaleStep && t('scale in steps of {0}', scaleStep),
    hoseLength && t('hose {0} long', hoseLength),
    hoseInside && t('{0} inside', hoseInside),
    cylinderTemperature && t('charging cylinder at {0}', cylinderTemperature),
    graduatedFor && t('graduated for {0}', graduatedFor),
  ]
  return parts.filter((part) => part !== undefined).join(', ')
}

function vacuumTestInWords({ criterion, start, limit, hold }: FactOf<'vacuum-test'>): string {
  const against = t('held against {0}', t(CRITERIA[criterion]))
  return criterion === 'maker'
    ? t('{0}: {1}, at most {2} in {3}', against, start ?? '–', limit ?? '–', hold ?? '–')
    : against
}

function systemInWords(facts: SystemStatement): FactInWords {
  const stated = (Object.keys(facts) as FactName[]).map((name) => ({ name, text: statementInWords(name, facts) }))
  const [only] = stated
  if (only && stated.length === 1) return { what: t(factLabel(only.name)), typed: only.text }
  return { what: t('System'), typed: stated.map(({ name, text }) => `${t(factLabel(name))}: ${text}`).join('; ') }
}

function statementInWords(name: FactName, facts: SystemStatement): string {
  const stated = facts[name]
  if (stated === null || stated === undefined) return t('taken back')
  if (typeof stated === 'boolean') return stated ? t('yes') : t('no')
  if (Array.isArray(stated)) return partsInWords(stated)
  if (typeof stated === 'object') return t('{0} chart in {1}', t(stated.indoor), stated.unit)
  if (name === 'compressorRating') return t('the maker’s coefficients')
  if (name === 'meteringDevice') return t(METERING_DEVICES[stated as keyof typeof METERING_DEVICES])
  if (name === 'application') return t(APPLICATIONS[stated as keyof typeof APPLICATIONS])
  return stated
}

function partsInWords(parts: NonNullable<SystemStatement['accessories']>): string {
  if (parts.length === 0) return t('none')
  return parts
    .map(({ name, volume, liquidPercent }) => t('{0} {1}, {2} % liquid', name, volume, liquidPercent))
    .join('; ')
}
