import { bookUnits, type CylinderAccount } from '@chargewright/ledger'
import { render, type UnitPreference } from '@chargewright/quantity'
import { problemJson } from '../problem-json.ts'
import { inSi, optional } from '../quantity-json.ts'
import type { CylindersAnswer } from './cylinders.ts'

/** The balance of a book as JSON: cylinders, systems, findings, and what was left out. */
export function cylindersJson({ balance, room }: CylindersAnswer, units: UnitPreference): object {
  const cylinder = (account: CylinderAccount) => {
    const left = room.get(account)
    return {
      id: account.cylinder.id,
      refrigerants: account.refrigerants,
      holds: account.cylinder.holds,
      ...inSi('opening', account.opening),
      ...inSi('from_systems', account.fromSystems),
      ...inSi('from_elsewhere', account.fromElsewhere),
      ...inSi('to_systems', account.toSystems),
      ...inSi('to_elsewhere', account.toElsewhere),
      ...inSi('hoses', account.hoses),
      ...inSi('unexplained', account.unexplained),
      ...inSi('content', account.content),
      ...(account.fillLimit.ok
        ? { ...inSi('fill_limit', account.fillLimit.value.mass), governs: account.fillLimit.value.governs }
        : {}),
      ...(left?.ok ? inSi('room_left', left.value) : {}),
    }
  }
  return {
    cylinders: balance.cylinders.map(cylinder),
    systems: balance.systems.map(({ system, refrigerant, charged, recovered, net, movementIds }) => ({
      system,
      refrigerant,
      ...inSi('charged', charged),
      ...inSi('recovered', recovered),
      ...inSi('net', net),
      movements: movementIds,
    })),
    findings: balance.findings.map(({ kind, severity, cylinder: id, movementId, sentence, source }) => ({
      kind,
      severity,
      cylinder: id,
      ...optional('movement', movementId),
      text: render(sentence, bookUnits(units)),
      source,
    })),
    problems: balance.problems.map(problemJson),
  }
}
