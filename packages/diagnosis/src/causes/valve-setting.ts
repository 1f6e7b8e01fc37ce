import type { State } from '../hypothesis.ts'

/** The same system with a valve that holds this much more superheat before it opens, K. */
export function withValveSetting({ system, health }: State, by_K: number): State {
  const { device } = system
  if (device.kind === 'thermostatic') {
    return { health, system: { ...system, device: { ...device, staticSuperheat_K: device.staticSuperheat_K + by_K } } }
  }
  if (device.kind === 'electronic' && device.drive.kind === 'superheat') {
    const drive = { ...device.drive, setPoint_K: device.drive.setPoint_K + by_K }
    return { health, system: { ...system, device: { ...device, drive } } }
  }
  return { system, health }
}
