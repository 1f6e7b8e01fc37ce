import type { UnitPreference } from '@chargewright/quantity'
import { METERING_DEVICES, type System } from '@chargewright/visit'
import { t } from '../words/t.ts'
import { quantityInWords } from './in-words.ts'

interface Known {
  /** The designation of the refrigerant, where the engine knows the name that was typed. */
  readonly designation?: string | undefined
  readonly invented: boolean
}

/** A system in a few words: what is in it, what feeds it, how large it is. */
export function aboutSystem(
  { facts, figures }: System,
  { designation, invented }: Known,
  units: UnitPreference,
): string {
  const capacity = figures.nominalCapacity && quantityInWords(figures.nominalCapacity.quantity, units)
  const parts = [
    invented ? t('invented') : undefined,
    designation ?? facts.refrigerant,
    facts.meteringDevice && t(METERING_DEVICES[facts.meteringDevice]),
    capacity,
  ]
  return parts.filter((part) => part !== undefined).join(' · ') || t('not described yet')
}
