import { type ReadonlySignal, signal } from '@preact/signals'

/** Where in the app one is. Kept in the address, so that the way back is the browser's own. */
export type Route = { readonly kind: 'start' } | { readonly kind: 'visit'; readonly id: string }

/** An id from a hostile file may hold half a character, which no address can. */
export const visitAddress = (id: string): string => `#/visit/${encodeURIComponent(id.replace(/\p{Cs}/gu, '\ufffd'))}`
export const START_ADDRESS = '#/'

export function routeOf(hash: string): Route {
  const [, encoded] = /^#\/visit\/(.+)$/.exec(hash) ?? []
  if (encoded === undefined) return { kind: 'start' }
  try {
    return { kind: 'visit', id: decodeURIComponent(encoded) }
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
