import { type CDPSession, expect, test } from '@playwright/test'
import { field, newVisit } from './field-app.ts'

const ADDRESS = '09:09:09:09:09:09'
const SERVICE = '0000181a-0000-1000-8000-00805f9b34fb'
const TEMPERATURE = '00002a6e-0000-1000-8000-00805f9b34fb'
/** By which a client asks to be told. */
const CONFIGURATION = '00002902-0000-1000-8000-00805f9b34fb'
const HUMIDITY = '00002a6f-0000-1000-8000-00805f9b34fb'

test.use({
  launchOptions: async ({ launchOptions }, use) => {
    const args = [...(launchOptions.args ?? []), '--enable-features=WebBluetooth']
    await use({ ...launchOptions, args })
  },
})

test('[property] a sensor with the standard service is connected, heard and taken', async ({ page, browser }) => {
  await newVisit(page)
  const radio = await browser.newBrowserCDPSession()
  const sensor = await emulateSensor(radio)
  const chooser = await page.context().newCDPSession(page)
  await chooser.send('DeviceAccess.enable')
  // Told again with every sensor that comes near; a second answer would end the browser.
  chooser.once('DeviceAccess.deviceRequestPrompted', ({ id, devices }) => {
    void chooser.send('DeviceAccess.selectPrompt', { id, deviceId: devices[0]!.id })
  })
  await page.locator('.live-place summary').click()
  await page.getByRole('button', { name: 'Connect a sensor' }).click()
  await expect(page.getByLabel('Invented sensor: Temperature last')).toHaveValue('return-air-dry-bulb')
  await expect(page.getByLabel('Invented sensor: Humidity last')).toHaveValue('return-air-humidity')
  await expect(page.locator('.column-last').first()).toHaveText('last 25.5')
  // Temperature tells by itself, in the standard way; humidity is asked for again and again.
  expect(sensor.asked).toContain('subscribe-to-notifications')
  sensor.humidity(5300)
  await expect(page.locator('.column-last').last()).toHaveText('last 53')
  await expect(page.locator('.steadiness-verdict')).toContainText('Watched for less than 5 min so far')
  await page.getByRole('button', { name: 'Take these values' }).click()
  await expect(field(page, 'reading-return-air-dry-bulb')).toHaveValue('77.9')
  await expect(field(page, 'reading-return-air-humidity')).toHaveValue('52')
  await radio.send('BluetoothEmulation.simulateGATTDisconnection', { address: ADDRESS })
  await expect(page.getByRole('alert')).toContainText('Invented sensor is no longer connected')
  await expect(page.locator('.column-last').first()).toHaveText('last 25.5')
})

interface Emulated {
  /** What the browser did to the characteristics so far. */
  readonly asked: readonly string[]
  readonly humidity: (hundredths: number) => void
}

/** A sensor of 25.5 °C and 51 % humidity that answers when it is read and tells by notification. */
async function emulateSensor(radio: CDPSession): Promise<Emulated> {
  await radio.send('BluetoothEmulation.enable', { state: 'powered-on', leSupported: true })
  await radio.send('BluetoothEmulation.simulatePreconnectedPeripheral', {
    address: ADDRESS,
    name: 'Invented sensor',
    manufacturerData: [],
    knownServiceUuids: [SERVICE],
  })
  radio.on('BluetoothEmulation.gattOperationReceived', ({ address, type }) => {
    void radio.send('BluetoothEmulation.simulateGATTOperationResponse', { address, type, code: 0 })
  })
  const { serviceId } = await radio.send('BluetoothEmulation.addService', { address: ADDRESS, serviceUuid: SERVICE })
  const values = new Map<string, string>()
  const asked: string[] = []
  const ids: string[] = []
  radio.on('BluetoothEmulation.characteristicOperationReceived', ({ characteristicId, type }) => {
    asked.push(type)
    const data = type === 'read' ? { data: values.get(characteristicId) ?? '' } : {}
    void radio.send('BluetoothEmulation.simulateCharacteristicOperationResponse', {
      characteristicId,
      type,
      code: 0,
      ...data,
    })
  })
  for (const [characteristicUuid, hundredths, notify] of [
    [TEMPERATURE, 2550, true],
    [HUMIDITY, 5100, false],
  ] as const) {
    const { characteristicId } = await radio.send('BluetoothEmulation.addCharacteristic', {
      serviceId,
      characteristicUuid,
      properties: { read: true, notify },
    })
    if (notify)
      await radio.send('BluetoothEmulation.addDescriptor', { characteristicId, descriptorUuid: CONFIGURATION })
    ids.push(characteristicId)
    values.set(characteristicId, bytesOf(hundredths))
  }
  return { asked, humidity: (hundredths) => void values.set(ids[1]!, bytesOf(hundredths)) }
}

const bytesOf = (hundredths: number) => Buffer.from([hundredths & 0xff, hundredths >> 8]).toString('base64')
