import { FINDINGS, type FindingKind } from '@chargewright/charging'
import { t } from '../words/t.ts'
import { FindingMark } from './finding-mark.tsx'
import { reveal } from './reveal.ts'

interface Props {
  /** Nothing before the first answer, for which its room is kept. */
  readonly kind: FindingKind | undefined
}

/** The finding as it changes, in the bar of a visit, and the way up to it. */
export function FindingKey({ kind }: Props) {
  if (kind === undefined) return <span class="bar-finding-room" />
  return (
    <button
      type="button"
      class="bar-finding"
      aria-label={t('Finding: {0}. Go to it', t(FINDINGS[kind]))}
      onClick={() => reveal('finding')}
    >
      <FindingMark kind={kind} />
      <span>{t(FINDINGS[kind])}</span>
    </button>
  )
}
