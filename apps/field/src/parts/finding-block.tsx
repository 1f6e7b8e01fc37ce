import { type Assessment, FINDINGS, METHODS } from '@chargewright/charging'
import { render, type UnitPreference } from '@chargewright/quantity'
import { BandPicture } from './band-picture.tsx'
import { EvidenceList } from './evidence-list.tsx'
import { EvidenceTree } from './evidence-tree.tsx'
import { FindingMark } from './finding-mark.tsx'
import { NextEntries } from './next-entries.tsx'
import { MOVED_MASS, reveal } from './reveal.ts'

interface Props {
  readonly assessment: Assessment
  readonly units: UnitPreference
  readonly showEntry: (eventId: string) => void
}

/** The answer: its sign, its word and its sentence; under them the next act and the reasons. */
export function FindingBlock({ assessment, units, showEntry }: Props) {
  const { finding, method } = assessment
  const sentence = render(finding.sentence, units)
  const toldAbove = [sentence, ...finding.next.map(({ why }) => render(why, units))]
  const reasons = finding.reasons.filter(
    ({ statement, from }) => from.length > 0 || !toldAbove.some((text) => text.includes(render(statement, units))),
  )
  return (
    <section class="finding" aria-labelledby="finding">
      <div class="finding-head" aria-live="polite" aria-atomic="true">
        <div class="finding-sign">
          <FindingMark kind={finding.kind} />
          <span class="finding-word">{FINDINGS[finding.kind]}</span>
        </div>
        <h2 id="finding" class="finding-sentence" tabIndex={-1}>
          {sentence}
        </h2>
      </div>
      {finding.steps.length > 0 && (
        <ol class="steps" aria-label="What to do">
          {finding.steps.map((step) => (
            <li key={step.template}>{render(step, units)}</li>
          ))}
        </ol>
      )}
      {finding.dose && (
        <button type="button" class="act" onClick={() => reveal(MOVED_MASS)}>
          Enter what the scale showed
        </button>
      )}
      <NextEntries next={finding.next} toldAbove={sentence} units={units} />
      <BandPicture assessment={assessment} units={units} />
      {reasons.length > 0 && (
        <>
          <h3>Why</h3>
          <EvidenceList evidence={reasons} units={units} showEntry={showEntry} />
        </>
      )}
      {method && (
        <>
          <h3>Method: {METHODS[method.id]}</h3>
          <EvidenceTree evidence={method.because} units={units} showEntry={showEntry} />
        </>
      )}
    </section>
  )
}
