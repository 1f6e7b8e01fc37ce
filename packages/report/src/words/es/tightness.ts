/** Evacuation and pressure test. */
export const TIGHTNESS = {
  'Pull down to {0}, shut off and watch for {1} again': 'Baje hasta {0}, aísle la bomba y observe de nuevo durante {1}',
  "Pump on; where it does not come down, check the pump's oil, the hoses and the valve cores":
    'Siga bombeando; si no baja, revise el aceite de la bomba, las mangueras y los núcleos de las válvulas',
  'Warm the coldest spot': 'Caliente el punto más frío',
  'See that the pump is shut off and that system and gauge have come to rest':
    'Vea que la bomba esté aislada y que el sistema y el vacuómetro estén en reposo',
  'No need to wait: the leak alone will take it above the limit':
    'No hace falta esperar: la fuga sola lo llevará por encima del límite',
  'Leave it shut off and write down a reading every minute or so until {0} have passed':
    'Déjelo aislado y anote una lectura más o menos cada minuto hasta que pasen {0}',
  'It passes, but it rises steadily: before charging, check hoses, gauge and valve cores':
    'Pasa, pero sube de forma constante: antes de cargar, revise mangueras, vacuómetro y núcleos de las válvulas',
  'Write down a reading every minute or so and longer: a leak goes on rising, moisture levels':
    'Anote una lectura más o menos cada minuto y por más tiempo: una fuga sigue subiendo, la humedad se nivela',
  'Charge into the vacuum without letting air in on the way': 'Cargue sobre el vacío sin dejar entrar aire',
  'Check the hoses, the gauge and the valve cores first':
    'Revise primero las mangueras, el vacuómetro y los núcleos de las válvulas',
  "Break the vacuum with regulated dry nitrogen, no higher than the nameplate's test pressure; find the leak and repair it":
    'Rompa el vacío con nitrógeno seco regulado, a no más que la presión de prueba de la placa; encuentre la fuga y repárela',
  'Break the vacuum with dry nitrogen, let it take up the moisture and pull down again, until it holds':
    'Rompa el vacío con nitrógeno seco, deje que absorba la humedad y baje de nuevo, hasta que se mantenga',
  "Warm the cold parts; change the filter-drier and the pump's oil":
    'Caliente las partes frías; cambie el filtro secador y el aceite de la bomba',
  'The system was shut off too early: pull down to {0} first':
    'El sistema se aisló demasiado pronto: primero baje hasta {0}',
  'Shut off at {0}, above the {1} to start from': 'Aislado en {0}, por encima de los {1} de los que debe partir',
  'The vacuum did not hold: {0} is above {1}': 'El vacío no se mantuvo: {0} está por encima de {1}',
  '{0} within {1} is above {2}': '{0} en {1} está por encima de {2}',
  'Ice in the coldest spot would not show: {0} is too cold for this test':
    'El hielo en el punto más frío no se notaría: {0} es demasiado frío para esta prueba',
  'Water at {0} has a vapour pressure of {1} only, below {2}':
    'El agua a {0} tiene una presión de vapor de solo {1}, por debajo de {2}',
  'The pressure falls: this is no test of a system that is shut off and at rest':
    'La presión baja: esto no es prueba de un sistema aislado y en reposo',
  'From {0} it went down by more than its scatter': 'Desde {0} bajó más que su dispersión',
  'Not above {0} so far: keep watching until {1} have passed':
    'No por encima de {0} hasta ahora: siga observando hasta que pasen {1}',
  'At most {0} in the first {1} of {2}': 'Como máximo {0} en los primeros {1} de {2}',
  'The vacuum held: at most {0} in {1}': 'El vacío se mantuvo: como máximo {0} en {1}',
  'From {0}, at most {1} in {2}, not above {3}': 'Desde {0}, como máximo {1} en {2}, no por encima de {3}',
  'Fewer than {0} readings: a leak cannot be told from moisture':
    'Menos de {0} lecturas: una fuga no se distingue de la humedad',
  'Expected {0} at {1}, read {2}: a change of {3}': 'Esperado {0}, con {1}; leído {2}: un cambio de {3}',
  'A loss of {0} in {1} would have shown': 'Una pérdida de {0} en {1} se habría notado',
  'The atmosphere was not read again: the weather counts into the uncertainty':
    'La atmósfera no se leyó de nuevo: el clima cuenta en la incertidumbre',
  '{0} is less than the {1} h of a full test': '{0} es menos que las {1} h de una prueba completa',
  '{0}: {1} at {2}': '{0}: {1}, con {2}',
  'It leaks: corrected for temperature it lost {0} in {1}': 'Hay fuga: corregido por temperatura perdió {0} en {1}',
  'Check hoses, gauge and valve cores, then every joint with leak solution; let the nitrogen off before opening or brazing':
    'Revise mangueras, manómetro y núcleos de las válvulas, luego cada unión con solución detectora de fugas; suelte el nitrógeno antes de abrir o soldar',
  'Repair and test again': 'Repare y pruebe de nuevo',
  'No leak seen: a loss of {0} in {1} would have shown': 'No se ve fuga: una pérdida de {0} en {1} se habría notado',
  'For a smaller leak, test longer, with a finer gauge, or watch a vacuum; then evacuate':
    'Para una fuga menor pruebe por más tiempo, con un manómetro más fino, u observe un vacío; luego haga vacío',
  'It gained {0}: the temperature read is not that of the gas': 'Ganó {0}: la temperatura leída no es la del gas',
  'Wait until gas and system have one temperature, read the pipe in the shade and read both again':
    'Espere a que el gas y el sistema tengan una misma temperatura, lea el tubo a la sombra y lea ambas de nuevo',
  'It rises steadily: the leak alone would make it {0} after {1}':
    'Sube de forma constante: la fuga sola lo llevaría a {0} después de {1}',
  'It rises steadily and levels in part: moisture, and a leak that alone would make it {0} after {1}':
    'Sube de forma constante y en parte se nivela: humedad, y una fuga que sola lo llevaría a {0} después de {1}',
  'It levels, as moisture does; a leak to {0} after {1} would have shown':
    'Se nivela, como la humedad; una fuga hasta {0} después de {1} se habría notado',
  'It does not rise beyond its scatter; a leak to {0} after {1} would have shown':
    'No sube más que su dispersión; una fuga hasta {0} después de {1} se habría notado',
  'It falls: something still pumps, or the system or the gauge was not yet at rest':
    'Baja: algo sigue bombeando, o el sistema o el vacuómetro aún no estaban en reposo',
  'A leak to {0} after {1} cannot be told from moisture or scatter with these readings':
    'Una fuga hasta {0} después de {1} no se distingue de humedad o dispersión con estas lecturas',
  'time of day': 'hora del día',
  'local date': 'fecha local',
  'date with zone': 'fecha con zona',
  'seconds, a duration (5 min), a clock with seconds (0:05:00) or a date and time (2026-05-04T14:05:30Z)':
    'segundos, una duración (5 min), un reloj con segundos (0:05:00) o una fecha y hora (2026-05-04T14:05:30Z)',
  'readings in the log': 'lecturas en el registro',
  readings: 'lecturas',
  'resolution of the gauge': 'resolución del manómetro',
  'UFGS 15182 (US government construction specification)':
    'UFGS 15182 (especificación de construcción del gobierno de EE. UU.)',
  '250 micron, at most 500 after 10 minutes: common practice':
    '250 micrones, como máximo 500 después de 10 minutos: práctica habitual del oficio',
  'pressure to start the hold from': 'presión de la que se parte',
  'pressure not to rise above': 'presión que no se debe superar',
  'time to hold': 'tiempo de mantener',
  held: 'se mantuvo',
  'not held': 'no se mantuvo',
  'keep watching': 'siga observando',
  'not deep enough': 'no es bastante profundo',
  'too cold to tell': 'demasiado frío para saber',
  'pressure falls': 'la presión baja',
  'no leak seen': 'no se ve fuga',
  'not settled': 'no está estable',
  'at the start': 'al inicio',
  'at the end': 'al final',
  'duration of the test': 'duración de la prueba',
  'uncertainty of the readings': 'incertidumbre de las lecturas',
  'perfect gas at constant volume, absolute pressures': 'gas perfecto a volumen constante, presiones absolutas',
  Start: 'Inicio',
  End: 'Fin',
  'Currie 1968: 3.29 standard uncertainties': 'Currie 1968: 3.29 incertidumbres estándar',
  'resolution of the thermometer': 'resolución del termómetro',
  'two or more, each with time, pressure and temperature': 'dos o más, cada una con tiempo, presión y temperatura',
  'readings of the pressure test': 'lecturas de la prueba de presión',
  one: 'una',
  'pressure log': 'registro de presión',
  'lines of time and pressure': 'líneas de tiempo y presión',
  '90 % interval of the leak beside any moisture (profile likelihood)':
    'intervalo de 90 % de la fuga junto a cualquier humedad (verosimilitud de perfil)',
  'Last digit of the gauge': 'Último dígito del manómetro',
  'Last digit of the thermometer': 'Último dígito del termómetro',
  'a unit of absolute pressure, such as micron or Pa': 'una unidad de presión absoluta, como micron o Pa',
  'Unit of the vacuum log': 'Unidad del registro de vacío',
  'readings of the vacuum gauge from the shutting of the valve on':
    'lecturas del vacuómetro desde que se cerró la válvula',
  'the maker’s, as typed': 'el del fabricante, como se escribió',
  'the vacuum to start from, the one not to rise above, and for how long':
    'el vacío del que se parte, el que no se debe superar, y por cuánto tiempo',
  'The maker’s criterion': 'El criterio del fabricante',
  'a part of it': 'una parte de él',
  'temperature of the coldest spot': 'temperatura del punto más frío',
} as const
