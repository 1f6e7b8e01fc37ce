import type { Nameplate } from '../../../packages/cycle/src/index.ts'
import type { Plate } from '../../population/case.ts'
import { propertiesNamed } from './measured.ts'

/** A printed plate as the twin takes it. */
export const nameplateOf = ({ refrigerant, device, capacity_W, charge_kg, cop, subcooling_K }: Plate): Nameplate => ({
  properties: propertiesNamed(refrigerant),
  application: 'comfort-cooling',
  device,
  capacity_W,
  charge_kg,
  efficiency: { kind: 'cop', cop },
  ...(subcooling_K === undefined ? {} : { subcooling_K }),
})
