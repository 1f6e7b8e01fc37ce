/** Words of the service record. */
export const RECORD = {
  'suction port': 'puerto de succión',
  'discharge port': 'puerto de descarga',
  'liquid-line port': 'puerto de la línea de líquido',
  'taken back': 'retirado',
  'Superheat at the compressor': 'Sobrecalentamiento en el compresor',
  'Airflow per capacity': 'Flujo de aire por capacidad',
  'Target superheat': 'Sobrecalentamiento objetivo',
  'Target subcooling': 'Subenfriamiento objetivo',
  Target: 'Objetivo',
  'Charge to weigh in': 'Carga por peso',
  'System without a name': 'Sistema sin nombre',
  withdrawn: 'retirado',
  'not used: its id was used before': 'no se usa: su id ya se había usado',
  'Cylinder book': 'Libro de cilindros',
} as const
