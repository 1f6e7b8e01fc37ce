import { sourceInWords as inLanguage } from '@chargewright/quantity'
import { t } from './t.ts'

/** What a limit or a formula rests on, in the language of the page. */
export const sourceInWords = (source: string): string => inLanguage(source, t)
