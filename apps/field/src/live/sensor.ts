import { fail, ok, type Result } from '@chargewright/quantity'
import { t } from '../words/t.ts'
import { SENSING_KINDS, SENSING_SERVICE, type SensingKind } from './sensor-value.ts'

/** The part of Web Bluetooth that is used; the standard library does not describe it. */
interface Characteristic extends EventTarget {
  readonly properties: { readonly notify: boolean; readonly read: boolean }
  readonly value?: DataView
  readonly readValue: () => Promise<DataView>
  readonly startNotifications: () => Promise<unknown>
}
interface Service {
  readonly getCharacteristic: (uuid: number) => Promise<Characteristic>
}
interface Device extends EventTarget {
  readonly name?: string
  readonly gatt?: {
    readonly connect: () => Promise<{ readonly getPrimaryService: (uuid: number) => Promise<Service> }>
    readonly disconnect: () => void
  }
}
export interface Radio {
  readonly requestDevice: (wanted: { filters: readonly { services: readonly number[] }[] }) => Promise<Device>
}

/** Absent where the browser has no such radio; what is read is then typed. */
export const radioOf = (navigator: Navigator): Radio | undefined => (navigator as { bluetooth?: Radio }).bluetooth

export interface Sensor {
  readonly name: string
  readonly stop: () => void
}

/** How often a sensor is asked that does not tell by itself. */
const ASK_EVERY_MS = 2_000

/**
 * Connects a sensor with the standard Environmental Sensing service and hands on every value. Nobody else's protocol is
 * spoken: what the sensor does not offer in the standard way is not read.
 *
 * @returns the sensor; nothing where the person chose none; else why it could not be connected
 */
export async function connectSensor(
  radio: Radio,
  hear: (name: string, kind: SensingKind, number: number) => void,
  lost: (name: string) => void,
): Promise<Result<Sensor | undefined, string>> {
  let device: Device
  try {
    device = await radio.requestDevice({ filters: [{ services: [SENSING_SERVICE] }] })
  } catch {
    return ok(undefined)
  }
  const name = device.name ?? t('Sensor')
  const asking: number[] = []
  const stop = () => {
    for (const each of asking) clearInterval(each)
    device.gatt?.disconnect()
  }
  try {
    const server = await device.gatt?.connect()
    const service = await server?.getPrimaryService(SENSING_SERVICE)
    const heard = service ? await listen(service, (kind, number) => hear(name, kind, number), asking) : 0
    if (heard === 0) return fail(t('{0} offers no temperature, humidity or pressure in the standard way.', name))
  } catch {
    return fail(t('{0} could not be connected. Bring it near, and try again.', name))
  }
  device.addEventListener('gattserverdisconnected', () => {
    for (const each of asking) clearInterval(each)
    lost(name)
  })
  return ok({ name, stop })
}

/** How many kinds of value the service has. */
async function listen(
  service: Service,
  hear: (kind: SensingKind, number: number) => void,
  asking: number[],
): Promise<number> {
  let heard = 0
  for (const kind of SENSING_KINDS) {
    let one: Characteristic
    try {
      one = await service.getCharacteristic(kind.uuid)
    } catch {
      continue
    }
    const tell = (bytes: DataView | undefined) => {
      const number = bytes ? kind.decode(bytes) : Number.NaN
      if (!Number.isNaN(number)) hear(kind, number)
    }
    heard++
    if (one.properties.read) tell(await one.readValue())
    if (one.properties.notify && (await tells(one, tell))) continue
    asking.push(window.setInterval(() => void one.readValue().then(tell, () => undefined), ASK_EVERY_MS))
  }
  return heard
}

/** Whether the sensor tells by itself from now on; some say that they would, and then do not let themselves be asked. */
async function tells(one: Characteristic, tell: (bytes: DataView | undefined) => void): Promise<boolean> {
  try {
    await one.startNotifications()
    one.addEventListener('characteristicvaluechanged', () => tell(one.value))
    return true
  } catch {
    return false
  }
}
