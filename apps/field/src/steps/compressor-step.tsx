import { problemInWords } from '../words/problem-in-words.ts'
import { spoken } from '../words/speak.ts'
import { t } from '../words/t.ts'
import './steps.css'
import { RATING_WORDS, SUPPLY_WORDS } from '@chargewright/compressor'
import { EvidenceTree } from '../parts/evidence-tree.tsx'
import { PictureFigure } from '../parts/picture-figure.tsx'
import { useWide } from '../parts/use-wide.ts'
import { inWords } from '../session/in-words.ts'
import { useAnswer } from '../worker/use-answer.ts'
import { RatingForm } from './rating-form.tsx'
import type { StepProps } from './step-place.tsx'
import { SupplyForm } from './supply-form.tsx'

/** Power and amps against the maker's figures at both dew temperatures, and the supply before them. */
export function CompressorStep({ visit, events, units, record, showEntry }: StepProps) {
  const { answer } = useAnswer('compressor', events, units, useWide() ? 'desk' : 'phone', spoken.value)
  const shown = { units, showEntry }
  const { rating, supply } = answer ?? {}
  return (
    <>
      <div class="cautions">
        <h4>{t('Take care')}</h4>
        <ul>
          <li>
            {t(
              'Measure at live terminals only if you may, with rated gloves and leads; else lock the power out first.',
            )}
          </li>
        </ul>
      </div>
      {supply && !supply.ok && <p class="doubt">{t('Supply not judged. {0}', problemInWords(supply.error))}</p>}
      {supply?.ok && (
        <div class="verdict">
          <p class="verdict-word" role="status">
            <strong>{t('supply: {0}', t(SUPPLY_WORDS[supply.value.kind]))}</strong>
          </p>
          {supply.value.reasons.map((reason) => (
            <EvidenceTree key={reason.statement.template} evidence={reason} {...shown} />
          ))}
          {supply.value.steps.map((act) => (
            <p key={act.template}>{inWords(act, units)}</p>
          ))}
        </div>
      )}
      {rating && !rating.ok && <p class="doubt">{t('Compressor not judged yet. {0}', problemInWords(rating.error))}</p>}
      {rating?.ok && (
        <div class="verdict">
          {rating.value.judged.map(({ side, evidence, suggests }) => (
            <div key={evidence.statement.template}>
              <p class="verdict-word" role="status">
                <strong>{t(RATING_WORDS[side])}</strong>
              </p>
              <EvidenceTree evidence={evidence} {...shown} />
              <ul>
                {suggests.map((each) => (
                  <li key={each.template}>{inWords(each, units)}</li>
                ))}
              </ul>
            </div>
          ))}
          {rating.value.judged.length === 0 &&
            rating.value.expected.map(({ evidence }) => (
              <EvidenceTree key={evidence.statement.template} evidence={evidence} {...shown} />
            ))}
          {rating.value.pictures.map((picture) => (
            <PictureFigure key={picture.title} picture={picture} />
          ))}
          {rating.value.judged.length === 0 && (
            <p class="hint">{t('Read compressor power or current, above, to judge it.')}</p>
          )}
          {rating.value.gasAssumed && (
            <p class="hint">{t('The suction line was not read: its gas was taken as rated.')}</p>
          )}
        </div>
      )}
      <details class="fold" open={!visit.supply}>
        <summary>{t('The supply, under load')}</summary>
        <SupplyForm units={units} record={record} />
      </details>
      <details class="fold">
        <summary>{t('The maker’s figures of the compressor')}</summary>
        <RatingForm
          rating={visit.system.facts.compressorRating}
          state={(compressorRating) => record({ kind: 'system-described', facts: { compressorRating } })}
        />
      </details>
    </>
  )
}
