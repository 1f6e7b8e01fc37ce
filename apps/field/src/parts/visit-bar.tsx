import { FINDINGS, type FindingKind } from '@chargewright/charging'
import { t } from '../words/t.ts'
import { FindingMark } from './finding-mark.tsx'
import { reveal } from './reveal.ts'

interface Props {
  /** Absent where there is nothing to undo. */
  readonly undo: (() => void) | undefined
  readonly name: string
  /** The way back: where it leads, and its name. */
  readonly back: { readonly address: string; readonly name: string }
  /** Refrigerant, device, capacity: what is known of them. */
  readonly about: string
  /** Absent until there is one. */
  readonly finding: FindingKind | undefined
}

/** Stays in sight while one walks down the page: where one is, the way back, and the finding as it changes. */
export function VisitBar({ name, back, about, finding, undo }: Props) {
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
        {finding && (
          <button
            type="button"
            class="bar-finding"
            aria-label={t('Finding: {0}. Go to it', t(FINDINGS[finding]))}
            onClick={() => reveal('finding')}
          >
            <FindingMark kind={finding} />
            <span>{t(FINDINGS[finding])}</span>
          </button>
        )}
      </div>
      <p class="visit-head-about">{about}</p>
    </header>
  )
}
