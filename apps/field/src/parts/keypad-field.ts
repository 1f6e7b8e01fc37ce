import type { Dimension, UnitPreference } from '@chargewright/quantity'
import { signal } from '@preact/signals'
import type { RefObject } from 'preact'
import { useLayoutEffect } from 'preact/hooks'
import { placeToType } from '../session/with-unit.ts'
import { afterPress } from './after-press.ts'

/** A field that has the focus and takes a quantity. */
export interface KeypadField {
  readonly input: HTMLInputElement
  readonly dimension: Dimension
  readonly units: UnitPreference
  readonly text: string
  /** Takes the value that stood there before, where there is one. */
  readonly asBefore: (() => void) | undefined
  readonly next: () => void
}

/** A page has one focus, so there is one keypad for all its fields. */
export const keypadField = signal<KeypadField | undefined>(undefined)

/** Whether a finger is at work; a mouse and a real keyboard need no keys on the glass. */
export const isTouched = signal(false)

/** Which keys a finger gets: ours, or those of the platform, which has letters. */
export const fingerKeys = signal<'keypad' | 'platform'>('keypad')

/** Offers a field to the keypad while it has the focus. Spread what it returns over the input. */
export function useKeypad(input: RefObject<HTMLInputElement | null>, field: Omit<KeypadField, 'input'>) {
  const offer = () => {
    if (input.current) keypadField.value = { input: input.current, ...field }
  }
  // What it says of itself changes with every key.
  useLayoutEffect(() => {
    if (document.activeElement === input.current) offer()
  })
  useLayoutEffect(() => () => withdraw(input.current), [])
  return {
    inputMode: isTouched.value && fingerKeys.value === 'keypad' ? ('none' as const) : ('text' as const),
    onFocusIn: offer,
    // Not while what took the focus is still being pressed: the room of the keypad would go, and the page move under it.
    onFocusOut: () => {
      const left = input.current
      afterPress(() => document.activeElement !== left && withdraw(left))
    },
  }
}

function withdraw(input: HTMLInputElement | null): void {
  if (keypadField.value?.input === input) keypadField.value = undefined
}

/** Follows what points at the page: a finger or pen, or a mouse. */
export function followTouch(window: Window): () => void {
  isTouched.value = window.matchMedia('(pointer: coarse)').matches
  const follow = ({ pointerType, target }: PointerEvent) => {
    const isKey = target instanceof Element && target.closest('.keypad') !== null
    if (isKey) return
    // A finger finds the keypad there when its field gets the focus; a mouse has time for it to go.
    if (pointerType !== 'mouse') isTouched.value = true
    else
      afterPress(() => {
        isTouched.value = false
      })
  }
  window.addEventListener('pointerdown', follow, { capture: true })
  return () => window.removeEventListener('pointerdown', follow, { capture: true })
}

/** Puts a text into a field as if it had been typed there. */
export function typeInto(input: HTMLInputElement, text: string, cursor = text.length): void {
  // Sets the cursor behind the text by itself; to ask for its place lays out the whole page.
  input.value = text
  if (cursor !== text.length) input.setSelectionRange(cursor, cursor)
  input.dispatchEvent(new Event('input', { bubbles: true }))
}

/** Puts a whole text into a field, the cursor where the next digit goes. */
export const typeWhole = (input: HTMLInputElement, text: string): void => typeInto(input, text, placeToType(text))
