import type { ComponentChildren } from 'preact'
import { t } from '../words/t.ts'

interface Props {
  readonly trouble: string | undefined
  /** What was kept before, and is still used. */
  readonly stillCounts?: string | undefined
  /** What stands in the field was typed before the page was closed. */
  readonly isLeftOver?: boolean
  readonly understood?: string | undefined
  /** What is doubtful about it, before it is kept. */
  readonly question?: string | undefined | false
  readonly remark?: string | undefined
  /** That the entry is from before the last change to the system, in words. */
  readonly outdated?: string | undefined
  readonly absent: string | undefined
  readonly children?: ComponentChildren
}

/** What stands under a field: what is wrong with it first, else what was understood, else what it means. */
export function EntryMessage({
  trouble,
  stillCounts,
  isLeftOver = false,
  understood,
  question,
  remark,
  outdated,
  absent,
  children,
}: Props) {
  if (trouble !== undefined) {
    return (
      <p class="trouble" role="alert">
        {trouble}
        {stillCounts !== undefined && t(' – “{0}” still counts', stillCounts)}
      </p>
    )
  }
  if (understood !== undefined || isLeftOver) {
    return (
      <>
        {isLeftOver && (
          <p class="doubt">{t('Typed before the page was closed, and not entered. Go on here, then press Enter.')}</p>
        )}
        {understood !== undefined && (
          <p>
            {t('reads as')} <strong>{understood}</strong>
          </p>
        )}
        {question && <p class="doubt">{question}</p>}
      </>
    )
  }
  return (
    <>
      {remark !== undefined && <p class="doubt">{remark}</p>}
      {outdated && <p class="outdated">{outdated}</p>}
      {absent !== undefined && <p class="absent">{t(absent)}</p>}
      {children}
    </>
  )
}
