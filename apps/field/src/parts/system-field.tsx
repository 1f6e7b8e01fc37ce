import type { UnitPreference } from '@chargewright/quantity'
import {
  APPLICATIONS,
  type FactName,
  factLabel,
  figureKind,
  METERING_DEVICES,
  type System,
  type SystemStatement,
} from '@chargewright/visit'
import { ChartEntryPlace } from '../chart-entry/chart-entry-place.tsx'
import { exampleInUnits } from '../session/example-in-units.ts'
import type { Kept } from '../session/session.ts'
import { t } from '../words/t.ts'
import { ChoiceField } from './choice-field.tsx'
import { QuantityField } from './quantity-field.tsx'
import { RefrigerantField } from './refrigerant-field.tsx'
import { SiteAltitude } from './site-altitude.tsx'
import { TextField } from './text-field.tsx'

interface Props {
  readonly name: FactName
  readonly system: System
  /** Set before the id of the field where the same fact stands twice on a page. */
  readonly place?: string
  readonly remark?: string | undefined
  readonly units: UnitPreference
  readonly state: (stated: SystemStatement) => Kept
}

/** The field of one fact of the system, whatever its kind. Emptied, it takes the statement back. */
export function SystemField({ name, system, place = '', remark, units, state }: Props) {
  const id = `${place}system-${name}`
  const label = factLabel(name)
  const { facts, figures } = system
  const choose = (value: unknown) => state({ [name]: value } as SystemStatement)
  const clear = () => choose(null)
  switch (name) {
    case 'refrigerant':
      return (
        <RefrigerantField {...{ id, label, remark, clear }} absent={WANTED[name]} kept={facts[name]} keep={choose} />
      )
    case 'name':
    case 'liquidLineTube':
      return <TextField {...{ id, label, remark, clear }} absent={WANTED[name]} kept={facts[name]} keep={choose} />
    case 'meteringDevice':
      return (
        <ChoiceField {...{ id, label }} choices={METERING_DEVICES} chosen={facts[name]} absent="" choose={choose} />
      )
    case 'application':
      return <ChoiceField {...{ id, label }} choices={APPLICATIONS} chosen={facts[name]} absent="" choose={choose} />
    case 'receiver':
    case 'sightGlass':
    case 'accumulator': {
      const chosen = facts[name] === undefined ? undefined : facts[name] ? 'yes' : 'no'
      const answer = (word: 'yes' | 'no') => choose(word === 'yes')
      return <ChoiceField {...{ id, label, chosen }} choices={YES_NO} absent="" choose={answer} />
    }
    case 'makersChart':
      return <ChartEntryPlace id={id} chart={facts.makersChart} remark={remark} state={state} />
    case 'compressorRating':
      return (
        <p class="hint">
          {t('The maker’s coefficients of the compressor are entered in “Compressor and supply”, at station 6.')}
        </p>
      )
    case 'accessories':
      return <p class="hint">{t('Added parts are changed in the step “Weigh-in”.')}</p>
    default: {
      const kind = figureKind(name)
      const shown = exampleInUnits(kind, units)
      const figure = { id, label, accepts: kind.accepts, units, remark, clear, absent: t('for example {0}', shown) }
      return (
        <QuantityField {...figure} kept={figures[name]} keep={choose}>
          {name === 'elevation' && <SiteAltitude units={units} keep={choose} />}
        </QuantityField>
      )
    }
  }
}

const YES_NO = { yes: 'yes', no: 'no' } as const

const WANTED = {
  name: 'a name, or where it stands',
  refrigerant: 'as on the nameplate',
  liquidLineTube: 'outside diameter in inches, for example 3/8',
} as const
