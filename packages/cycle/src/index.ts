export { conditions } from './system.ts'
