import type { SystemFacts, SystemStatement } from '@chargewright/visit'
import type { KnownSystem } from '../session/known-systems.ts'
import type { Kept } from '../session/session.ts'
import { t } from '../words/t.ts'

interface Props {
  readonly facts: SystemFacts
  /** Every system of this device. */
  readonly known: readonly KnownSystem[]
  readonly state: (stated: SystemStatement) => Kept
}

/** The maker's chart of a system that is alike, for one that has none: whether it is the same model, a person says. */
export function ChartOffer({ facts, known, state }: Props) {
  const alike = facts.makersChart ? undefined : known.find((other) => isAlike(facts, other.facts))
  const makersChart = alike?.facts.makersChart
  if (!alike || !makersChart) return null
  return (
    <section class="assumed" aria-labelledby="chart-offer">
      <h2 id="chart-offer">{t('A maker’s chart of a system like this one')}</h2>
      <p>
        {t('It was entered at')} <strong>{alike.facts.name ?? t('a system without a name')}</strong>
        {t(
          ', which has the same refrigerant, device and capacity. A chart holds for one model only: compare the nameplates first.',
        )}
      </p>
      <button type="button" class="key" onClick={() => void state({ makersChart })}>
        {t('It is the same model: take the chart over')}
      </button>
    </section>
  )
}

function isAlike(facts: SystemFacts, other: SystemFacts): boolean {
  const same = (['refrigerant', 'meteringDevice', 'nominalCapacity'] as const).every((fact) => {
    return facts[fact] !== undefined && facts[fact] === other[fact]
  })
  return same && other.makersChart !== undefined
}
