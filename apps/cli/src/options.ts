import { INCH_POUND, METRIC } from '@chargewright/quantity'
import { Option } from 'commander'
import { LANGUAGES } from './words/language.ts'

/** Systems of units for sentences, by the name that `--units` takes. */
export const UNIT_SYSTEMS = { 'inch-pound': INCH_POUND, metric: METRIC } as const

export const units = () =>
  new Option('--units <system>', 'units of the sentences').choices(Object.keys(UNIT_SYSTEMS)).default('inch-pound')

export const language = () =>
  new Option('--language <tag>', 'language of the sentences; what was typed stays').choices(LANGUAGES).default('en')

export const pressure = () =>
  new Option('--pressure <reading>', '"118 psig", "8.1 bar g", "920 kPa a"; a bare psi or bar is a gauge')

export const temperature = () => new Option('--temperature <reading>', '"40 degF", "4.5 °C", "278 K"')

export const quality = () => new Option('--quality <share>', 'vapour by mass, 0 to 1, of a two-phase state')

export const altitude = () =>
  new Option('--altitude <height>', 'of the site, "5000 ft" or "1500 m": its atmosphere; sea level without it')

export const earlier = () =>
  new Option('--earlier <visit.json...>', 'earlier visits to the same system, the first one first')

export const json = (what: string) => new Option('--json', `print ${what} as JSON`)

/** The whole input in place of one question, so that the flags of a question must not stand beside it. */
export const batch = (line: string, ...flags: readonly string[]) =>
  new Option('--batch', `read ${line} a line from stdin, write an answer a line`).conflicts([...flags])
