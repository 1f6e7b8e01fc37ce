/**
 * One word for one thing throughout the Spanish catalogue: the trade's own, as service people in Latin America say it,
 * in the polite imperative. Numbers keep the decimal point, as gauges, scales and nameplates of the trade print it.
 */
export const GLOSSARY = {
  charge: 'carg',
  superheat: 'sobrecalentamiento',
  subcooling: 'subenfriamiento',
  suction: 'succión',
  discharge: 'descarga',
  'liquid line': 'línea de líquido',
  drier: 'filtro secador',
  'sight glass': 'mirilla',
  receiver: 'recibidor',
  accumulator: 'acumulador',
  nameplate: 'placa',
  maker: 'fabricante',
  recover: 'recup',
  cylinder: 'cilindro',
  scale: '(?:báscula|escala)',
  hose: 'manguera',
  leak: 'fuga',
  'vacuum gauge': 'vacuómetro',
  nitrogen: 'nitrógeno',
  airflow: 'flujo de aire',

  'dry bulb': 'bulbo seco',
  compressor: 'compresor',
  condenser: 'condensador',
  evaporator: 'evaporador',
} as const
