/**
 * One word for one thing throughout the Spanish catalogue: the trade's own, as service people in Latin America say it and
 * those in Spain understand it, in the polite imperative (*agregue*, *recupere*). The test of the catalogue keeps every
 * entry to it. Numbers keep the decimal point, as gauges, scales and nameplates of the trade print it.
 *
 * Where regions differ, the words that are not used here:
 *
 * | here                     | elsewhere                                  |
 * | ------------------------ | ------------------------------------------ |
 * | sobrecalentamiento       | recalentamiento (Spain, Río de la Plata)   |
 * | succión                  | aspiración, baja (Spain)                   |
 * | cilindro                 | botella, garrafa, tanque                   |
 * | báscula                  | balanza                                    |
 * | recibidor                | recipiente de líquido, calderín            |
 * | mirilla                  | visor de líquido                           |
 * | serpentín                | batería (Spain)                            |
 * | ducto, flujo de aire     | conducto, caudal de aire (Spain)           |
 * | voltaje                  | tensión                                    |
 * | placa                    | etiqueta, chapa                            |
 *
 * *Supply* is two things: the air is *aire de suministro*, the electricity *alimentación*. A *charge* is *carga*, and a
 * heat load therefore always *carga térmica*. *Dew* and *bubble* are *rocío* and *burbuja*.
 */
export const GLOSSARY = {
  charge: 'carg',
  superheat: 'sobrecalentamiento',
  subcooling: 'subenfriamiento',
  suction: 'succión',
  discharge: 'descarga',
  'liquid line': 'línea de líquido',
  'metering device': 'dispositivo de expansión',
  'thermostatic valve': 'válvula (?:de expansión )?termostática',
  drier: 'filtro secador',
  'sight glass': 'mirilla',
  receiver: 'recibidor',
  accumulator: 'acumulador',
  nameplate: 'placa',
  maker: 'fabricante',
  blend: 'mezcla',
  recover: 'recup',
  cylinder: 'cilindro',
  scale: '(?:báscula|escala)',
  hose: 'manguera',
  leak: 'fuga',
  vacuum: '(?:vacío|vacuómetro)',
  'vacuum gauge': 'vacuómetro',
  nitrogen: 'nitrógeno',
  airflow: 'flujo de aire',
  'return air': 'aire de retorno',
  duct: 'ducto',
  coil: 'serpentín',
  'dry bulb': 'bulbo seco',
  'wet bulb': 'bulbo (?:seco y )?húmedo',
  dew: 'rocío',
  compressor: 'compresor',
  condenser: 'condensador',
  evaporator: 'evaporador',
  target: 'objetivo',
  uncertainty: 'incertidumbre',
} as const
