import type { Locator, Page } from '@playwright/test'

/** One screen of the app, as it is kept in docs/screens. */
export interface Screen {
  /** Name of its file, and what it is called by. */
  readonly name: string
  /** What it shows, in one line. */
  readonly about: string
  /** The way to it from an empty app; what it gives back is the part to show, else it is what is seen first. */
  readonly open: (page: Page) => Promise<Locator | undefined>
  /** The page from top to bottom, too. */
  readonly whole?: true
  readonly theme?: 'dim'
  readonly language?: 'es'
}

/** Screens that belong to one stretch of a visit. */
export interface Stretch {
  readonly title: string
  readonly screens: readonly Screen[]
}
