import type { Assessment } from '@chargewright/charging'
import {
  COVERAGE,
  formatNumber,
  type Measure,
  preferredUnit,
  type Quantity,
  type UnitPreference,
} from '@chargewright/quantity'
import { quantityInWords } from '../session/in-words.ts'
import { t } from '../words/t.ts'

/** The methods that hold one value against a band. */
const TITLES = { superheat: 'Superheat', subcooling: 'Subcooling' } as const

interface Props {
  readonly assessment: Assessment
  readonly units: UnitPreference
}

/** The value with its uncertainty against its target and band, to scale. */
export function BandPicture({ assessment, units }: Props) {
  const { method, measures, target } = assessment
  if (method?.id !== 'superheat' && method?.id !== 'subcooling') return null
  const value: Measure | undefined = measures[method.id]
  if (!value || !target) return null
  const title = TITLES[method.id]
  const tolerance = target.tolerance.quantity
  const low = shifted(target.quantity, -tolerance.si)
  const high = shifted(target.quantity, tolerance.si)
  const lowNumber = formatNumber(low, preferredUnit(low.dimension, units))
  const band = t('{0} to {1}', lowNumber, quantityInWords(high, units))
  const words = {
    value: `${t(title)} ${quantityInWords(value.quantity, units, true)}`,
    target: t('target {0}, band {1}', quantityInWords(shifted(target.quantity, 0), units), band),
  }
  return (
    <figure class="band">
      <Drawing value={value.quantity} target={target.quantity.si} tolerance={tolerance.si} words={words} />
    </figure>
  )
}

interface DrawingProps {
  readonly value: Quantity
  readonly target: number
  readonly tolerance: number
  readonly words: { readonly value: string; readonly target: string }
}

/** Across in percent of the width, so that the letters keep their size on every screen. */
function Drawing({ value, target, tolerance, words }: DrawingProps) {
  const reach = COVERAGE * (value.u ?? 0)
  const from = Math.min(value.si - reach, target - tolerance)
  const to = Math.max(value.si + reach, target + tolerance)
  const at = (x: number) => 6 + (88 * (x - from)) / (to - from)
  const x = (si: number) => `${at(si)}%`
  return (
    <svg class="band-drawing" role="img" aria-label={`${words.value}; ${words.target}`}>
      <text class="band-target-label" x={x(target)} y="16" text-anchor={anchor(at(target))}>
        {words.target}
      </text>
      <rect
        class="band-band"
        x={x(target - tolerance)}
        y="26"
        width={`${at(target + tolerance) - at(target - tolerance)}%`}
        height="40"
      />
      <line class="band-axis" x1="0" x2="100%" y1="66" y2="66" />
      <line class="band-target" x1={x(target)} x2={x(target)} y1="22" y2="66" />
      <g class="band-value">
        <line x1={x(value.si - reach)} x2={x(value.si + reach)} y1="46" y2="46" />
        <line x1={x(value.si - reach)} x2={x(value.si - reach)} y1="39" y2="53" />
        <line x1={x(value.si + reach)} x2={x(value.si + reach)} y1="39" y2="53" />
        <circle cx={x(value.si)} cy="46" r="7" />
      </g>
      <text class="band-value-label" x={x(value.si)} y="86" text-anchor={anchor(at(value.si))}>
        {words.value}
      </text>
    </svg>
  )
}

/** A label near an edge is written inwards, so that nothing is cut. */
function anchor(percent: number): 'start' | 'middle' | 'end' {
  if (percent < 35) return 'start'
  return percent > 65 ? 'end' : 'middle'
}

/** Another value of the same dimension, exact. */
const shifted = ({ dimension, si }: Quantity, by: number): Quantity => ({ dimension, si: si + by })
