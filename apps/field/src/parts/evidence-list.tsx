import type { Evidence, UnitPreference } from '@chargewright/quantity'
import { EvidenceTree } from './evidence-tree.tsx'

interface Props {
  readonly evidence: readonly Evidence[]
  readonly units: UnitPreference
  readonly showEntry: (eventId: string) => void
}

/** Reasons, one under the other. */
export function EvidenceList({ evidence, units, showEntry }: Props) {
  return (
    <ul class="evidence-list">
      {evidence.map((one, i) => (
        <li key={i}>
          <EvidenceTree evidence={one} units={units} showEntry={showEntry} />
        </li>
      ))}
    </ul>
  )
}
