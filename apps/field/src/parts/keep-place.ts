/**
 * Keeps the place on the page of whoever works by keyboard. A key that goes away with its press, is folded away or has
 * nothing left to do would take the focus with it, and the next Tab would begin at the top: what stood around it gets
 * the focus.
 */
export function keepPlace(page: Document): void {
  let left: readonly HTMLElement[] = []
  page.addEventListener('focusin', ({ target }) => {
    left = target instanceof HTMLElement ? [target, ...around(target)] : []
  })
  const look = () => {
    const [last, ...outer] = left
    const isElsewhere = page.activeElement !== page.body && page.activeElement !== last
    if (!last || isElsewhere || !isGone(last)) return
    left = []
    const place = outer.find((part) => !isGone(part) && part.childElementCount > 0) ?? page.querySelector('h1')
    if (!(place instanceof HTMLElement)) return
    if (!place.hasAttribute('tabindex')) place.tabIndex = -1
    place.focus({ preventScroll: true })
  }
  const wanted = { childList: true, subtree: true, attributes: true, attributeFilter: ['disabled', 'open'] }
  new MutationObserver(look).observe(page.body, wanted)
}

const isGone = (element: HTMLElement) => !element.isConnected || element.matches(`:disabled, ${FOLDED}, ${FOLDED} *`)

const FOLDED = 'details:not([open]) > :not(summary)'

/** The parts that an element stands in, from the innermost to those of the page itself, which are too wide to be a place. */
function around(element: HTMLElement): readonly HTMLElement[] {
  const outer = element.parentElement
  return outer && !outer.matches('main,body,#app') ? [outer, ...around(outer)] : []
}
