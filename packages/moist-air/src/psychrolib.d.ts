/** The functions of the library that moist air is made of. In its SI mode temperatures are in °C, pressures in Pa. */
declare module 'psychrolib' {
  interface Psychrometrics {
    /** Makes an object with a unit system of its own. */
    readonly constructor: new () => Psychrometrics
    readonly SI: 2
    SetUnitSystem(system: 1 | 2): void
    GetHumRatioFromTWetBulb(dryBulb_C: number, wetBulb_C: number, pressure_Pa: number): number
    GetHumRatioFromRelHum(dryBulb_C: number, relativeHumidity: number, pressure_Pa: number): number
    GetHumRatioFromTDewPoint(dewPoint_C: number, pressure_Pa: number): number
    GetTWetBulbFromHumRatio(dryBulb_C: number, humidityRatio: number, pressure_Pa: number): number
    GetTDewPointFromHumRatio(dryBulb_C: number, humidityRatio: number, pressure_Pa: number): number
    GetRelHumFromHumRatio(dryBulb_C: number, humidityRatio: number, pressure_Pa: number): number
    GetMoistAirEnthalpy(dryBulb_C: number, humidityRatio: number): number
    GetMoistAirDensity(dryBulb_C: number, humidityRatio: number, pressure_Pa: number): number
  }
  const shared: Psychrometrics
  export = shared
}
