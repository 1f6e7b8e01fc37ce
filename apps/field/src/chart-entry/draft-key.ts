import { createContext } from 'preact'

/** Under which drafts of this page are kept: the id of its visit. */
export const DraftKey = createContext('no visit')
