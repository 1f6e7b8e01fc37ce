import { FINDINGS, type FindingKind } from '@chargewright/charging'
import { START_ADDRESS } from '../session/route.ts'
import { FindingMark } from './finding-mark.tsx'
import { reveal } from './reveal.ts'

interface Props {
  readonly name: string
  /** Refrigerant, device, capacity: what is known of them. */
  readonly about: string
  readonly finding: FindingKind
}

/** Stays in sight while one walks down the page: where one is, the way back, and the finding as it changes. */
export function VisitBar({ name, about, finding }: Props) {
  return (
    <header class="bar visit-bar">
      <a class="back" href={START_ADDRESS}>
        <svg viewBox="0 0 24 24" aria-hidden="true">
          <path d="M15 4L7 12L15 20" />
        </svg>
        <span class="unseen">All visits</span>
      </a>
      <div class="visit-name">
        <h1 tabIndex={-1}>{name}</h1>
        <p>{about}</p>
      </div>
      <button
        type="button"
        class="bar-finding"
        aria-label={`Finding: ${FINDINGS[finding]}. Go to it`}
        onClick={() => reveal('finding')}
      >
        <FindingMark kind={finding} />
        <span>{FINDINGS[finding]}</span>
      </button>
    </header>
  )
}
