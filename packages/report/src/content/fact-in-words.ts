import { type Fact, type FactName, factLabel, observationKind, readingKind } from '@chargewright/visit'

/** An entry in words, with its values as they were typed. */
export function factInWords(fact: Fact): string {
  switch (fact.kind) {
    case 'system-described':
      return `System: ${Object.entries(fact.facts)
        .map(([name, stated]) => `${factLabel(name as FactName).toLowerCase()} ${statedInWords(stated)}`)
        .join(', ')}`
    case 'reading':
      return `${readingKind(fact.what).label} “${fact.value}”`
    case 'observation': {
      const { label, answers } = observationKind(fact.what)
      return `${label}: ${answers[fact.answer] ?? `“${fact.answer}”`}`
    }
    case 'refrigerant-moved':
      return `${fact.direction === 'into-system' ? 'Put in' : 'Took out'} “${fact.mass}” as ${fact.phase}, ${PORTS[fact.port]}`
    case 'adjustment':
      return `Adjusted: ${fact.what}`
    case 'wait':
      return `${fact.ends === undefined ? 'Waited' : 'Began to wait'} “${fact.duration}” ${fact.purpose === 'settle' ? 'for the system to settle' : 'for the pressures to equalise'}`
    case 'supply-measured':
      return `Supply ${fact.voltages.map((voltage) => `“${voltage}”`).join(', ')}, nameplate “${fact.nominal}”`
    case 'weighing-gear':
      return `Weighing gear: ${[fact.scaleStep && `scale in steps of “${fact.scaleStep}”`, fact.hoseLength && `hose “${fact.hoseLength}” long`, fact.hoseInside && `“${fact.hoseInside}” inside`, fact.cylinderTemperature && `charging cylinder at “${fact.cylinderTemperature}”`, fact.graduatedFor && `graduated for “${fact.graduatedFor}”`].filter((part) => part !== undefined).join(', ')}`
    case 'vacuum-test':
      return `Shut off under vacuum, held against ${CRITERIA[fact.criterion]}`
    case 'vacuum-reading':
      return `Vacuum “${fact.pressure}” after “${fact.after}”`
    case 'vacuum-log':
      return `Log of the vacuum gauge, ${fact.text.trim().split(/\r\n|\n|\r/).length} lines`
    case 'pressure-test':
      return 'Began a pressure test under dry nitrogen'
    case 'pressure-test-reading':
      return `Test pressure “${fact.pressure}” at “${fact.temperature}” after “${fact.after}”`
    case 'cylinder-weighed':
      return `Cylinder ${fact.cylinder} on the scale “${fact.gross}”, stamped tare “${fact.tare}” and water capacity “${fact.waterCapacity}”`
    case 'lessons-forgotten':
      return `Forgot what ${fact.visits.length} visits had taught of the system`
    case 'photo':
      return `Photo of ${fact.subject} (${fact.file})`
    case 'note':
      return `Note: ${fact.text}`
  }
}

/** What a vacuum is held against. */
const CRITERIA = {
  specification: 'the published specification',
  habit: 'the ten-minute habit',
  maker: 'the maker’s own figures',
} as const

/** Where refrigerant was moved. */
export const PORTS = {
  suction: 'suction port',
  discharge: 'discharge port',
  'liquid-line': 'liquid-line port',
  receiver: 'receiver',
} as const

function statedInWords(stated: unknown): string {
  if (stated === null) return 'taken back'
  if (typeof stated === 'boolean') return stated ? 'yes' : 'no'
  return typeof stated === 'string' && !stated.includes('\n') ? `“${stated}”` : 'entered'
}
