/** Causes other than the charge, and what tells them apart. */
export const DIAGNOSIS = {
  'The subcooling is not known': 'No se conoce el subenfriamiento',
  'Little liquid stands in the condenser: subcooling {0} is below {1}':
    'Hay poco líquido en el condensador: el subenfriamiento {0} está por debajo de {1}',
  'Enough liquid stands in the condenser: subcooling {0} is above {1}':
    'Hay suficiente líquido en el condensador: el subenfriamiento {0} está por encima de {1}',
  'Subcooling {0} is too close to {1} to tell': 'El subenfriamiento {0} está demasiado cerca de {1} para decidir',
  'air or other non-condensables, or little condenser air':
    'aire u otros no condensables, o poco aire en el condensador',
  'The condenser coil is dirty or blocked': 'El serpentín del condensador está sucio u obstruido',
  'The condensing temperature above the entering air is not known':
    'No se conoce la temperatura de condensación sobre el aire de entrada',
  'Condensing {0} above the entering air, no more than {1}': 'Condensación {0} sobre el aire de entrada, no más de {1}',
  'Condensing {0} above the entering air, against {1} at most: an overcharge, non-condensables or a dirty coil would all do this':
    'Condensación {0} sobre el aire de entrada, frente a {1} como máximo: una sobrecarga, no condensables o un serpentín sucio harían todos lo mismo',
  'stop the system and compare its standing pressure with saturation at the ambient temperature; running, the air leaving the condenser tells how much air flows':
    'detenga el sistema y compare su presión en reposo con la saturación a la temperatura ambiente; en funcionamiento, el aire que sale del condensador indica cuánto aire pasa',
  'a dirty coil would explain the high pressure': 'un serpentín sucio explicaría la presión alta',
  'The charge or {0}: these readings fit both': 'La carga o {0}: estas lecturas concuerdan con ambas',
  'Do not top up: the charge left through a leak': 'No complete la carga: se fue por una fuga',
  'Leave the charge alone: {0}': 'No toque la carga: {0}',
  'Then let the system settle and read everything again':
    'Después deje que el sistema se estabilice y lea todo de nuevo',
  'Find the restriction: feel or measure along the liquid line for the place where it turns colder; change the drier if it is there':
    'Encuentre la restricción: toque o mida a lo largo de la línea de líquido hasta el lugar donde se enfría; cambie el filtro secador si está allí',
  'Clean the condenser coil and check its fan; then stop the system and compare its standing pressure with saturation at the ambient temperature to find non-condensables':
    'Limpie el serpentín del condensador y revise su ventilador; después detenga el sistema y compare su presión en reposo con la saturación a la temperatura ambiente para encontrar no condensables',
  "Check the orifice against the nameplate; compare compressor current and pressures with the maker's curves":
    'Compare el orificio con la placa; compare la corriente y las presiones del compresor con las curvas del fabricante',
  'Check the valve: bulb charge, strainer, adjustment, pressure drop ahead of it':
    'Revise la válvula: carga del bulbo, malla, ajuste, caída de presión antes de ella',
  'Check the valve: bulb fixed, insulated and in its place, adjustment, seat':
    'Revise la válvula: bulbo fijo, aislado y en su lugar, ajuste, asiento',
  'Stop adding and recovering; look for another fault: air over both coils, metering device, compressor, non-condensables in the circuit':
    'Deje de agregar y recuperar; busque otra falla: aire en ambos serpentines, dispositivo de expansión, compresor, no condensables en el circuito',
  'Recover what is left and weigh it, find and repair the leak, leak check, evacuate, weigh in':
    'Recupere lo que queda y péselo, encuentre y repare la fuga, busque fugas, haga vacío, cargue por peso',
  'liquid-line restriction': 'una restricción en la línea de líquido',
  'The drier cools the liquid by {0}, more than {1}: it is restricted':
    'El filtro secador enfría el líquido {0}, más de {1}: está restringido',
  'read the liquid line again with a better thermometer': 'lea de nuevo la línea de líquido con un termómetro mejor',
  'A leak was found and is not repaired': 'Se encontró una fuga y no está reparada',
  'The charge went missing suddenly: it left through a leak': 'La carga se perdió de repente: se fue por una fuga',
  'a leak': 'una fuga',
  'the system does not answer to its charge': 'el sistema no responde a su carga',
  'the valve feeds too little, or something ahead of it is restricted':
    'la válvula alimenta muy poco, o algo antes de ella está restringido',
  'the valve feeds too much': 'la válvula alimenta demasiado',
  'a weak compressor, or an orifice too large': 'un compresor débil, o un orificio demasiado grande',
  overcharged: 'sobrecarga',
  'evaporating temperature': 'temperatura de evaporación',
  'dew point at the suction pressure': 'punto de rocío a la presión de succión',
  'suction line above that dew point': 'línea de succión sobre ese punto de rocío',
  'condensing temperature': 'temperatura de condensación',
  'bubble point at the liquid pressure': 'punto de burbuja a la presión de líquido',
  'liquid line below that bubble point': 'línea de líquido bajo ese punto de burbuja',
  'discharge temperature': 'temperatura de descarga',
  'discharge line': 'línea de descarga',
  'condenser air rise': 'aumento del aire del condensador',
  'air leaving the condenser above the outdoor air': 'aire que sale del condensador sobre el aire exterior',
  'supply air drop': 'caída del aire de suministro',
  'supply air below the return air': 'aire de suministro bajo el aire de retorno',
  'compressor power': 'potencia del compresor',
  'total power': 'potencia total',
  'temperature drop over the drier': 'caída de temperatura en el filtro secador',
  'drier inlet above drier outlet': 'entrada del filtro secador sobre su salida',
  'standing-pressure excess': 'exceso de la presión en reposo',
  'saturation of the standing pressure above the ambient': 'saturación de la presión en reposo sobre el ambiente',
  'restricted liquid line': 'línea de líquido restringida',
  'Starves the evaporator as a lack of charge does, but holds the liquid back in the condenser: superheat up, suction pressure down, subcooling up. Where liquid flashes behind it the line is cold.':
    'Deja corto al evaporador como lo hace la falta de carga, pero retiene el líquido en el condensador: sube el sobrecalentamiento, baja la presión de succión, sube el subenfriamiento. Donde el líquido se vaporiza después de ella, la línea está fría.',
  'Temperature before and after the drier, and along the line: a drop marks the place.':
    'Temperatura antes y después del filtro secador, y a lo largo de la línea: una caída marca el lugar.',
  'too little indoor air': 'muy poco aire interior',
  'Gives the evaporator less heat: suction pressure and superheat down, the supply air colder, the condenser with less to do; the coil may freeze.':
    'Da menos calor al evaporador: bajan la presión de succión y el sobrecalentamiento, el aire de suministro sale más frío, el condensador tiene menos trabajo; el serpentín puede congelarse.',
  'Look at filter, coil, blower and registers; measure the airflow.':
    'Mire filtro, serpentín, ventilador y rejillas; mida el flujo de aire.',
  'air in the refrigerant': 'aire en el refrigerante',
  'Air or other non-condensables add their pressure to the high side: gauge pressure and power up, and an apparent subcooling that no liquid backs.':
    'El aire u otros no condensables suman su presión al lado de alta: suben la presión manométrica y la potencia, y aparece un subenfriamiento que ningún líquido respalda.',
  'Stopped, equalised and at ambient, the standing pressure is above saturation.':
    'En reposo, igualado y a temperatura ambiente, la presión queda por encima de la saturación.',
  'Backs liquid up in the condenser: subcooling and high-side pressure up, power up; behind a fixed device superheat falls until liquid reaches the compressor.':
    'Acumula líquido en el condensador: suben el subenfriamiento, la presión de alta y la potencia; con un dispositivo fijo baja el sobrecalentamiento hasta que llega líquido al compresor.',
  'The standing pressure is that of the refrigerant at the ambient; a weighed recovery brings subcooling down.':
    'En reposo la presión es la del refrigerante a temperatura ambiente; una recuperación pesada baja el subenfriamiento.',
  'poor condenser air': 'mal aire en el condensador',
  'The condenser must run hotter to give its heat to less air: high-side pressure, power and discharge temperature up, the leaving air hotter, subcooling little changed.':
    'El condensador debe calentarse más para ceder su calor a menos aire: suben la presión de alta, la potencia y la temperatura de descarga, el aire sale más caliente, el subenfriamiento cambia poco.',
  'Look at the coil face, the fan and what stands before them; air leaves hotter than usual.':
    'Mire la cara del serpentín, el ventilador y lo que tengan delante; el aire sale más caliente de lo usual.',
  'short of charge': 'falta de carga',
  'Starves the evaporator, so its vapour leaves hotter, and leaves too little liquid in the condenser to cool below saturation: superheat up, subcooling and both pressures down. A thermostatic valve hides it until it is wide open.':
    'Deja corto al evaporador, así que su vapor sale más caliente, y deja muy poco líquido en el condensador para enfriarse bajo la saturación: sube el sobrecalentamiento, bajan el subenfriamiento y ambas presiones. Una válvula termostática lo oculta hasta que está totalmente abierta.',
  'A weighed step brings superheat down and subcooling up as predicted.':
    'Un paso pesado baja el sobrecalentamiento y sube el subenfriamiento como se predijo.',
  'nothing wrong': 'ninguna falla',
  'Every reading is where a system of this nameplate has it in this weather, its charge within a few per cent.':
    'Cada lectura está donde la tiene un sistema de esta placa con este clima, con su carga dentro de unos pocos por ciento.',
  'The readings stay so a quarter of an hour later.': 'Las lecturas siguen así un cuarto de hora después.',
  'valve feeds too little': 'la válvula alimenta muy poco',
  'A valve that has lost its bulb charge, or is set too tight, starves the evaporator: superheat up, suction pressure down, liquid held back before it.':
    'Una válvula que perdió la carga del bulbo, o está ajustada demasiado cerrada, deja corto al evaporador: sube el sobrecalentamiento, baja la presión de succión, el líquido queda retenido antes de ella.',
  'Subcooling is there, the line before the valve is warm, and warming the bulb does not open it.':
    'Hay subenfriamiento, la línea antes de la válvula está caliente, y calentar el bulbo no la abre.',
  'valve feeds too much': 'la válvula alimenta de más',
  'A loose bulb or a stuck needle lets liquid through: superheat gone, suction pressure up, little liquid left in the condenser.':
    'Un bulbo suelto o una aguja atascada deja pasar líquido: desaparece el sobrecalentamiento, sube la presión de succión, queda poco líquido en el condensador.',
  'Bulb tight, insulated and in its place; cooling it closes the valve or does not.':
    'Bulbo firme, aislado y en su lugar; enfriarlo cierra la válvula o no.',
  'weak compressor': 'compresor débil',
  'Pumps less than it should, because gas leaks back: suction pressure up, high-side pressure, power and superheat down.':
    'Bombea menos de lo que debe porque el gas se fuga hacia atrás: sube la presión de succión, bajan la presión de alta, la potencia y el sobrecalentamiento.',
  'The flow and power of its rating at these two pressures; suction pressure that will not pull down with the liquid line closed.':
    'El flujo y la potencia nominales a estas dos presiones; una presión de succión que no baja con la línea de líquido cerrada.',
  'Were nothing wrong': 'Si no hubiera ninguna falla',
  'Leave it as it is': 'Déjelo como está',
  'a short charge': 'una falta de carga',
  'Were the charge short': 'Si faltara carga',
  'Find and repair the leak, then bring the charge up in weighed steps':
    'Encuentre y repare la fuga, y luego complete la carga en pasos pesados',
  'an overcharge': 'una sobrecarga',
  'Were there too much charge': 'Si sobrara carga',
  'Recover in weighed steps': 'Recupere en pasos pesados',
  'Were there too little indoor air': 'Si hubiera muy poco aire interior',
  'Look at filter, coil, blower, dampers and registers, then measure the airflow':
    'Mire filtro, serpentín, ventilador, compuertas y rejillas, y luego mida el flujo de aire',
  'too little condenser air': 'muy poco aire en el condensador',
  'Were there too little condenser air': 'Si hubiera muy poco aire en el condensador',
  'Clean the condenser coil and clear what stands before it; check the fan, its blades and its direction':
    'Limpie el serpentín del condensador y quite lo que tenga delante; revise el ventilador, sus aspas y su sentido de giro',
  'a restricted liquid line': 'una línea de líquido restringida',
  'Were the liquid line restricted': 'Si la línea de líquido estuviera restringida',
  'air or other non-condensables': 'aire u otros no condensables',
  'Were there air or other non-condensables in it': 'Si hubiera aire u otros no condensables',
  'Compare the standing pressure with saturation at the ambient temperature; if it stands higher, there are non-condensables: recover the charge, evacuate and weigh in fresh refrigerant':
    'Compare la presión en reposo con la saturación a la temperatura ambiente; si es mayor, hay no condensables: recupere la carga, haga vacío y cargue por peso refrigerante nuevo',
  'a compressor that pumps too little': 'un compresor que bombea muy poco',
  'Were the compressor weak': 'Si el compresor estuviera débil',
  "Compare current and pressures with the maker's curves; check the orifice against the nameplate, and the reversing valve for leaking through":
    'Compare la corriente y las presiones con las curvas del fabricante; compare el orificio con la placa, y revise que la válvula reversible no tenga fuga interna',
  'a valve that feeds too little': 'una válvula que alimenta muy poco',
  'Did the valve feed too little': 'Si la válvula alimentara muy poco',
  'a valve that feeds too much': 'una válvula que alimenta de más',
  'Did the valve feed too much': 'Si la válvula alimentara de más',
  'Short of charge: {0} of the nameplate charge is missing, {1} to {2} in nine of ten such cases; add it in weighed steps':
    'Falta carga: faltan {0} de la carga de placa, de {1} a {2} en nueve de diez casos así; agréguela en pasos pesados',
  'Overcharged: {0} more than the nameplate charge, {1} to {2} in nine of ten such cases; recover it in weighed steps':
    'Sobrecargado: {0} más que la carga de placa, de {1} a {2} en nueve de diez casos así; recupérelo en pasos pesados',
  'Against the nameplate charge {0} is missing, {1} to {2} in nine of ten such cases: the step goes to the target, and what is left shows then':
    'Respecto a la carga de placa faltan {0}, de {1} a {2} en nueve de diez casos así: el paso va al objetivo, y lo que quede se verá entonces',
  'Against the nameplate charge {0} is too much, {1} to {2} in nine of ten such cases: the step goes to the target, and what is left shows then':
    'Respecto a la carga de placa sobran {0}, de {1} a {2} en nueve de diez casos así: el paso va al objetivo, y lo que quede se verá entonces',
  'Leave the charge as it is: these are the readings of a sound system':
    'Deje la carga como está: estas son las lecturas de un sistema en orden',
  'One more reading is worth more than any act now': 'Una lectura más vale ahora más que cualquier acción',
  'The readings do not single out one cause': 'Las lecturas no señalan una sola causa',
  'The receiver hides the charge: judge the glass under load, or weigh':
    'El recibidor oculta la carga: juzgue la mirilla bajo carga térmica, o pese',
  '{0}, no reading would be out of place': '{0}, ninguna lectura estaría fuera de lugar',
  '{0}, {1} of {2} readings would be where they are': '{0}, {1} de {2} lecturas estarían donde están',
  '{0}, no reading alone would be out of place; together they fit it {1} times less well than {2}':
    '{0}, ninguna lectura por sí sola estaría fuera de lugar; en conjunto concuerdan {1} veces menos que con {2}',
  '{0}, no reading alone would be out of place; together they fit it a little less well than {1}':
    '{0}, ninguna lectura por sí sola estaría fuera de lugar; en conjunto concuerdan un poco menos que con {1}',
  '{0}, no reading would be out of place; but that is found less often than {1}':
    '{0}, ninguna lectura estaría fuera de lugar; pero eso se encuentra con menos frecuencia que {1}',
  '{0}, no reading would be out of place; but so little off counts as right':
    '{0}, ninguna lectura estaría fuera de lugar; pero una diferencia tan pequeña cuenta como correcta',
  'more than {0}': 'más de {0}',
  'about {0}': 'unas {0}',
  '{0} alone': 'solamente {0}',
  '{0}, {1} of {2} readings would be elsewhere': '{0}, {1} de {2} lecturas estarían en otra parte',
  '{0} would be {1}; it is not, it is {2}': '{0} sería {1}; no lo es, es {2}',
  '{0} would be {1}; it is {2}': '{0} sería {1}; es {2}',
  'Rise of the condenser air': 'Aumento del aire del condensador',
  'Drop from return to supply air': 'Caída del aire de retorno al de suministro',
  'Drop over the drier': 'Caída en el filtro secador',
  'Saturation of the standing pressure above the air around it':
    'Saturación de la presión en reposo sobre el aire que lo rodea',
  'Before that: {0} is likely too. {1}, then read again':
    'Antes de eso: {0} también es probable. {1}, y luego lea de nuevo',
  '{0} or {1}: these readings fit both': '{0} o {1}: estas lecturas concuerdan con ambas',
  'One more reading will tell': 'Una lectura más lo dirá',
  'The target and the model of this system do not agree': 'El objetivo y el modelo de este sistema no concuerdan',
  'Check the facts of the system against its nameplate, then read everything again':
    'Compare los datos del sistema con su placa, y luego lea todo de nuevo',
  'To rule out {0}: {1}': 'Para descartar {0}: {1}',
  'suction pressure, outdoor temperature and return air with its wet bulb were never read together':
    'la presión de succión, la temperatura exterior y el aire de retorno con su bulbo húmedo nunca se leyeron juntos',
  'the model of this system has no answer ({0})': 'el modelo de este sistema no tiene respuesta ({0})',
  'Nothing that is known explains these readings': 'Nada de lo conocido explica estas lecturas',
  'Judged by sign rules, without a model of this system: {0}':
    'Juzgado por reglas de signos, sin un modelo de este sistema: {0}',
  'the model of this system does not reach this weather': 'el modelo de este sistema no llega a este clima',
  'the model of this system has less superheat than can be tested in this weather':
    'el modelo de este sistema tiene menos sobrecalentamiento del que se puede probar con este clima',
  'the model of this system has no steady target in this weather':
    'el modelo de este sistema no tiene un objetivo estable con este clima',
} as const
