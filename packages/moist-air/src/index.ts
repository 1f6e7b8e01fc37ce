export { type Humidity, type MoistAir, moistAir } from './moist-air.ts'
