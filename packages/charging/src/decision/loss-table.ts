/**
 * What each mistake costs, in units of about one wasted hour. Own choice, with its reasoning; the ratios matter, not the
 * figures.
 */
export const LOSS = {
  /** Refrigerant the wrong way: it floods or starves the compressor, and must be undone. */
  harmfulAct: 10,
  /** Refrigerant for a fault that is not the charge: it hides the fault, which stays, and must be undone. */
  actOnOther: 6,
  /** Refrigerant into or out of a system that was right: undone by weighing, but it was right. */
  actOnSound: 5,
  /** A search for a fault that is not there; it ends with a part changed for nothing, or with no trust in the next finding. */
  falseAlarm: 5,
  /** A search for the wrong fault; the right one stays. */
  wrongName: 4,
  /** A fault that stays: the call comes again. */
  missedFault: 2,
  /** A charge that stays wrong: it is what the visit was for. */
  missedCharge: 5,
  /** One more reading or test, and the technician's patience; and where nothing is left to read, no answer at all. */
  oneMoreReading: 1.5,
} as const

/** A charge within this share of the right one is right: less makes no difference that anyone could find by readings. Own choice. */
export const RIGHT_WITHIN = 0.05
