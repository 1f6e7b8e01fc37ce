import type { Health, System } from '@chargewright/cycle'

/**
 * By how much the saturation temperature of the pressure at rest stands above the ambient, K: 0 without gas. At rest the
 * gas spreads over all volume that no liquid fills, and its pressure adds to that of the refrigerant (Dalton).
 */
export function standstillExcess({ properties, ...system }: System, health: Health, ambient_K: number): number {
  if (health.nonCondensable_Pa === 0) return 0
  const { condenser, evaporator, liquidLine, suctionLine, inventory, receiver, accumulator } = system
  const volume =
    condenser.volume_m3 +
    evaporator.volume_m3 +
    liquidLine.volume_m3 +
    liquidLine.drierVolume_m3 +
    suctionLine.volume_m3 +
    inventory.dischargeVolume_m3 +
    inventory.shellVolume_m3 +
    (receiver?.volume_m3 ?? 0) +
    (accumulator?.volume_m3 ?? 0)
  const pressure = properties.bubblePressure(ambient_K)
  const { liquidDensity_kg_m3: rhoF, vapourDensity_kg_m3: rhoG } = properties.saturated(pressure)
  const free_kg = health.charge_kg - inventory.offset_kg
  const liquid = Math.min(Math.max((free_kg - rhoG * volume) / (rhoF - rhoG), 0), MOST_FULL * volume)
  const gas = (health.nonCondensable_Pa * condenser.volume_m3 * ambient_K) / ((volume - liquid) * GAS_REFERENCE_K)
  return properties.saturated(pressure + gas).bubble_K - ambient_K
}

/** At which `nonCondensable_Pa` is stated. */
const GAS_REFERENCE_K = 300
/** No system is so full that its gas has no room. */
const MOST_FULL = 0.95
