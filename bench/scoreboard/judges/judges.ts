import normal from '../data/normal.json' with { type: 'json' }
import type { Judge } from '../verdict.ts'
import { type Grounds, ourDiagnosis } from './our-diagnosis.ts'
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
