import { problemInWords } from '../words/problem-in-words.ts'
import { t } from '../words/t.ts'
import './steps.css'
import { EvidenceTree } from '../parts/evidence-tree.tsx'
import { MOVED_MASS, reveal } from '../parts/reveal.ts'
import { inWords, quantityInWords } from '../session/in-words.ts'
import { useAnswer } from '../worker/use-answer.ts'
import { AddedParts } from './added-parts.tsx'
import { GearForm } from './gear-form.tsx'
import { Procedure } from './procedure.tsx'
import { StepCautions } from './step-cautions.tsx'
import type { StepProps } from './step-place.tsx'

/** The charge by weight: how much and why so much, what the scale makes of it, and the sequence with its waits and stops. */
export function WeighInStep({ visit, events, units, record, showEntry }: StepProps) {
  const { answer } = useAnswer('weighIn', events)
  const shown = { units, showEntry }
  return (
    <>
      {answer && !answer.ok && (
        <>
          <p>{t('Still missing:')}</p>
          {answer.error.map((problem) => (
            <p key={problemInWords(problem)} class="doubt">
              {problemInWords(problem)}
            </p>
          ))}
        </>
      )}
      {answer?.ok && (
        <>
          <StepCautions cautions={answer.value.assessment.cautions} units={units} />
          <div class="verdict">
            <p class="verdict-word" role="status">
              <strong>{answer.value.toGoIn ? t('to go in') : t('by weight')}</strong>
            </p>
            <p class="verdict-sentence">
              {answer.value.toGoIn
                ? quantityInWords(answer.value.toGoIn, units)
                : inWords(answer.value.assessment.finding.sentence, units)}
            </p>
            {answer.value.stillCharged && (
              <p>{t('This is for when it is empty: the sequence tells how it gets there.')}</p>
            )}
            <EvidenceTree evidence={answer.value.charge.evidence} {...shown} />
            {Object.values(answer.value.measured ?? {}).map(({ evidence }) => (
              <EvidenceTree key={evidence.statement.template} evidence={evidence} {...shown} />
            ))}
          </div>
          <Procedure steps={answer.value.procedure} units={units} />
          {answer.value.toGoIn && (
            <button type="button" class="act" onClick={() => reveal(MOVED_MASS)}>
              {t('Enter what the scale showed')}
            </button>
          )}
        </>
      )}
      <details class="fold">
        <summary>{t('Parts that were added: receiver, accumulator, heat exchanger')}</summary>
        <AddedParts
          parts={visit.system.facts.accessories ?? []}
          units={units}
          state={(accessories) => record({ kind: 'system-described', facts: { accessories } })}
        />
      </details>
      <details class="fold">
        <summary>{t('Scale, hose and charging cylinder')}</summary>
        <GearForm initial={lastGear(visit)} units={units} record={record} />
      </details>
    </>
  )
}

/** What was told last of the gear. */
const lastGear = ({ log }: StepProps['visit']) =>
  log.flatMap(({ holds }) => (holds?.kind === 'weighing-gear' ? [holds] : [])).at(-1)
