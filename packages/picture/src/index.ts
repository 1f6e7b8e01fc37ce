export { chargingChart } from './charging-chart.ts'
export { DESK, PHONE, type Picture, type PictureTable, type Sheet } from './picture.ts'
export { subcoolingChart } from './subcooling-chart.ts'
export { PAGE, type Palette, PRINT } from './tokens.ts'
