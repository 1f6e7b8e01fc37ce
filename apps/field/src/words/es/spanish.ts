import type { Catalogue } from '../t.ts'
import { APP } from './app.ts'

/** The Spanish of the trade, by areas. Which word stands for what is settled in `glossary.ts`. */
export const SPANISH: Catalogue = { ...APP }
