import normal from '../data/normal.json' with { type: 'json' }
import type { Judge } from '../verdict.ts'
import { type Grounds, informedDiagnosis, ourDiagnosis } from './our-diagnosis.ts'
import { regulation } from './regulation.ts'
import { signRules } from './sign-rules.ts'
import { virtualSensor } from './virtual-sensor.ts'

/** The three public methods, and ours last. */
export const judges = (grounds: Grounds): readonly Judge[] => [
  regulation,
  virtualSensor,
  signRules(normal.models),
  ourDiagnosis(grounds),
]

/** Ours once more, where it is told more than an ordinary visit tells. */
export const informed = (grounds: Grounds): readonly Judge[] => [
  informedDiagnosis(grounds, 'what it asks for is read', { chart: false, answered: true }),
  informedDiagnosis(grounds, 'and the maker’s chart is known', { chart: true, answered: true }),
]
