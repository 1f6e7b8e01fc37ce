import {
  type Evidence,
  inEnglish,
  say,
  sourceInWords,
  teller,
  type UnitPreference,
  verbatim,
  type Words,
} from '@chargewright/quantity'
import { wrap } from './wrap.ts'

/** Writes the evidence trees of one page. Sources are numbered as they come up and listed once, at its end. */
export interface EvidenceWriter {
  /** A statement and, indented under it, what it rests on, down to what was typed in. */
  tree(evidence: Evidence, indent: number): readonly string[]
  /** The number of a source in brackets, to stand behind what it supports, after a space that does not break. */
  cite(source: string): string
  sources(): readonly string[]
}

const STEP = 2
/** Deeper branches are not indented further, so that a line keeps room for words. */
const MOST_STEPS = 6

export function evidenceWriter(units: UnitPreference, width: number, words: Words = inEnglish): EvidenceWriter {
  const tell = teller(units, words)
  const sources: string[] = []
  const written = new Set<Evidence>()

  const cite = (source: string) => {
    if (!sources.includes(source)) sources.push(source)
    return `[${sources.indexOf(source) + 1}]`
  }
  const branch = (evidence: Evidence, indent: number, depth: number): readonly string[] => {
    const space = ' '.repeat(indent + STEP * Math.min(depth, MOST_STEPS))
    const isOpened = evidence.from.length > 0 && written.has(evidence)
    const mark = evidence.source === undefined ? '' : `\u00a0${cite(evidence.source)}`
    const hanging = `${space}  `
    // What was already opened further up is named again and not opened again.
    if (isOpened) return wrap(tell(say`${verbatim(tell(evidence.statement) + mark)} (as above)`), width, space, hanging)
    written.add(evidence)
    return [
      ...wrap(tell(evidence.statement) + mark, width, space, hanging),
      ...evidence.from.flatMap((part) => branch(part, indent, depth + 1)),
    ]
  }
  return {
    tree: (evidence, indent) => branch(evidence, indent, 0),
    cite,
    sources: () => sources.map((source) => sourceInWords(source, words)),
  }
}
