import { findUnit, preferredUnit, type UnitPreference } from '@chargewright/quantity'
import { type ReadingId, readingKind } from '@chargewright/visit'
import { type Meaning, unitsFor } from './recording.ts'

/** Words by which a column is recognised, the most telling first; the first that fits is the guess. */
const NAMES: readonly (readonly [RegExp, ReadingId])[] = [
  [/\b(wet.?bulb|wb)\b/i, 'return-air-wet-bulb'],
  [
    /\b(low|suction|lp|p1|ls)\b.*(press|\bpsi|\bbar|kpa|\bp\b)|press.*\b(low|suction)\b|^(lp|p1)\b/i,
    'suction-pressure',
  ],
  [/\b(high|liquid|hp|p2|hs)\b.*(press|\bpsi|\bbar|kpa|\bp\b)|press.*\b(high|liquid)\b|^(hp|p2)\b/i, 'liquid-pressure'],
  [/\bdischarge\b/i, 'discharge-temperature'],
  [/\bsuction\b|^t1\b/i, 'suction-temperature'],
  [/\bliquid\b|^t2\b/i, 'liquid-temperature'],
  [/\b(outdoor|outside|ambient|condenser)\b.*\b(in|entering|air)?\b/i, 'condenser-entering-air'],
  [/\bsupply\b(?!.*\bvolt)/i, 'supply-air-dry-bulb'],
  [/\bbox\b/i, 'box-temperature'],
  [/\b(humidity|rh)\b/i, 'return-air-humidity'],
  [/\b(return|room|indoor)\b/i, 'return-air-dry-bulb'],
  [/\b(amps?|current)\b/i, 'compressor-current'],
  [/\bA\b/, 'compressor-current'],
  [/\b(volts?|voltage)\b/i, 'supply-voltage'],
  [/\bV\b/, 'supply-voltage'],
  [/\b(airflow|cfm)\b/i, 'airflow'],
]

/** What a column probably is, by its header; undefined where no word of it is known. It is shown, and changed by hand. */
export function guessMeaning(header: string, units: UnitPreference): Meaning | undefined {
  const what = NAMES.find(([words]) => words.test(header.replaceAll(/[_]/g, ' ')))?.[1]
  return what && { what, unit: guessUnit(header, what, units) }
}

/** The unit that the header names, else the one that this device prefers. */
export function guessUnit(header: string, what: ReadingId, units: UnitPreference): string {
  const words = header.split(/[\s()[\],;/]+/).filter((word) => word !== '')
  for (const { symbol, dimension } of unitsFor(what)) {
    if (words.some((word) => findUnit(word, dimension)?.symbol === symbol)) return symbol
  }
  return preferredUnit(readingKind(what).accepts[0]!, units).symbol
}
