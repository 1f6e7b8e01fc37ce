import type { VisitEvent } from '@chargewright/visit'
import { t } from '../words/t.ts'
import { factInWords } from './fact-in-words.ts'

/** An event as a few words on one line. */
export function eventInWords(event: VisitEvent): string {
  if (event.kind !== 'correction') return line(event)
  return event.replacement ? t('the correction to {0}', line(event.replacement)) : t('a withdrawal')
}

function line(fact: Parameters<typeof factInWords>[0]): string {
  const { what, typed } = factInWords(fact)
  return `${what} “${typed.length > LONGEST ? `${typed.slice(0, LONGEST)}…` : typed}”`
}

const LONGEST = 60
