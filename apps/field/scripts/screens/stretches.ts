import { BESIDE, DEVICE, PRACTICE } from './other-screens.ts'
import { PICTURES } from './picture-screens.ts'
import type { Stretch } from './screen.ts'
import { START } from './start-screens.ts'
import { STEPS } from './step-screens.ts'
import { ENTRY, FINDINGS } from './visit-screens.ts'

/** Every screen, in the order of a visit. */
export const STRETCHES: readonly Stretch[] = [START, FINDINGS, ENTRY, STEPS, PICTURES, BESIDE, PRACTICE, DEVICE]
