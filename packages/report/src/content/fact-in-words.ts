import { type Statement, say, type Tell, verbatim } from '@chargewright/quantity'
import { type Fact, type FactName, type FactOf, factLabel, observationKind, readingKind } from '@chargewright/visit'
import { PHASES, PORTS } from './code-in-words.ts'

/** An entry in words, with its values as they were typed. */
export const factInWords = (fact: Fact, tell: Tell): string => tell(statementOf(fact, tell))

function statementOf(fact: Fact, tell: Tell): Statement {
  const listed = (parts: readonly Statement[]) => verbatim(parts.map(tell).join(', '))
  switch (fact.kind) {
    case 'system-described':
      return say`System: ${listed(
        Object.entries(fact.facts).map(([name, stated]) => {
          const label = tell(say`${factLabel(name as FactName)}`).toLowerCase()
          return say`${verbatim(label)} ${statedInWords(stated)}`
        }),
      )}`
    case 'reading':
      return say`${readingKind(fact.what).label} ${quoted(fact.value)}`
    case 'observation': {
      const { label, answers } = observationKind(fact.what)
      return say`${label}: ${answers[fact.answer] ?? quoted(fact.answer)}`
    }
    case 'refrigerant-moved': {
      const [mass, phase, port] = [quoted(fact.mass), PHASES[fact.phase], PORTS[fact.port]]
      return fact.direction === 'into-system'
        ? say`Put in ${mass} as ${phase}, ${port}`
        : say`Took out ${mass} as ${phase}, ${port}`
    }
    case 'adjustment':
      return say`Adjusted: ${verbatim(fact.what)}`
    case 'wait':
      return (fact.ends === undefined ? WAITED : BEGUN)[fact.purpose](quoted(fact.duration))
    case 'supply-measured':
      return say`Supply ${listed(fact.voltages.map(quoted))}, nameplate ${quoted(fact.nominal)}`
    case 'weighing-gear':
      return say`Weighing gear: ${listed(gearParts(fact))}`
    case 'vacuum-test':
      return say`Shut off under vacuum, held against ${CRITERIA[fact.criterion]}`
    case 'vacuum-reading':
      return say`Vacuum ${quoted(fact.pressure)} after ${quoted(fact.after)}`
    case 'vacuum-log':
      return say`Log of the vacuum gauge, ${fact.text.trim().split(/\r\n|\n|\r/).length} lines`
    case 'pressure-test':
      return say`Began a pressure test under dry nitrogen`
    case 'pressure-test-reading':
      return say`Test pressure ${quoted(fact.pressure)} at ${quoted(fact.temperature)} after ${quoted(fact.after)}`
    case 'cylinder-weighed':
      return say`Cylinder ${verbatim(fact.cylinder)} on the scale ${quoted(fact.gross)}, stamped tare ${quoted(fact.tare)} and water capacity ${quoted(fact.waterCapacity)}`
    case 'lessons-forgotten':
      return say`Forgot what ${fact.visits.length} visits had taught of the system`
    case 'visit-moved':
      return fact.name === undefined
        ? say`Moved to the system that it was made at`
        : say`Moved to the system ${quoted(fact.name)}`
    case 'photo':
      return say`Photo of ${fact.subject} (${verbatim(fact.file)})`
    case 'note':
      return say`Note: ${verbatim(fact.text)}`
  }
}

/** What was typed, in quotation marks. */
const quoted = (text: string): Statement => say`“${verbatim(text)}”`

const WAITED = {
  settle: (duration: Statement) => say`Waited ${duration} for the system to settle`,
  equalise: (duration: Statement) => say`Waited ${duration} for the pressures to equalise`,
} as const

const BEGUN = {
  settle: (duration: Statement) => say`Began to wait ${duration} for the system to settle`,
  equalise: (duration: Statement) => say`Began to wait ${duration} for the pressures to equalise`,
} as const

/** What a vacuum is held against. */
const CRITERIA = {
  specification: say`the published specification`,
  habit: say`the ten-minute habit`,
  maker: say`the maker’s own figures`,
} as const

function gearParts(gear: FactOf<'weighing-gear'>): readonly Statement[] {
  const { scaleStep, hoseLength, hoseInside, cylinderTemperature, graduatedFor } = gear
  const parts = [
    scaleStep && say`scale in steps of ${quoted(scaleStep)}`,
    hoseLength && say`hose ${quoted(hoseLength)} long`,
    hoseInside && say`${quoted(hoseInside)} inside`,
    cylinderTemperature && say`charging cylinder at ${quoted(cylinderTemperature)}`,
    graduatedFor && say`graduated for ${quoted(graduatedFor)}`,
  ]
  return parts.filter((part) => typeof part === 'object')
}

function statedInWords(stated: unknown): Statement {
  if (stated === null) return say`taken back`
  if (typeof stated === 'boolean') return stated ? say`yes` : say`no`
  return typeof stated === 'string' && !stated.includes('\n') ? quoted(stated) : say`entered`
}
