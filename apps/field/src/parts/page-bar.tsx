import type { ComponentChildren } from 'preact'
import { t } from '../words/t.ts'

interface Props {
  readonly name: string
  /** The way back: where it leads, and its name. */
  readonly back: { readonly address: string; readonly name: string }
  /** What is known of it, in a few words. */
  readonly about: string
  /** Absent where there is nothing to undo. */
  readonly undo: (() => void) | undefined
  /** What else stays in sight. */
  readonly children?: ComponentChildren
}

/** Stays in sight while one walks down a page: where one is, the way back, and the way to take the last entry back. */
export function PageBar({ name, back, about, undo, children }: Props) {
  return (
    <header class="visit-head">
      <div class="bar visit-bar">
        <a class="back" href={back.address}>
          <svg viewBox="0 0 24 24" aria-hidden="true">
            <path d="M15 4L7 12L15 20" />
          </svg>
          <span class="unseen">{back.name}</span>
        </a>
        <h1 class="visit-name" tabIndex={-1}>
          {name}
        </h1>
        <button type="button" class="bar-undo" disabled={undo === undefined} onClick={undo}>
          <svg viewBox="0 0 24 24" aria-hidden="true">
            <path d="M10 4L4 10L10 16M4 10H15C18.5 10 20 12.5 20 15C20 17.5 18.5 20 15 20H10" />
          </svg>
          <span class="unseen">{t('Undo the last entry')}</span>
        </button>
        {children}
      </div>
      <p class="visit-head-about">{about}</p>
    </header>
  )
}
