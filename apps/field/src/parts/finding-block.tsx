import { type Assessment, FINDINGS, METHODS } from '@chargewright/charging'
import type { UnitPreference } from '@chargewright/quantity'
import type { ComponentChildren } from 'preact'
import { inWords } from '../session/in-words.ts'
import { t } from '../words/t.ts'
import { BandPicture } from './band-picture.tsx'
import { EvidenceList } from './evidence-list.tsx'
import { FindingMark } from './finding-mark.tsx'
import { NextEntries } from './next-entries.tsx'

interface Props {
  readonly assessment: Assessment
  /** What to do now, the way to where it is entered, and the wait that goes on. */
  readonly doing: ComponentChildren
  readonly units: UnitPreference
  readonly showEntry: (eventId: string) => void
}

/** The answer: its sign, its word and its sentence; under them the next act and the reasons. */
export function FindingBlock({ assessment, doing, units, showEntry }: Props) {
  const { finding, method } = assessment
  const sentence = inWords(finding.sentence, units)
  // A step that a twin sized says first of all how far the way still is.
  const range = finding.dose?.interval && finding.dose.evidence.from[0]?.statement
  const steps = finding.steps.map((step) => inWords(step, units))
  const toldAbove = [sentence, ...finding.next.map(({ why }) => inWords(why, units))]
  const isTold = (reason: string) => toldAbove.some((text) => text.includes(reason) || reason.includes(text))
  const reasons = finding.reasons.filter(({ statement, from }) => from.length > 0 || !isTold(inWords(statement, units)))
  return (
    <section class="finding" aria-labelledby="finding">
      <div class="finding-head" aria-live="polite" aria-atomic="true">
        <div class="finding-sign">
          <FindingMark kind={finding.kind} />
          <span class="finding-word">{t(FINDINGS[finding.kind])}</span>
        </div>
        <h2 id="finding" class="finding-sentence" tabIndex={-1}>
          {sentence}
        </h2>
      </div>
      {range && <p class="dose-range">{inWords(range, units)}</p>}
      {doing}
      <NextEntries next={finding.next} toldAbove={[sentence, ...steps]} units={units} />
      <BandPicture assessment={assessment} units={units} />
      {reasons.length > 0 && (
        <>
          <h3>{t('Why')}</h3>
          <EvidenceList evidence={reasons} units={units} showEntry={showEntry} />
        </>
      )}
      {method && (
        <>
          <h3>{t('Method: {0}', t(METHODS[method.id]))}</h3>
          <EvidenceList evidence={[method.because]} units={units} showEntry={showEntry} />
        </>
      )}
    </section>
  )
}
