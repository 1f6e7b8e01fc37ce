import safetyFile from '../../data/facts/safety.json' with { type: 'json' }
import type { Fact } from './fact.ts'

/** Letter: toxicity. Figure: flammability, from none (1) over hardly (2L) and flammable (2) to highly flammable (3). */
export type SafetyClass = 'A1' | 'A2L' | 'A2' | 'A3' | 'B1' | 'B2L' | 'B2' | 'B3'

export interface SafetyFacts {
  readonly safetyClass?: Fact<SafetyClass>
  readonly lowerFlammableLimit_kg_m3?: Fact<number>
  readonly lowerFlammableLimit_volumePercent?: Fact<number>
  /** Refrigerant concentration limit. */
  readonly concentrationLimit_kg_m3?: Fact<number>
  readonly exposureLimit_ppm?: Fact<number>
  /** The most that may leak into a room without harm. */
  readonly practicalLimit_kg_m3?: Fact<number>
}

interface Row {
  readonly name: string
  readonly class: string
  readonly lowerFlammableLimit_kg_m3?: number
  readonly lowerFlammableLimit_volumePercent?: number
  readonly concentrationLimit_kg_m3?: number
  readonly exposureLimit_ppm?: number
  readonly practicalLimit_kg_m3?: number
}

const byName = new Map((safetyFile.rows as readonly Row[]).map((row) => [row.name, row]))
const CONFIRMED = safetyFile.status !== 'REMEMBERED'

/** What is known of the safety of a designated refrigerant; nothing is derived from components. */
export function safetyFacts(name: string): SafetyFacts {
  const row = byName.get(name)
  if (!row) return {}
  const { sources } = safetyFile
  const fact = <Key extends string>(key: Key, value: number | undefined, source: string) =>
    value === undefined ? {} : ({ [key]: { value, source, confirmed: CONFIRMED } } as Record<Key, Fact<number>>)
  return {
    safetyClass: { value: row.class as SafetyClass, source: sources.class, confirmed: CONFIRMED },
    ...fact('lowerFlammableLimit_kg_m3', row.lowerFlammableLimit_kg_m3, sources.lowerFlammableLimit),
    ...fact('lowerFlammableLimit_volumePercent', row.lowerFlammableLimit_volumePercent, sources.lowerFlammableLimit),
    ...fact('concentrationLimit_kg_m3', row.concentrationLimit_kg_m3, sources.concentrationLimit),
    ...fact('exposureLimit_ppm', row.exposureLimit_ppm, sources.exposureLimit),
    ...fact('practicalLimit_kg_m3', row.practicalLimit_kg_m3, sources.practicalLimit),
  }
}
