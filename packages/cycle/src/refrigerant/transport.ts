/**
 * Viscosities and surface tension, as far as the void fraction needs them: it depends on the viscosity ratio by the
 * power 0.13 and on the surface tension by 0.25, so that 20 % here are 3 % to 5 % there.
 */
export interface Transport {
  readonly liquidViscosity_Pas: number
  readonly vapourViscosity_Pas: number
  readonly surfaceTension_N_m: number
}

/** What corresponding states need to know of a fluid. */
export interface CriticalConstants {
  readonly temperature_K: number
  readonly pressure_Pa: number
  readonly molarMass_kg_mol: number
}

/**
 * @param temperature K, 0.5 to 0.98 of the critical temperature
 * @source vapour: Lucas's low-pressure form; liquid: Letsou and Stiel 1973 with an acentric factor of 0.3; surface
 *   tension: Brock and Bird 1955, all as in Poling, Prausnitz, O'Connell, The Properties of Gases and Liquids, REMEMBERED
 * @accuracy vapour 5 %, liquid 20 %, surface tension 10 %, as remembered of the sources for refrigerants
 */
export function transportAt(temperature: number, critical: CriticalConstants): Transport {
  const Tr = Math.min(temperature / critical.temperature_K, 0.98)
  const M = critical.molarMass_kg_mol * 1000
  const Pc_bar = critical.pressure_Pa / 1e5
  const Pc_atm = critical.pressure_Pa / 101_325

  // Lucas: ξ in 1/µP with Pc in bar.
  const xi = 0.176 * (critical.temperature_K / (M ** 3 * Pc_bar ** 4)) ** (1 / 6)
  const lucas = 0.807 * Tr ** 0.618 - 0.357 * Math.exp(-0.449 * Tr) + 0.34 * Math.exp(-4.058 * Tr) + 0.018
  const vapourViscosity_Pas = (lucas / xi) * 1e-7

  // Letsou and Stiel: ξ in 1/cP with Pc in atm.
  const ACENTRIC = 0.3
  const xiLiquid = critical.temperature_K ** (1 / 6) / (Math.sqrt(M) * Pc_atm ** (2 / 3))
  const zero = 1e-3 * (2.648 - 3.725 * Tr + 1.309 * Tr ** 2)
  const one = 1e-3 * (7.425 - 13.39 * Tr + 5.933 * Tr ** 2)
  const liquidViscosity_Pas = ((zero + ACENTRIC * one) / xiLiquid) * 1e-3

  // Brock and Bird, Pc in bar, result in mN/m, with Q of a normal boiling point at 0.66 of the critical temperature.
  const Q = 0.1196 * (1 + (0.66 * Math.log(Pc_bar / 1.01325)) / 0.34) - 0.279
  const surfaceTension_N_m = Pc_bar ** (2 / 3) * critical.temperature_K ** (1 / 3) * Q * (1 - Tr) ** (11 / 9) * 1e-3
  return { liquidViscosity_Pas, vapourViscosity_Pas, surfaceTension_N_m }
}
