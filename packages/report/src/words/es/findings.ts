/** The answers: methods, findings, targets, doses, and the words their sentences are made of. */
export const FINDINGS = {
  'nothing can be derived without the refrigerant': 'sin el refrigerante no se puede calcular nada',
  'the refrigerant “{0}” is not one that can be computed': 'el refrigerante “{0}” no es uno que se pueda calcular',
  'the metering device decides the method': 'el dispositivo de expansión decide el método',
  'The system is empty: the charge is weighed in': 'El sistema está vacío: la carga se pone por peso',
  'The charge was lost: nothing that is left in the system tells what belongs there':
    'La carga se perdió: nada de lo que queda en el sistema indica cuánto lleva',
  '{0} with receiver: the receiver hides the charge from superheat':
    '{0} con recibidor: el recibidor oculta la carga al sobrecalentamiento',
  'the application decides: superheat sets the charge of a {0} in comfort cooling only':
    'la aplicación decide: el sobrecalentamiento fija la carga de un {0} solo en aire acondicionado',
  '{0} without receiver: superheat follows the charge': '{0} sin recibidor: el sobrecalentamiento sigue a la carga',
  '{0} in refrigeration: the charge is critical': '{0} en refrigeración: la carga es crítica',
  '{0} with receiver: pressures and temperatures do not tell the charge, the glass under load does':
    '{0} con recibidor: las presiones y temperaturas no indican la carga, la mirilla bajo carga térmica sí',
  'A receiver without a sight glass shows its charge to nothing but the scale':
    'Un recibidor sin mirilla solo muestra su carga en la báscula',
  '{0} without receiver: the valve holds the superheat, subcooling follows the charge':
    '{0} sin recibidor: la válvula mantiene el sobrecalentamiento, el subenfriamiento sigue a la carga',
  '{0} with receiver: the glass under load tells the charge':
    '{0} con recibidor: la mirilla bajo carga térmica indica la carga',
  '{0}: it holds the evaporating pressure and not the superheat, only the scale is sure':
    '{0}: mantiene la presión de evaporación y no el sobrecalentamiento, solo la báscula es segura',
  'a sight glass tells that charge is missing, not how much': 'una mirilla indica que falta carga, no cuánta',
  'Step of {0}': 'Paso de {0}',
  'Sized by the response to the last step': 'Calculado según la respuesta al último paso',
  'No nameplate charge is entered: a habitual small step of {0}':
    'No se ingresó la carga de placa: un paso pequeño habitual de {0}',
  'First step: {0} of the nameplate charge {1}': 'Primer paso: {0} de la carga de placa {1}',
  'At most {0} of the nameplate charge {1}': 'Como máximo {0} de la carga de placa {1}',
  'At most {0} of the {1} that the receiver may hold': 'Como máximo {0} de los {1} que puede contener el recibidor',
  'own choice: a fiftieth of a charge that burns': 'elección propia: la quincuagésima parte de una carga inflamable',
  'own choice: a twentieth of a tiny charge': 'elección propia: la vigésima parte de una carga muy pequeña',
  'own choice: several steps fit in before it is full': 'elección propia: caben varios pasos antes de que se llene',
  'Neither the nameplate charge nor the volume of the receiver is entered: at most {0}':
    'No se ingresó la carga de placa ni el volumen del recibidor: como máximo {0}',
  'The receiver may hold {0}, {1} full': 'El recibidor puede contener {0}, lleno al {1}',
  'Halved: the refrigerant burns': 'A la mitad: el refrigerante es inflamable',
  'Halved: the charge is critical': 'A la mitad: la carga es crítica',
  'Still missing: {0}': 'Todavía falta: {0}',
  'would tell {0}': 'indicaría {0}',
  '{0} {1} changed the {2} by {3}': '{0} {1}, el {2} cambió en {3}',
  'Leave the charge as it is': 'Deje la carga como está',
  'Cap the ports, check them for leaks and sign the record':
    'Tape los puertos, revise que no tengan fugas y firme el registro',
  'Let it run {0}, then read everything again': 'Déjelo funcionar {0} y luego lea todo de nuevo',
  'Recover {0} into a recovery cylinder, from {1}': 'Recupere {0} en un cilindro de recuperación, desde {1}',
  'Weigh the cylinder before and after': 'Pese el cilindro antes y después',
  'Add {0}, as vapour, at {1}': 'Agregue {0}, como vapor, por {1}',
  'Add up to {0}, as vapour, at {1}, until the glass clears':
    'Agregue hasta {0}, como vapor, por {1}, hasta que la mirilla se aclare',
  'Keep the load high and watch the glass: close the cylinder when the bubbles are gone, and weigh what went in':
    'Mantenga alta la carga térmica y observe la mirilla: cierre el cilindro cuando no haya burbujas y pese lo que entró',
  'Add {0}, as liquid, into {1} of the stopped system': 'Agregue {0}, como líquido, por {1} con el sistema detenido',
  'Weigh it in with the compressor off': 'Cárguelo por peso con el compresor apagado',
  'If it does not flow, the cylinder is no warmer than the receiver: close the receiver outlet, start, and let the liquid line draw it in ahead of the valve, where the maker allows it; then open the outlet again':
    'Si no fluye, el cilindro no está más caliente que el recibidor: cierre la salida del recibidor, arranque y deje que la línea de líquido lo aspire antes de la válvula, donde el fabricante lo permita; luego abra de nuevo la salida',
  'Wait {0} for the pressures to equalise, then start': 'Espere {0} a que se igualen las presiones y luego arranque',
  '{0} is a blend: take liquid from the cylinder and throttle it to vapour before the port, weighing as it goes':
    'El {0} es una mezcla: tome líquido del cilindro y estrangúlelo a vapor antes del puerto, pesando mientras entra',
  'Take vapour from the cylinder, weighing as it goes': 'Tome vapor del cilindro, pesando mientras entra',
  '{0} is too close to the edge of its band for these instruments':
    '{0}: demasiado cerca del límite de su banda para estos instrumentos',
  'Let it run {0} and read everything again: once it is steady it may lie clear of the edge':
    'Déjelo funcionar {0} y lea todo de nuevo: ya estable puede quedar lejos del límite',
  'Where a better instrument is at hand, read with it: {0} {1}':
    'Si tiene a mano un instrumento mejor, lea con él: {0} {1}',
  'If it stays at the edge, leave the charge as it is and note so: these readings do not tell that it is wrong':
    'Si sigue en el límite, deje la carga como está y anótelo: estas lecturas no indican que esté mal',
  'has the largest share in the uncertainty': 'es lo que más pesa en la incertidumbre',
  'Valve superheat {0} is {1} {2} to {3}': 'El sobrecalentamiento de la válvula, {0}, está {1} la banda de {2} a {3}',
  'the glass under load tells the charge': 'la mirilla bajo carga térmica indica la carga',
  'Sight glass under high load: {0}': 'Mirilla con carga térmica alta: {0}',
  'A partly filled glass without bubbles shows a low flow, not a short charge':
    'Una mirilla a medio llenar sin burbujas muestra poco flujo, no falta de carga',
  'Raise the load until the valve stands wide open, and look again, best at a vertical line':
    'Aumente la carga térmica hasta que la válvula esté totalmente abierta y mire de nuevo, mejor en una línea vertical',
  'the valve superheat tells whether the valve is wide open':
    'el sobrecalentamiento de la válvula indica si la válvula está totalmente abierta',
  'A clear glass tells that liquid alone reaches the valve, not how much more the receiver holds':
    'Una mirilla clara indica que a la válvula llega solo líquido, no cuánto más tiene el recibidor',
  'In a vertical line a partly filled glass is unusual: look again for bubbles':
    'En una línea vertical es raro que la mirilla esté a medio llenar: mire de nuevo si hay burbujas',
  'At low flow the liquid does not fill a horizontal line; that shows less in a vertical one':
    'Con poco flujo el líquido no llena una línea horizontal; en una vertical se nota menos',
  'a restricted filter-drier': 'un filtro secador restringido',
  'The glass stands before the drier, which cannot make its bubbles':
    'La mirilla está antes del filtro secador, que no puede causar sus burbujas',
  'The drier cools the liquid by {0}, more than {1}: it flashes there':
    'El filtro secador enfría el líquido {0}, más de {1}: allí se vaporiza',
  'Bubbles already before the drier': 'Hay burbujas ya antes del filtro secador',
  'No bubbles before the drier, bubbles after it': 'Sin burbujas antes del filtro secador, burbujas después de él',
  'The drier cools the liquid by {0}, less than {1}': 'El filtro secador enfría el líquido {0}, menos de {1}',
  'an electronic sight glass before the drier tells whether vapour leaves the receiver':
    'una mirilla electrónica antes del filtro secador indica si del recibidor sale vapor',
  'The temperature drop across the drier, {0}, is too close to {1} to tell':
    'La caída de temperatura en el filtro secador, {0}, está demasiado cerca de {1} para decidir',
  'Nothing tells whether the drier ahead of the glass is restricted':
    'Nada indica si el filtro secador antes de la mirilla está restringido',
  'Superheat {0} is above {1}: no liquid reaches the valve':
    'El sobrecalentamiento {0} está por encima de {1}: a la válvula no llega líquido',
  'An empty glass and a full one look alike': 'Una mirilla vacía y una llena se ven iguales',
  'Check that the liquid valve and the solenoid are open, and read the superheat of the valve':
    'Revise que la válvula de líquido y el solenoide estén abiertos, y lea el sobrecalentamiento de la válvula',
  'Nameplate subcooling {0}, typed “{1}”': 'Subenfriamiento de placa {0}; se escribió “{1}”',
  "the target is the maker's own figure": 'el objetivo es el valor del propio fabricante',
  '{0} above': '{0} por encima',
  '{0} below': '{0} por debajo',
  'Subcooling {0} is {1} the nameplate: an edge of the band of {2} lies within that uncertainty':
    'El subenfriamiento {0} está {1} del de placa: un límite de la banda de {2} queda dentro de esa incertidumbre',
  'Subcooling {0} is within {1} of the nameplate {2}': 'El subenfriamiento {0} está a menos de {1} del de placa, {2}',
  'Subcooling {0} is {1} below the nameplate {2}': 'El subenfriamiento {0} está {1} por debajo del de placa, {2}',
  'Subcooling {0} is {1} above the nameplate {2}': 'El subenfriamiento {0} está {1} por encima del de placa, {2}',
  'the superheat at the coil outlet tells whether the valve is in control':
    'el sobrecalentamiento a la salida del serpentín indica si la válvula está controlando',
  'Superheat {0} is within {1} of its target {2}': 'El sobrecalentamiento {0} está a menos de {1} de su objetivo {2}',
  'Superheat {0} is {1} its target {2}: an edge of the band of {3} lies within that uncertainty':
    'El sobrecalentamiento {0} está {1} de su objetivo {2}: un límite de la banda de {3} queda dentro de esa incertidumbre',
  'Superheat {0} is {1} above its target {2}': 'El sobrecalentamiento {0} está {1} por encima de su objetivo {2}',
  'Superheat {0} is {1} below its target {2}': 'El sobrecalentamiento {0} está {1} por debajo de su objetivo {2}',
  "the maker's chart was entered and cannot be read": 'la tabla del fabricante se ingresó y no se puede leer',
  'the charge to weigh in starts from it': 'la carga por peso parte de ella',
  "The maker's chart covers {0} temperatures from {1} to {2}; this visit lies outside it":
    'La tabla del fabricante cubre temperaturas {0} de {1} a {2}; esta visita queda fuera',
  "The maker's chart gives no value at these temperatures": 'La tabla del fabricante no da valor a estas temperaturas',
  'Target superheat {0}': 'Sobrecalentamiento objetivo {0}',
  'a receiver hides the charge, so the readings do not answer to it':
    'un recibidor oculta la carga, así que las lecturas no responden a ella',
  'the facts do not make a model of this system ({0})': 'los datos no bastan para un modelo de este sistema ({0})',
  'outdoor temperature, return air with its wet bulb, and superheat were never read together':
    'la temperatura exterior, el aire de retorno con su bulbo húmedo y el sobrecalentamiento nunca se leyeron juntos',
  'the model of this system does not run steadily in these conditions':
    'el modelo de este sistema no funciona de forma estable en estas condiciones',
  'the model of this system cannot explain these readings, whatever its charge':
    'el modelo de este sistema no puede explicar estas lecturas con ninguna carga',
  'the model of this system does not reach the target at any charge':
    'el modelo de este sistema no llega al objetivo con ninguna carga',
  'the model of this system would move the charge the other way':
    'el modelo de este sistema movería la carga en sentido contrario',
  '{0} to the target; {1} to {2} would fit these readings (90 %)':
    '{0} hasta el objetivo; de {1} a {2} concordaría con estas lecturas (90 %)',
  'The readings fit a charge of {0}': 'Las lecturas concuerdan con una carga de {0}',
  'Half of it: the refrigerant burns': 'La mitad: el refrigerante es inflamable',
  'Half of it: the charge is critical': 'La mitad: la carga es crítica',
  'Half of it: it is known only to {0}': 'La mitad: solo se conoce con {0} de margen',
  'Half of it: the whole step could bring the superheat below {0}':
    'La mitad: el paso entero podría dejar el sobrecalentamiento por debajo de {0}',
  'by compressor superheat': 'por sobrecalentamiento en el compresor',
  'by subcooling': 'por subenfriamiento',
  'by sight glass under load': 'por mirilla bajo carga térmica',
  'by weight': 'por peso',
  add: 'agregar',
  recover: 'recuperar',
  'not the charge': 'no es la carga',
  'not ready': 'no está listo',
  'cannot tell': 'no se puede saber',
  'common practice': 'práctica habitual del oficio',
  'law in most countries, e.g. 40 CFR 82.154; local law first':
    'ley en la mayoría de los países, p. ej. 40 CFR 82.154; primero la ley local',
  'AHRI Guideline K as reported': 'AHRI Guideline K, según se reporta',
  superheat: 'sobrecalentamiento',
  subcooling: 'subenfriamiento',
  below: 'por debajo de',
  above: 'por encima de',
  vapour: 'vapor',
  liquid: 'líquido',
  'California residential field verification, RA3.2 (2008)':
    'verificación residencial en campo de California, RA3.2 (2008)',
  'specific enthalpy': 'entalpía específica',
  'specific airflow': 'flujo de aire específico',
  Adding: 'Al agregar',
  Recovering: 'Al recuperar',
  'the suction service port': 'el puerto de servicio de succión',
  'the liquid-line port': 'el puerto de la línea de líquido',
  'the receiver': 'el recibidor',
  'guard of one standard uncertainty (JCGM 106:2012)': 'resguardo de una incertidumbre estándar (JCGM 106:2012)',
  'maker, as entered': 'fabricante, como se ingresó',
  within: 'dentro de',
  'too close to the edge of': 'demasiado cerca del límite de',
  'since the last change': 'desde el último cambio',
  'before the readings': 'antes de las lecturas',
  'moving-window standard deviation of all features (Kim, Yoon, Domanski, Payne 2008, Int. J. Refrig. 31(5)); its limits: common practice':
    'desviación estándar en ventana móvil de todas las señales (Kim, Yoon, Domanski, Payne 2008, Int. J. Refrig. 31(5)); sus límites: práctica habitual del oficio',
  Superheat: 'Sobrecalentamiento',
  'Superheat at the coil outlet': 'Sobrecalentamiento a la salida del serpentín',
  assumption: 'suposición',
  Subcooling: 'Subenfriamiento',
  'Temperature split': 'Diferencia de temperatura del aire',
  'Temperature drop across the drier': 'Caída de temperatura en el filtro secador',
  'Condensing above entering air': 'Condensación sobre el aire de entrada',
  'Evaporating temperature (dew)': 'Temperatura de evaporación (rocío)',
  'Bubble temperature at the suction port': 'Temperatura de burbuja en el puerto de succión',
  'Condensing temperature (bubble)': 'Temperatura de condensación (burbuja)',
  'assumption: no elevation given': 'suposición: no se dio la altitud',
  'Valve superheat': 'Sobrecalentamiento de la válvula',
  outdoor: 'exteriores',
  'wet bulb': 'bulbo húmedo',
  'dry bulb': 'bulbo seco',
  "maker's chart, as entered": 'tabla del fabricante, como se ingresó',
  'rule of thumb (3·WB − 80 − DB)/2 °F, common practice; no maker’s chart entered':
    'regla práctica (3·WB − 80 − DB)/2 °F, práctica habitual del oficio; no se ingresó tabla del fabricante',
  'estimated by model': 'estimado por modelo',
  'estimated by model of this system, sized from its nameplate':
    'estimado por un modelo de este sistema, calculado a partir de su placa',
  hold: 'dejar',
  'Turn the stem a quarter turn at a time and let it run {0}: a valve answers late':
    'Gire el vástago un cuarto de vuelta por vez y déjelo funcionar {0}: una válvula responde tarde',
  'Put the cap back on the stem and check it for leaks': 'Vuelva a tapar el vástago y revise que no tenga fugas',
} as const
