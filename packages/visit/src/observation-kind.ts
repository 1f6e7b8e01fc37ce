/** One thing that is seen rather than measured: a label and the answers it can have, in words. */
export interface ObservationKind {
  readonly label: string
  readonly answers: Readonly<Record<string, string>>
  readonly tells: string
}

/** Every observation the product knows. */
export const OBSERVATIONS = {
  'charge-state': {
    label: 'Charge in the system',
    answers: { charged: 'holds a charge', evacuated: 'empty and evacuated', lost: 'lost its charge suddenly' },
    tells: 'whether to weigh in or to adjust',
  },
  'running-time': {
    label: 'Running without a change',
    answers: { settled: 'at least 15 minutes', 'not-settled': 'less than 15 minutes' },
    tells: 'whether the readings count',
  },
  'sight-glass': {
    label: 'Sight glass',
    answers: {
      clear: 'clear, full of liquid',
      bubbles: 'bubbles in the stream',
      'partly-filled': 'partly filled, no bubbles',
      empty: 'empty, or clear of liquid altogether',
    },
    tells: 'whether liquid alone reaches the valve',
  },
  'sight-glass-position': {
    label: 'Sight glass stands',
    answers: { 'before-drier': 'before the drier', 'after-drier': 'after the drier' },
    tells: 'whether the drier could make the bubbles',
  },
  'liquid-line-orientation': {
    label: 'Line at the glass',
    answers: { horizontal: 'horizontal', vertical: 'vertical' },
    tells: 'how to read a partly filled glass',
  },
  'bubbles-before-drier': {
    label: 'Electronic sight glass before drier',
    answers: { yes: 'bubbles', no: 'no bubbles' },
    tells: 'whether vapour leaves the receiver',
  },
  'bubbles-after-drier': {
    label: 'Electronic sight glass after drier',
    answers: { yes: 'bubbles', no: 'no bubbles' },
    tells: 'whether the drier makes vapour',
  },
  load: {
    label: 'Load on the evaporator',
    answers: { 'doors-open': 'doors held open', 'false-load': 'false load in the box', normal: 'as found' },
    tells: 'whether the valve stands wide open',
  },
  'air-filter': {
    label: 'Air filter and coil',
    answers: { clean: 'clean', dirty: 'dirty or blocked' },
    tells: 'little air',
  },
  'condenser-coil': {
    label: 'Condenser coil',
    answers: { clean: 'clean', dirty: 'dirty or blocked' },
    tells: 'poor heat rejection',
  },
  leak: {
    label: 'Leak check',
    answers: { found: 'leak found, not repaired', repaired: 'leak found and repaired', none: 'no leak found' },
    tells: 'where missing charge went',
  },
} as const satisfies Readonly<Record<string, ObservationKind>>

export type ObservationId = keyof typeof OBSERVATIONS

export type AnswerOf<Id extends ObservationId> = keyof (typeof OBSERVATIONS)[Id]['answers'] & string

export const OBSERVATION_IDS = Object.keys(OBSERVATIONS) as readonly ObservationId[]

/** The entry of an observation with its literal types widened. */
export const observationKind = (id: ObservationId): ObservationKind => OBSERVATIONS[id]

/** Whether a text is one of the answers that this observation can have. */
export function isAnswer<Id extends ObservationId>(id: Id, text: string): text is AnswerOf<Id> {
  return Object.hasOwn(OBSERVATIONS[id].answers, text)
}
