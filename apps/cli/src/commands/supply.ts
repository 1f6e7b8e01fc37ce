import { judgeSupply, type SupplyFinding } from '@chargewright/compressor'
import { fail, type Problem, type Result } from '@chargewright/quantity'
import { PLAIN, typedReading } from '../typed-reading.ts'

/** The supply voltage against the nameplate, and the unbalance of three phases. */
export function supply(voltages: readonly string[], nominal: string): Result<SupplyFinding, readonly Problem[]> {
  const plate = typedReading(nominal, 'voltage', 'nominal')
  const read = voltages.map((text, i) => typedReading(text, 'voltage', `voltage ${i + 1}`, PLAIN.voltmeter))
  const problems = [plate, ...read].flatMap((each) => (each.ok ? [] : [each.error]))
  if (!plate.ok || problems.length > 0) return fail(problems)
  const judged = judgeSupply(
    read.flatMap((each) => (each.ok ? [each.value] : [])),
    plate.value,
  )
  return judged.ok ? judged : fail([judged.error])
}
