import { expect, test } from 'vitest'
import { breaksBefore, KEPT } from './breaks-before.ts'

const at = (top: number, headlineLevel?: number) => ({
  startPosition: { top },
  ...(headlineLevel === undefined ? {} : { headlineLevel }),
})

test.each([
  ['the note above the signatures', [at(40, KEPT.signature)], true],
  ['no more than the lines to sign on', [at(40), at(44)], true],
  ['the end of the sources themselves', [at(40, KEPT.sources), at(90, KEPT.signature)], false],
  ['nothing', [], false],
] as const)('[property] where %s lies on the next page, the sources go there or stay', (_, nextPage, goes) => {
  const around = {
    getPreviousNodesOnPage: () => [at(40)],
    getFollowingNodesOnPage: () => [at(620, KEPT.sources)],
    getNodesOnNextPage: () => [...nextPage, at(760, KEPT.foot)],
  }
  expect(breaksBefore(at(600, KEPT.sourcesHeading), around)).toBe(goes)
})
