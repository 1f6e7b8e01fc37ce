/** How far off a plain manometer may be: Pa, and the fraction of its reading. */
export const PLAIN_MANOMETER = { limit: 1, fraction: 0.02, source: 'hand-held manometer, common practice' } as const

/** The same of an anemometer, m/s. */
export const PLAIN_ANEMOMETER = { limit: 0, fraction: 0.03, source: 'hand-held anemometer, common practice' } as const
