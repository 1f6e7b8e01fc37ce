import { createContext } from 'preact'
import { useContext } from 'preact/hooks'
import { type Drafts, memoryDrafts } from '../store/drafts.ts'

/** Where half-typed texts are kept, set where the page starts. */
export const DraftsContext = createContext<Drafts>(memoryDrafts())

/** The page that a field stands on: the id of the visit or the system, since fields of two visits have the same name. */
export const DraftPage = createContext('')

/** The draft of one field: what was typed there before the page was closed, and the way to keep what is typed now. */
export function useDraftOf(field: string) {
  const drafts = useContext(DraftsContext)
  const place = `${useContext(DraftPage)}/${field}`
  return { typedBefore: drafts.get(place), keep: (text: string | undefined) => drafts.put(place, text) }
}
