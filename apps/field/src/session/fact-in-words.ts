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
      return { what: readingKind(fact.what).label, typed: fact.value }
    case 'observation': {
      const { label, answers } = observationKind(fact.what)
      const known = Object.hasOwn(answers, fact.answer) ? answers[fact.answer] : undefined
      return { what: label, typed: known ?? fact.answer }
    }
    case 'refrigerant-moved':
      return { what: MOVED[fact.direction], typed: moveInWords(fact) }
    case 'adjustment':
      return { what: 'Adjustment', typed: fact.what }
    case 'wait':
      return { what: (fact.ends === undefined ? WAITED : BEGUN)[fact.purpose], typed: fact.duration }
    case 'cylinder-weighed':
      return {
        what: 'Cylinder on the scale',
        typed: `${fact.cylinder}: ${fact.gross}, tare ${fact.tare}, water capacity ${fact.waterCapacity}, ${HOLDS[fact.holds]} ${fact.refrigerant}, ${REFILLABLE[fact.refillable ? 'yes' : 'no']}`,
      }
    case 'supply-measured':
      return { what: 'Supply', typed: `${fact.voltages.join(', ')}; nameplate ${fact.nominal}` }
    case 'weighing-gear':
      return { what: 'Weighing gear', typed: gearInWords(fact) }
    case 'vacuum-test':
      return { what: 'Vacuum shut off', typed: vacuumTestInWords(fact) }
    case 'vacuum-reading':
      return { what: 'Vacuum', typed: `${fact.pressure} after ${fact.after}` }
    case 'vacuum-log':
      return { what: 'Log of the vacuum gauge', typed: `${fact.text.trim().split(/\r\n|\n|\r/).length} lines` }
    case 'pressure-test':
      return { what: 'Pressure test', typed: 'begun under dry nitrogen' }
    case 'pressure-test-reading':
      return { what: 'Test pressure', typed: `${fact.pressure} at ${fact.temperature} after ${fact.after}` }
    case 'photo':
      return { what: 'Photo', typed: `${fact.subject} (${fact.file})` }
    case 'note':
      return { what: 'Note', typed: fact.text }
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
  const parts = [fact.mass, PHASES[fact.phase], PORTS[fact.port], COMPRESSOR[fact.compressor]]
  if (fact.refrigerant !== undefined) parts.push(fact.refrigerant)
  if (fact.cylinder !== undefined) parts.push(`cylinder ${fact.cylinder}`)
  if (fact.cylinderBefore !== undefined && fact.cylinderAfter !== undefined)
    parts.push(`on the scale ${fact.cylinderBefore} before and ${fact.cylinderAfter} after`)
  if (fact.hoses !== undefined) parts.push(`${fact.hoses} kept by the hoses`)
  return parts.join(', ')
}

function gearInWords(gear: FactOf<'weighing-gear'>): string {
  const { scaleStep, hoseLength, hoseInside, cylinderTemperature, graduatedFor } = gear
  const parts = [
    scaleStep && `scale in steps of ${scaleStep}`,
    hoseLength && `hose ${hoseLength} long`,
    hoseInside && `${hoseInside} inside`,
    cylinderTemperature && `charging cylinder at ${cylinderTemperature}`,
    graduatedFor && `graduated for ${graduatedFor}`,
  ]
  return parts.filter((part) => part !== undefined).join(', ')
}

function vacuumTestInWords({ criterion, start, limit, hold }: FactOf<'vacuum-test'>): string {
  const own = criterion === 'maker' ? `: ${start ?? '–'}, at most ${limit ?? '–'} in ${hold ?? '–'}` : ''
  return `held against ${CRITERIA[criterion]}${own}`
}

function systemInWords(facts: SystemStatement): FactInWords {
  const stated = (Object.keys(facts) as FactName[]).map((name) => ({ name, text: statementInWords(name, facts) }))
  const [only] = stated
  if (only && stated.length === 1) return { what: factLabel(only.name), typed: only.text }
  return { what: 'System', typed: stated.map(({ name, text }) => `${factLabel(name)}: ${text}`).join('; ') }
}

function statementInWords(name: FactName, facts: SystemStatement): string {
  const stated = facts[name]
  if (stated === null || stated === undefined) return 'taken back'
  if (typeof stated === 'boolean') return stated ? 'yes' : 'no'
  if (Array.isArray(stated)) return partsInWords(stated)
  if (typeof stated === 'object') return `${stated.indoor} chart in ${stated.unit}`
  if (name === 'compressorRating') return 'the maker’s coefficients'
  if (name === 'meteringDevice') return METERING_DEVICES[stated as keyof typeof METERING_DEVICES]
  if (name === 'application') return APPLICATIONS[stated as keyof typeof APPLICATIONS]
  return stated
}

function partsInWords(parts: NonNullable<SystemStatement['accessories']>): string {
  if (parts.length === 0) return 'none'
  return parts.map(({ name, volume, liquidPercent }) => `${name} ${volume}, ${liquidPercent} % liquid`).join('; ')
}
