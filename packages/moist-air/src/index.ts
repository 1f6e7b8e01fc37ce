export { type AirStream, airStream } from './airflow/air-stream.ts'
export { type Airflow, STANDARD_DENSITY } from './airflow/airflow.ts'
export { airflowByElectricHeat, type ElectricHeat } from './airflow/by-electric-heat.ts'
export { airflowByFanTable, type FanEntry } from './airflow/by-fan-table.ts'
export { airflowByPressureDrop, type DropEntry } from './airflow/by-pressure-drop.ts'
export { airflowByTraverse, type TraverseReadings } from './airflow/by-traverse.ts'
export { PLAIN_ANEMOMETER, PLAIN_MANOMETER } from './airflow/plain-instruments.ts'
export { type AirflowEntry, readAirflowTable } from './airflow/read-airflow-table.ts'
export {
  type Duct,
  LOG_LINEAR,
  LOG_TCHEBYCHEFF,
  type TraversePoints,
  traversePoints,
} from './airflow/traverse-points.ts'
export { type Humidity, type MoistAir, moistAir } from './moist-air.ts'
