/**
 * Room that a line of text takes, in the unit of its letter size: never less than it takes in the bold face of the
 * project. Margins are made from it, so that no label is cut; without a screen nobody else can tell.
 */
export function textWidth(text: string, size: number): number {
  let em = 0
  for (const char of text) em += WIDTHS.get(char) ?? (char > '\u2e7f' ? 1 : 0.67)
  return em * size
}

/** Advance widths of the bold face in em, rounded up to 0.05; any other letter of the Latin script is at most 0.67. */
const WIDTHS = new Map(
  Object.entries({
    0.3: "',.:;`|ij",
    0.35: ' !()[]l\u00a0\u202f’‘·',
    0.4: '"-_frt{}°',
    0.45: '/I\\',
    0.55: '*?csvxyz~',
    0.6: '+<>EFJL^abdeghknopqu',
    0.65: '$0123456789=BPRSTVYZ',
    0.7: 'ACDKUX',
    0.8: '&GHNOw#@Q',
    0.9: 'MWm',
    1: '%—…½¼¾⅓',
  }).flatMap(([em, chars]) => [...chars].map((char) => [char, Number(em)] as const)),
)
