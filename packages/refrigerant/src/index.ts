export {
  describeProblem,
  type Kelvin,
  kelvin,
  type Pascal,
  type Problem,
  pascal,
  type Result,
} from '@chargewright/quantity'
export { blend } from './blend.ts'
export { type ApplianceChargeLimits, applianceChargeLimits } from './facts/appliance-charge-limits.ts'
export { type ChargeLimits, chargeLimits, roomChargeLimit_kg } from './facts/charge-limits.ts'
export type { Fact } from './facts/fact.ts'
export type { GwpEdition } from './facts/gwp.ts'
export { type RefrigerantFacts, refrigerantFacts } from './facts/refrigerant-facts.ts'
export type { SafetyClass, SafetyFacts } from './facts/safety.ts'
export { findRefrigerant, refrigerantNames } from './find-refrigerant.ts'
export type { ChartError } from './leak/chart-error.ts'
export { type Content, type Leak, type LeakRequest, leak, type PathPoint } from './leak/leak.ts'
export type { Component, Refrigerant } from './refrigerant.ts'
export { type NameRead, readRefrigerantName } from './refrigerant-name.ts'
export { type Saturation, type SaturationPoint, saturationAtPressure, saturationAtTemperature } from './saturation.ts'
export { type State, stateAt, stateAtQuality } from './state.ts'
export { buildTable } from './table/build-table.ts'
export { entropyAt } from './table/entropy-at.ts'
export { bubblePressure, dewPressure, enthalpyAtTemperature, vapourEnthalpyAtEntropy } from './table/invert.ts'
export { lookUp, type TableState, tableState } from './table/look-up.ts'
export type { PropertyTable } from './table/property-table.ts'
export { bubbleTemperature, dewTemperature } from './table/saturation-curve.ts'
export { tableFromBytes, tableToBytes } from './table/table-file.ts'
