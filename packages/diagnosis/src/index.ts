export type { Cause } from './cause.ts'
