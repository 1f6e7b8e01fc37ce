/** What does not stand alone on a page; the foot of a page is told from what stands on it. */
export const KEPT = { section: 1, sourcesHeading: 2, sources: 3, signature: 4, foot: 5 } as const

/**
 * What the writer tells of a node after it laid out the pages. Of what it keeps whole (rows of a table) it tells the page
 * on which there was no room for it.
 */
interface Laid {
  readonly headlineLevel?: number
  readonly startPosition: { readonly top: number }
}

interface Around {
  getPreviousNodesOnPage(): readonly Laid[]
  getFollowingNodesOnPage(): readonly Laid[]
  getNodesOnNextPage(): readonly Laid[]
}

/** Parts of a section, such as cells and lines, up to which it is moved: a longer one would leave a page half empty. */
const SHORT = 60

/**
 * Whether a node goes to the next page: a heading goes where the first thing under it went, and a signature takes along
 * the end of what it is set under, so that nobody signs an empty page.
 */
export function breaksBefore({ headlineLevel, startPosition }: Laid, around: Around): boolean {
  if (headlineLevel === undefined || headlineLevel === KEPT.sources || headlineLevel === KEPT.foot) return false
  // At the top of a page already, it has nowhere to go.
  if (around.getPreviousNodesOnPage().length === 0) return false
  const [next] = around.getNodesOnNextPage().filter(isNoFoot)
  if (headlineLevel === KEPT.signature) return next !== undefined
  const following = around.getFollowingNodesOnPage().filter(isNoFoot)
  if (isAlone(startPosition.top, following)) return true
  // Asked once only: where as yet no more than the lines to sign on lie over, their cells bear no level.
  if (headlineLevel === KEPT.sourcesHeading) return next !== undefined && next.headlineLevel !== KEPT.sources
  const closes = next?.headlineLevel !== undefined && next.headlineLevel !== KEPT.section
  const isLast = following.every((each) => each.headlineLevel !== KEPT.section)
  return closes && isLast && following.length < SHORT
}

const isNoFoot = ({ headlineLevel }: Laid) => headlineLevel !== KEPT.foot

/** What follows on the page may stand beside it, in a column that begins higher. */
const isAlone = (top: number, [next]: readonly Laid[]): boolean => !next || next.startPosition.top < top
