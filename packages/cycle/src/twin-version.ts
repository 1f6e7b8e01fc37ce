/**
 * Version of the twin's physics and habits. What was learnt about its errors holds for this version alone; a test of
 * the diagnosis pins readings to it, so that a change that moves them is not made unawares.
 */
export const TWIN_VERSION = '1'
