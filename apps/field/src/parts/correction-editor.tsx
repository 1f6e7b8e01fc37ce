import type { UnitPreference } from '@chargewright/quantity'
import {
  type Fact,
  type FactName,
  type FigureId,
  fold,
  observationKind,
  readingKind,
  type System,
} from '@chargewright/visit'
import { correctedWait } from '../session/corrected-wait.ts'
import type { Kept } from '../session/session.ts'
import { unitsLike } from '../session/units-like.ts'
import { StepCorrection } from '../steps/step-correction.tsx'
import { t } from '../words/t.ts'
import { ChoiceField } from './choice-field.tsx'
import { MoveForm } from './move-form.tsx'
import { QuantityField } from './quantity-field.tsx'
import { SystemField } from './system-field.tsx'
import { WaitForm } from './wait-form.tsx'
import { WordsForm } from './words-form.tsx'

interface Props {
  /** Unique on the page. */
  readonly id: string
  readonly fact: Fact
  readonly units: UnitPreference
  readonly correct: (replacement: Fact) => Kept
}

/** The form in which a fact was entered, filled in with it. */
export function CorrectionEditor({ id, fact, units, correct }: Props) {
  switch (fact.kind) {
    case 'reading': {
      const { accepts, label } = readingKind(fact.what)
      const reading = {
        id,
        label: t('{0}, corrected', t(label)),
        accepts,
        units: unitsLike(fact.value, accepts, units),
        absent: t('typed “{0}”', fact.value),
      }
      const kept = alone(fact).readings[fact.what]
      return <QuantityField {...reading} kept={kept} keep={(value) => correct({ ...fact, value })} />
    }
    case 'observation': {
      const { label, answers } = observationKind(fact.what)
      const observation = {
        id,
        label: t('{0}, corrected', t(label)),
        choices: answers,
        chosen: fact.answer,
        absent: '',
      }
      return <ChoiceField {...observation} choose={(answer) => correct({ ...fact, answer })} />
    }
    case 'system-described': {
      const { system } = alone(fact)
      return (Object.keys(fact.facts) as FactName[]).map((name) => (
        <SystemField
          key={name}
          name={name}
          place={`${id}-`}
          system={system}
          units={unitsOfFact(name, system, units)}
          state={(stated) => correct({ ...fact, facts: { ...fact.facts, ...stated } })}
        />
      ))
    }
    case 'refrigerant-moved':
      return <MoveForm {...KEEP} massId={id} initial={fact} units={units} keep={correct} />
    case 'wait':
      return <WaitForm {...KEEP} initial={fact} units={units} keep={(wait) => correct(correctedWait(fact, wait))} />
    case 'adjustment':
      return <WordsForm {...words('What was adjusted', fact.what)} keep={(what) => correct({ ...fact, what })} />
    case 'note':
      return <WordsForm {...words('Note', fact.text)} keep={(text) => correct({ ...fact, text })} />
    case 'cylinder-weighed':
    case 'weighing-gear':
    case 'supply-measured':
    case 'vacuum-test':
    case 'vacuum-reading':
    case 'vacuum-log':
    case 'pressure-test':
    case 'pressure-test-reading':
      return <StepCorrection fact={fact} units={units} correct={correct} />
    case 'lessons-forgotten':
    case 'visit-moved':
      // Nothing in it can be wrong but itself: withdrawn, it is as if it had not been.
      return null
    case 'photo':
      return <WordsForm {...words('Subject', fact.subject)} keep={(subject) => correct({ ...fact, subject })} />
  }
}

/** A number that takes the place of a figure has its unit. */
function unitsOfFact(name: FactName, system: System, units: UnitPreference): UnitPreference {
  const figure = system.figures[name as FigureId]
  return figure ? unitsLike(figure.typed, [figure.quantity.dimension], units) : units
}

const KEEP = { keepLabel: 'Keep the correction' } as const

const words = (label: string, initial: string) => ({ ...KEEP, label, initial })

/** The visit that this fact alone would make: how it reads by itself. */
function alone(fact: Fact) {
  return fold({ id: 'alone', events: [{ id: 'alone', at: '1970-01-01T00:00:00Z', ...fact }] })
}
