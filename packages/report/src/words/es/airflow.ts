/** Airflow, however it was measured. */
export const AIRFLOW = {
  'Airflow {0} {1}, {2} of standard air': 'Flujo de aire {0} {1}, {2} de aire estándar',
  'heater {0}, {1}, {2}': 'calefactor {0}, {1}, {2}',
  'three phases': 'trifásico',
  'single phase': 'monofásico',
  'blower {0}': 'ventilador {0}',
  'temperature rise {0}': 'aumento de temperatura {0}',
  'external static pressure {0}, air density {1} of standard':
    'presión estática externa {0}, densidad del aire {1} de la estándar',
  'the blower runs at the speed of the table, with coil and filter as the table has them':
    'el ventilador gira a la velocidad de la tabla, con serpentín y filtro como en la tabla',
  'pressure drop {0}, air density {1} of standard': 'caída de presión {0}, densidad del aire {1} de la estándar',
  'the table is for a coil as wet, or a filter as clean, as this one':
    'la tabla es para un serpentín tan mojado, o un filtro tan limpio, como este',
  '{0} points, {1}': '{0} puntos, {1}',
  'even profile: three quarters of the points have a tenth of the largest velocity pressure':
    'perfil parejo: tres cuartos de los puntos tienen un décimo de la mayor presión de velocidad',
  'uneven profile: move the traverse to a longer straight run of duct':
    'perfil desparejo: mueva el recorrido a un tramo recto de ducto más largo',
  'round duct, {0} inside': 'ducto redondo, {0} de interior',
  'rectangular duct, {0} by {1} inside': 'ducto rectangular, {0} por {1} de interior',
  'air pressure': 'presión del aire',
  'as a fraction': 'como fracción',
  'heater voltage': 'voltaje del calefactor',
  'heater current': 'corriente del calefactor',
  'blower power': 'potencia del ventilador',
  'temperature rise': 'aumento de temperatura',
  'by electric heat': 'por calefacción eléctrica',
  'energy balance of the air across the heater': 'balance de energía del aire a través del calefactor',
  'external static pressure at standard density': 'presión estática externa a densidad estándar',
  'by fan table': 'por tabla del ventilador',
  "maker's fan table, between its entries": 'tabla del ventilador según el fabricante, entre sus valores',
  'two lines or more, static pressure rising, an airflow on each':
    'dos líneas o más, con presión estática creciente y un flujo de aire en cada una',
  'fan table': 'tabla del ventilador',
  'pressure drop at standard density': 'caída de presión a densidad estándar',
  'by pressure drop': 'por caída de presión',
  "maker's table, between its entries": 'tabla del fabricante, entre sus valores',
  'two lines or more, airflow and pressure drop rising together, the drop with its power 0.9 to 2.2':
    'dos líneas o más, con flujo de aire y caída de presión crecientes a la vez, la caída con su potencia de 0.9 a 2.2',
  'table of pressure drops': 'tabla de caídas de presión',
  velocity: 'velocidad',
  'by traverse': 'por recorrido de velocidades',
  'log-linear rule, two diameters (recalled)': 'regla log-lineal, dos diámetros (de memoria)',
  'log-Tchebycheff rule (recalled)': 'regla log-Tchebycheff (de memoria)',
  'AMCA and ASHRAE practice (recalled)': 'práctica de AMCA y ASHRAE (de memoria)',
  'uncertainty of the velocity': 'incertidumbre de la velocidad',
  'velocity pressure': 'presión de velocidad',
  'duct width': 'ancho del ducto',
  'duct height': 'alto del ducto',
  'duct diameter': 'diámetro del ducto',
} as const
