/** The compressor against its figures, and its supply. */
export const COMPRESSOR = {
  'return gas as rated': 'gas de retorno como el nominal',
  'times {0} for the return gas': 'multiplicado por {0} por el gas de retorno',
  'voltage not read, taken as rated': 'voltaje no leído, se toma el nominal',
  'rated voltage not known, supply taken as rated': 'voltaje nominal desconocido, se toma la alimentación como nominal',
  'times {0} for a voltage of {1}, rated {2}': 'multiplicado por {0} por un voltaje de {1}, nominal {2}',
  'rated {0} at dew temperatures of {1} and {2}': 'nominal {0} a temperaturas de rocío de {1} y {2}',
  'Expected {0} {1}': 'Valor esperado de {0}: {1}',
  'Measured {0} {1} {2} the expected {3}': '{0}: lo medido, {1}, {2} lo esperado, {3}',
  'is within {0} % of': 'está a menos del {0} % de',
  'is more than {0} % below': 'está más de un {0} % por debajo de',
  'is more than {0} % above': 'está más de un {0} % por encima de',
  'is off by too nearly {0} % to tell from': 'está demasiado cerca del {0} % de diferencia como para distinguirlo de',
  'Supply {0} is {1} {2} to {3}': 'La alimentación, {0}, está {1} la banda de {2} a {3}',
  'Find the cause of the voltage: connections, wire size, transformer taps, the utility':
    'Encuentre la causa del voltaje: conexiones, calibre del cable, derivaciones del transformador, la compañía eléctrica',
  'Voltage unbalance {0} ± {1} %: largest departure from the mean, over the mean':
    'Desbalance de voltaje {0} ± {1} %: la mayor desviación de la media, sobre la media',
  'No motor may run above {0} %, and this may be':
    'Ningún motor puede funcionar por encima de {0} %, y este podría estarlo',
  'With the power locked out check connections, contactor and fuses of each phase; then single-phase loads, then the utility':
    'Con la alimentación bloqueada revise conexiones, contactor y fusibles de cada fase; luego las cargas monofásicas, luego la compañía eléctrica',
  'Stop the compressor and lock it out until the supply is put right':
    'Detenga el compresor y bloquéelo hasta que se corrija la alimentación',
  'Until then load the motor to {0} % at most': 'Hasta entonces cargue el motor al {0} % como máximo',
  'It runs as rated at these pressures: the compressor does not explain what is wrong':
    'Funciona como indica el fabricante a estas presiones: el compresor no explica lo que anda mal',
  'Read pressures, voltage and {0} again with better instruments: the band and the uncertainty overlap':
    'Lea presiones, voltaje y {0} de nuevo con mejores instrumentos: la banda y la incertidumbre se superponen',
  'Read both pressures and the voltage again: what is expected is only as good as they are':
    'Lea de nuevo ambas presiones y el voltaje: lo esperado vale solo tanto como ellos',
  'Vapour leaks back inside: worn or broken valves, scroll or cylinder, a relief or unloader that stands open':
    'El vapor se fuga hacia atrás por dentro: válvulas, scroll o cilindro gastados o rotos, una válvula de alivio o descargador abierto',
  'It runs unloaded, or slower than rated': 'Funciona sin carga, o más lento que lo nominal',
  'Read both pressures again, and see that the suction strainer and the line are free':
    'Lea de nuevo ambas presiones, y vea que la malla de succión y la línea estén libres',
  'Vapour leaks back inside: worn or broken valves, scroll or cylinder, a relief or reversing valve that leaks':
    'El vapor se fuga hacia atrás por dentro: válvulas, scroll o cilindro gastados o rotos, una válvula de alivio o reversible con fuga',
  'Liquid or much oil comes back with the suction gas': 'Con el gas de succión regresa líquido o mucho aceite',
  'Read the voltage at the terminals and each phase, and the run capacitor: low or unequal voltage draws more amps':
    'Lea el voltaje en los bornes y en cada fase, y el capacitor de marcha: un voltaje bajo o desigual consume más amperes',
  'It turns hard: bearings, lack of oil, liquid in the oil':
    'Gira con dificultad: cojinetes, falta de aceite, líquido en el aceite',
  'The winding is failing, or the meter reads more than the compressor':
    'El devanado está fallando, o el medidor lee más que el compresor',
  'Read pressures, airflow and air temperatures again: more than rated is a sign of a reading that is off':
    'Lea de nuevo presiones, flujo de aire y temperaturas del aire: más que lo nominal es señal de una lectura errada',
  'The curve is of another compressor or refrigerant': 'La curva es de otro compresor o refrigerante',
  'Expected {0} {1} of the whole system at {2} outdoors and {3} in the box':
    'Valor esperado de {0}: {1} de todo el sistema con {2} afuera y {3} en la cámara',
  'mass flow': 'flujo másico',
  capacity: 'capacidad',
  'as entered': 'como se ingresó',
  'refrigerating effect': 'efecto refrigerante',
  'one for rated and actual gas': 'uno para el gas nominal y el real',
  'assumption: supply within 10 % of rated': 'suposición: alimentación dentro de 10 % del nominal',
  'a heading and lines under it': 'un encabezado y líneas debajo',
  'coefficients or a table': 'coeficientes o una tabla',
  'of its value': 'de su valor',
  "maker's ten-coefficient polynomial, AHRI Standard 540":
    'polinomio de diez coeficientes del fabricante, AHRI Standard 540',
  'a unit of it': 'una unidad de ello',
  'rating points': 'puntos de la tabla',
  points: 'puntos',
  'in its unit': 'en su unidad',
  'AHRI Standard 540: 5 % within the range of use (recalled)':
    'AHRI Standard 540: 5 % dentro del campo de uso (de memoria)',
  'measured quantity': 'magnitud medida',
  voltages: 'voltajes',
  'one, or three between phases': 'uno, o tres entre fases',
  'uncertainty of the voltage': 'incertidumbre del voltaje',
  'NEMA MG-1: nameplate voltage ± 10 % (recalled)': 'NEMA MG-1: voltaje de placa ± 10 % (de memoria)',
  'NEMA MG-1 as quoted': 'NEMA MG-1, según cita',
  'measured over rated voltage': 'medido sobre voltaje nominal',
  'load over rated': 'carga sobre nominal',
  'static load model of air conditioners, Kundur 1994, table 7.1 (recalled)':
    'modelo estático de carga de acondicionadores de aire, Kundur 1994, tabla 7.1 (de memoria)',
  'a curve of the system, or the figures of the compressor': 'una curva del sistema, o los datos del compresor',
  coefficients: 'coeficientes',
  'first cell of the heading': 'primera celda del encabezado',
  '°F or °C, the unit of the dew temperatures': '°F o °C, la unidad de las temperaturas de rocío',
  heading: 'encabezado',
  'suction, from': 'succión, desde',
  'suction, to': 'succión, hasta',
  'discharge, from': 'descarga, desde',
  'discharge, to': 'descarga, hasta',
  'return gas temperature': 'temperatura del gas de retorno',
  'return gas superheat': 'sobrecalentamiento del gas de retorno',
  'a number': 'un número',
  'rating table': 'tabla de datos nominales',
  'performance curve of the system': 'curva de rendimiento del sistema',
  'a value under each box temperature': 'un valor bajo cada temperatura de cámara',
  'points that span a region of suction and discharge temperatures':
    'puntos que abarquen una región de temperaturas de succión y descarga',
  'range of use': 'campo de uso',
  'suction dew temperature': 'temperatura de rocío de succión',
  'specific volume of the suction gas': 'volumen específico del gas de succión',
  'isentropic rise of enthalpy': 'aumento isentrópico de entalpía',
  'specific volume, rated over actual': 'volumen específico, nominal sobre real',
  'isentropic rise, actual over rated': 'aumento isentrópico, real sobre nominal',
  'refrigerating effect, actual over rated': 'efecto refrigerante, real sobre nominal',
  'outdoor temperature': 'temperatura exterior',
  'box temperature': 'temperatura de la cámara',
  "maker's performance curve of the system, between its entries":
    'curva de rendimiento del sistema según el fabricante, entre sus valores',
  'rising temperatures on both sides, two or more, and a positive value for each pair':
    'temperaturas crecientes en ambos lados, dos o más, y un valor positivo para cada par',
  doubtful: 'dudoso',
  'inside the band': 'dentro de la banda',
  'below the band': 'por debajo de la banda',
  'above the band': 'por encima de la banda',
  'do not run it': 'no lo haga funcionar',
  sound: 'en orden',
} as const
