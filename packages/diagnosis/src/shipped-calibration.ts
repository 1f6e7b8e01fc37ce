import shipped from './calibration/shipped.json' with { type: 'json' }
import type { Calibration } from './calibration.ts'

/** Learnt from simulated systems of another model family than the twin's, for the twin as it is: `npm run calibrate`. */
export const SHIPPED_CALIBRATION: Calibration = shipped
