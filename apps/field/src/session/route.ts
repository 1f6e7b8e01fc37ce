import { type ReadonlySignal, signal } from '@preact/signals'

/** Where in the app one is. Kept in the address, so that the way back is the browser's own. */
export type Route =
  | { readonly kind: 'start' | 'new-system' }
  | { readonly kind: 'visit' | 'system'; readonly id: string }
  /** The practice bench, or one run on it. */
  | { readonly kind: 'practice'; readonly id?: string }

export const START_ADDRESS = '#/'
export const NEW_SYSTEM_ADDRESS = '#/new-system'
export const PRACTICE_ADDRESS = '#/practice'
export const practiceAddress = (id: string): string => `${PRACTICE_ADDRESS}/${inAddress(id)}`
export const visitAddress = (id: string): string => `#/visit/${inAddress(id)}`
export const systemAddress = (id: string): string => `#/system/${inAddress(id)}`

/** An id from a hostile file may hold half a character, which no address can. */
const inAddress = (id: string): string => encodeURIComponent(id.replace(/\p{Cs}/gu, '\ufffd'))

export function routeOf(hash: string): Route {
  if (hash === NEW_SYSTEM_ADDRESS) return { kind: 'new-system' }
  if (hash === PRACTICE_ADDRESS) return { kind: 'practice' }
  const [, kind, encoded] = /^#\/(visit|system|practice)\/(.+)$/.exec(hash) ?? []
  if (encoded === undefined) return { kind: 'start' }
  try {
    return { kind: kind as 'visit' | 'system' | 'practice', id: decodeURIComponent(encoded) }
  } catch {
    return { kind: 'start' }
  }
}

/** The route of a window, and its changes. */
export function routeSignal(window: Window): ReadonlySignal<Route> {
  const route = signal(routeOf(window.location.hash))
  window.addEventListener('hashchange', () => {
    route.value = routeOf(window.location.hash)
  })
  return route
}
