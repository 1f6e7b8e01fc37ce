import type { NextEntry } from '@chargewright/charging'
import { afterPress } from './after-press.ts'

/** The id of the field in which an entry is made. */
export function entryId({ kind, what }: NextEntry['entry']): string {
  return kind === 'reading' || kind === 'observation' ? `${kind}-${what}` : `system-${what}`
}

/** The id of a line of the log. An event's own id may be any text; its place is a number. */
export const logLineId = (position: number): string => `log-${position}`

/** The field in which the next weighed step is entered. */
export const MOVED_MASS = 'moved-mass'

/** The heading over pressure test, evacuation, cylinders and weigh-in. */
export const BEFORE_CHARGING = 'before-charging'

/** The heading over the service record. */
export const RECORD = 'record'

/** Goes to an element: unfolds what hides it, brings it into view and gives it the focus. */
export function reveal(id: string): void {
  const element = document.getElementById(id)
  if (!element) return
  for (let fold = element.closest('details'); fold; fold = fold.parentElement?.closest('details') ?? null) {
    fold.open = true
  }
  const show = () => element.scrollIntoView({ block: 'center' })
  show()
  element.focus({ preventScroll: true })
  // The keys of the field that was left fold away above it once the press is over: its place is taken again.
  afterPress(() => requestAnimationFrame(() => document.activeElement === element && show()))
}

/**
 * Gives the focus to the field after this one, in the order of the page; from a reading that is taken again, to the next
 * that has to be.
 */
export function focusNextEntry(from: HTMLElement): void {
  // The last one in a line of the log is followed by none: the way leads back to the line.
  const page = from.closest('.log-line') ?? document
  const entries = [...page.querySelectorAll<HTMLElement>('[data-entry]')]
  const later = entries.slice(entries.indexOf(from) + 1)
  const firstOf = (wanted: readonly HTMLElement[]) => wanted.find((entry) => entry.checkVisibility())
  const next = (isOutdated(from) && firstOf(later.filter(isOutdated))) || firstOf(later)
  if (next) next.focus()
  else from.blur()
}

const isOutdated = (entry: HTMLElement) => entry.closest('[data-outdated="true"]') !== null

/** Gives the focus to the blank after this one in the same form; after the last one the keypad makes way for the key below. */
export function focusNextBlank(from: HTMLInputElement): void {
  const blanks = [...(from.form?.querySelectorAll<HTMLElement>('[data-blank]') ?? [])]
  const next = blanks[blanks.indexOf(from) + 1]
  if (next) next.focus()
  else from.blur()
}
