import { COVERAGE, ok, type Problem, quantity, type Result, type Statement, say } from '@chargewright/quantity'
import { type RefrigerantFacts, refrigerantFacts } from '@chargewright/refrigerant'
import type { Mass } from '../cylinder/cylinder.ts'
import { dayText, readDay } from './calendar.ts'
import { LEAK_REPAIR_LAWS } from './laws/leak-repair-laws.ts'
import type { LeakRepairLaw } from './leak-repair-law.ts'
import { isConfirmed } from './provision.ts'
import { REGULATED_HYDROFLUOROCARBONS } from './regulated-hydrofluorocarbons.ts'

export interface Appliance {
  readonly refrigerant: string
  readonly fullCharge: Mass
  /** Residential and light commercial air conditioning and heat pumps; absent when not known. */
  readonly residentialOrLightCommercial?: boolean
}

/** Whether a law holds for an appliance, and why. */
export interface Coverage {
  readonly law: LeakRepairLaw
  readonly verdict: 'applies' | 'does-not-apply' | 'cannot-tell'
  readonly because: Statement
  readonly source: string
  /** False where a list or figure behind the verdict was not read in the law itself. */
  readonly confirmed: boolean
}

/**
 * Every leak-repair law in force on a day, with whether it holds for the appliance. A blend of both kinds of substance
 * can fall under two of them.
 *
 * @returns `unknown` for a refrigerant that is not listed
 */
export function leakRepairCoverage(appliance: Appliance, on: string): Result<readonly Coverage[], Problem> {
  const day = readDay(on, 'on')
  if (!day.ok) return day
  const facts = refrigerantFacts(appliance.refrigerant)
  if (!facts.ok) return facts
  const today = dayText(day.value)
  const inForce = LEAK_REPAIR_LAWS.filter(({ inForce: { from, to } }) => from <= today && (!to || today <= to))
  return ok(inForce.map((law) => coverage(law, facts.value, appliance)))
}

function coverage(law: LeakRepairLaw, facts: RefrigerantFacts, appliance: Appliance): Coverage {
  const substance = substanceCovered(law, facts)
  if (substance.verdict === 'does-not-apply') return { law, ...substance }
  const { fullCharge, residentialOrLightCommercial: light } = appliance
  const least = quantity('mass', law.leastFullCharge_kg.value)
  const { source } = law.leastFullCharge_kg
  const confirmed = substance.confirmed && isConfirmed(law.leastFullCharge_kg)
  const margin = COVERAGE * (fullCharge.u ?? 0)
  if (!(fullCharge.si + margin >= least.si)) {
    const because = say`The full charge of ${fullCharge} is less than ${least}`
    return { law, verdict: 'does-not-apply', because, source, confirmed }
  }
  if (law.exemptsResidentialAndLightCommercial.value && light === true) {
    const because = say`Residential and light commercial air conditioning and heat pumps are exempt`
    return {
      law,
      verdict: 'does-not-apply',
      because,
      source: law.exemptsResidentialAndLightCommercial.source,
      confirmed,
    }
  }
  if (fullCharge.si - margin < least.si) {
    const because = say`The full charge of ${fullCharge} cannot be told from ${least}`
    return { law, verdict: 'cannot-tell', because, source, confirmed }
  }
  if (law.exemptsResidentialAndLightCommercial.value && light === undefined) {
    const because = say`Residential and light commercial air conditioning and heat pumps are exempt; say whether this is one`
    return { law, verdict: 'cannot-tell', because, source: law.exemptsResidentialAndLightCommercial.source, confirmed }
  }
  return { law, ...substance }
}

type SubstanceCoverage = Omit<Coverage, 'law'>

function substanceCovered({ substances }: LeakRepairLaw, facts: RefrigerantFacts): SubstanceCoverage {
  const { source } = substances
  const depleting = facts.ozoneClass !== undefined
  const fluorocarbon = Object.keys(facts.composition.value).find((name) => REGULATED_HYDROFLUOROCARBONS.has(name))
  // Both lists were recalled, so that no verdict on the substance is confirmed.
  const rule = (verdict: Coverage['verdict'], because: Statement) => ({ verdict, because, source, confirmed: false })
  switch (substances.value) {
    case 'ozone-depleting':
      return depleting
        ? rule('applies', say`${facts.name} is or contains an ozone-depleting substance`)
        : rule('does-not-apply', say`${facts.name} holds no ozone-depleting substance`)
    case 'ozone-depleting-or-substitute':
      return depleting || fluorocarbon
        ? rule('applies', say`${facts.name} is an ozone-depleting substance or a substitute for one`)
        : rule('cannot-tell', say`Whether ${facts.name} is an exempt substitute depends on its use`)
    case 'hydrofluorocarbons':
      return fluorocarbon
        ? rule('applies', say`${facts.name} is or contains the regulated hydrofluorocarbon ${fluorocarbon}`)
        : rule('does-not-apply', say`${facts.name} holds no regulated hydrofluorocarbon`)
  }
}
