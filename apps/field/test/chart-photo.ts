import type { Page } from '@playwright/test'

/** The invented chart: superheat over the outdoor temperature, a bent curve for each indoor wet bulb. */
export const CURVES: Readonly<Record<number, (outdoor: number) => number>> = {
  60: (t) => 22 - 0.35 * (t - 60) - 0.002 * (t - 60) ** 2,
  66: (t) => 30 - 0.38 * (t - 60) - 0.0015 * (t - 60) ** 2,
  72: (t) => 38 - 0.36 * (t - 60) - 0.001 * (t - 60) ** 2,
}
export const OUTDOOR = [60, 110] as const
export const SUPERHEAT = [0, 40] as const

const SIZE = { width: 1600, height: 1200 }
/** The paper lies turned and a little sheared under the camera. */
const TURN = 0.06
const SHEAR = 0.04

/** Where a value of the chart lies on the photo, as shares of its width and height. */
export function shareOf(outdoor: number, superheat: number): { readonly x: number; readonly y: number } {
  const [x, y] = [250 + (outdoor - 60) * 22, 1000 - superheat * 20]
  const [a, b] = [x + SHEAR * y, y]
  const pixel = { x: a * Math.cos(TURN) - b * Math.sin(TURN), y: a * Math.sin(TURN) + b * Math.cos(TURN) }
  return { x: pixel.x / SIZE.width, y: pixel.y / SIZE.height }
}

/** A photo of the chart, drawn by the browser itself. */
export async function chartPhoto(page: Page): Promise<Buffer> {
  const lines = [
    ...[60, 70, 80, 90, 100, 110].map((t) => ({
      from: shareOf(t, 0),
      to: [shareOf(t, 40)],
      bold: t === 60,
      text: `${t}`,
    })),
    ...[0, 10, 20, 30, 40].map((s) => ({ from: shareOf(60, s), to: [shareOf(110, s)], bold: s === 0, text: `${s}` })),
    ...Object.entries(CURVES).map(([value, curve]) => ({
      from: shareOf(60, curve(60)),
      to: Array.from({ length: 51 }, (_, i) => shareOf(60 + i, curve(60 + i))),
      bold: true,
      text: `${value}`,
    })),
  ]
  const address = await page.evaluate(
    ({ lines, size }) => {
      const canvas = Object.assign(document.createElement('canvas'), size)
      const pen = canvas.getContext('2d')!
      pen.fillStyle = '#e9e6da'
      pen.fillRect(0, 0, size.width, size.height)
      pen.font = '30px sans-serif'
      for (const { from, to, bold, text } of lines) {
        pen.beginPath()
        pen.strokeStyle = pen.fillStyle = bold ? '#222' : '#999'
        pen.lineWidth = bold ? 5 : 2
        pen.moveTo(from.x * size.width, from.y * size.height)
        for (const { x, y } of to) pen.lineTo(x * size.width, y * size.height)
        pen.stroke()
        pen.fillText(text, from.x * size.width - 50, from.y * size.height + 40)
      }
      return canvas.toDataURL('image/png')
    },
    { lines, size: SIZE },
  )
  return Buffer.from(address.split(',')[1]!, 'base64')
}
