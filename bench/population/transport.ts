/** Viscosities in Pa·s, conductivities in W/(m·K), surface tension in N/m. */
export interface TransportAt {
  readonly muLiquid: number
  readonly muVapour: number
  readonly kLiquid: number
  readonly kVapour: number
  readonly sigma: number
}

/** µPa·s, mW/(m·K), mN/m at saturation, at 5 °C and at 45 °C. */
type Anchors = Readonly<Record<keyof TransportAt, readonly [at5: number, at45: number]>>

/**
 * Rounded to what a simulated coil needs: the scatter of its correlations is far wider than these figures' errors.
 *
 * @source REMEMBERED from reference tables, within some 5 %
 */
const ANCHORS: Readonly<Record<string, Anchors>> = {
  'R-410A': { muLiquid: [155, 93], muVapour: [12.6, 15.7], kLiquid: [102, 81], kVapour: [12.6, 18.2], sigma: [8, 2.8] },
  'R-32': { muLiquid: [143, 94], muVapour: [11.9, 14.8], kLiquid: [143, 112], kVapour: [13.1, 20.5], sigma: [10, 4.1] },
  'R-454B': { muLiquid: [148, 96], muVapour: [12, 14.8], kLiquid: [125, 98], kVapour: [12.9, 18.8], sigma: [9.1, 3.7] },
  'R-22': { muLiquid: [205, 135], muVapour: [11.8, 14], kLiquid: [93, 75], kVapour: [9.8, 13.4], sigma: [11, 5.3] },
  'R-407C': { muLiquid: [195, 125], muVapour: [12, 14.6], kLiquid: [96, 77], kVapour: [11.8, 16.2], sigma: [9.8, 4.3] },
  'R-134a': {
    muLiquid: [250, 153],
    muVapour: [10.9, 12.6],
    kLiquid: [90, 73],
    kVapour: [11.9, 15.9],
    sigma: [10.8, 5.5],
  },
}

/** Transport properties of the refrigerants that are drawn, over the temperature of saturation in K. */
export const TRANSPORT: Readonly<Record<string, (T_K: number) => TransportAt>> = Object.fromEntries(
  Object.entries(ANCHORS).map(([name, anchors]) => [name, (T: number) => transportAt(anchors, T)]),
)

function transportAt({ muLiquid, muVapour, kLiquid, kVapour, sigma }: Anchors, T_K: number): TransportAt {
  const share = (T_K - 278.15) / 40
  const straight = ([a, b]: readonly [number, number]) => Math.max(a + share * (b - a), 0.2 * b)
  return {
    muLiquid: 1e-6 * muLiquid[0] * (muLiquid[1] / muLiquid[0]) ** share,
    muVapour: 1e-6 * straight(muVapour),
    kLiquid: 1e-3 * straight(kLiquid),
    kVapour: 1e-3 * straight(kVapour),
    sigma: 1e-3 * straight(sigma),
  }
}
