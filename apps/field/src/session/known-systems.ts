import type { SystemFacts, VisitEvent } from '@chargewright/visit'
import { factsOf } from '../store/facts-of.ts'
import type { Shelf, StoredSystem, StoredVisit } from '../store/visit-store.ts'
import { instantOf } from './local-time.ts'

/** A system with what is known of it, for a list. */
export interface KnownSystem {
  readonly system: StoredSystem
  /** In sight, the first one first. */
  readonly visits: readonly StoredVisit[]
  /** Empty where this version cannot read what was stated. */
  readonly facts: SystemFacts
  /** Time of the latest entry; empty where there is none. */
  readonly lastEntry: string
}

/** The systems in sight, the one with the latest entry first. */
export function knownSystems({ systems, visits }: Shelf): readonly KnownSystem[] {
  return systems
    .filter(({ setAside }) => !setAside)
    .map((system) => {
      const own = visits.filter((visit) => visit.system === system.id && !visit.setAside)
      const ends = [system, ...own].map(({ events }) => String(events.at(-1)?.at ?? ''))
      return {
        system,
        visits: own,
        facts: factsOf(system.events) ?? {},
        lastEntry: ends.toSorted((a, b) => instantOf(a) - instantOf(b)).at(-1)!,
      }
    })
    .toSorted((a, b) => instantOf(b.lastEntry) - instantOf(a.lastEntry))
}

/** The systems in which every word asked for is found: in the name, the refrigerant, or a note of theirs or a visit's. */
export function searched(known: readonly KnownSystem[], asked: string): readonly KnownSystem[] {
  const words = plain(asked).split(/\s+/).filter(Boolean)
  if (words.length === 0) return known
  return known.filter(({ system, visits, facts }) => {
    const notes = [system, ...visits].flatMap(({ events }) => events.flatMap(noteOf))
    const text = plain([facts.name, facts.refrigerant, ...notes, ...visits.map(({ about }) => about)].join('\n'))
    return words.every((word) => text.includes(word))
  })
}

function noteOf(event: VisitEvent): readonly string[] {
  if (event.kind === 'note') return [event.text]
  return event.kind === 'photo' ? [event.subject] : []
}

/** Without capitals, accents and the dash that a refrigerant may be written with or without. */
const plain = (text: string) =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/\br-(?=\d)/g, 'r')
