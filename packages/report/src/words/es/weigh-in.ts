/** The charge by weight and the walk of weighing it in. */
export const WEIGH_IN = {
  '{0} {1}: {2}, {3} % of it {4}, the rest {5}': '{0} {1}: {2}, {3} % con {4}, el resto con {5}',
  'Lines {0}: {1} less {2} included, at {3}': 'Líneas {0}: {1} menos {2} incluidos, a {3}',
  '{0} left the charging cylinder: {1} of liquid at {2}': '{0} salió del cilindro de carga: {1} de líquido a {2}',
  'liquid at {0}': 'líquido a {0}',
  'saturated vapour': 'vapor saturado',
  'vapour at {0} and {1}': 'vapor a {0} y {1}',
  'Drier {0}: {1} in place of {2}, full of {3}': 'Filtro secador {0}: {1} en lugar de {2}, lleno de {3}',
  'Head-pressure control {0}: {1} % of {2} flooded to hold {3} at {4}':
    'Control de presión de condensación {0}: {1} % de {2} inundado para mantener {3} a {4}',
  'The hose holds {0}: {1} long, {2} inside, full of {3}':
    'La manguera contiene {0}: {1} de largo, {2} de interior, llena de {3}',
  '{0} left the cylinder, and as much went into the system': '{0} salió del cilindro, y otro tanto entró al sistema',
  '{0} went into the system: {1} left the cylinder, the hose {2} {3}':
    '{0} entró al sistema: {1} salió del cilindro, la manguera {2} {3}',
  '{0} in {1} {2}: {3} less {4} included, at {5} of {6}': '{1} de {0} pulg {2}: {3} menos {4} incluidos, a {5} de {6}',
  'Empty the system into a recovery cylinder, repair and pressure test it with dry nitrogen, evacuate it':
    'Vacíe el sistema en un cilindro de recuperación, repárelo, pruébelo a presión con nitrógeno seco y haga vacío',
  'The vacuum holds with the pump shut off': 'El vacío se mantiene con la bomba aislada',
  'The vacuum does not hold': 'El vacío no se mantiene',
  'It leaks, or it is not dry': 'Hay una fuga, o no está seco',
  'Find the leak or evacuate further; charge nothing': 'Encuentre la fuga o siga haciendo vacío; no cargue nada',
  'Ventilate, keep ignition sources away and use equipment rated for {0}':
    'Ventile, aleje las fuentes de ignición y use equipo apto para {0}',
  'Read the cylinder and the nameplate: both must say {0}': 'Lea el cilindro y la placa: ambos deben decir {0}',
  'Stand the cylinder on the scale so that it gives liquid, the hoses hanging free':
    'Ponga el cilindro en la báscula de modo que entregue líquido, con las mangueras colgando libres',
  'Lock out the power: the compressor stays off until all is in and has rested':
    'Bloquee la alimentación eléctrica: el compresor queda apagado hasta que todo haya entrado y reposado',
  'Evacuate the hose, fill it up to the closed valve of the high side, then set the scale to zero':
    'Haga vacío en la manguera, llénela hasta la válvula cerrada del lado de alta y luego ponga la báscula en cero',
  'Open the high side and let liquid in; watch the scale and the low-side gauge':
    'Abra el lado de alta y deje entrar líquido; vigile la báscula y el manómetro de baja',
  'The low-side pressure rises': 'La presión del lado de baja sube',
  'Slow down towards the end and close the cylinder at {0}':
    'Vaya más despacio hacia el final y cierre el cilindro en {0}',
  'More than {0} went in': 'Entró más de {0}',
  'The system is overcharged': 'El sistema está sobrecargado',
  'Recover the excess and weigh it; where the charge is critical, recover all and begin again':
    'Recupere el exceso y péselo; si la carga es crítica, recupere todo y empiece de nuevo',
  'Close the high side and recover at once what the hose holds: liquid shut in between two valves can burst it':
    'Cierre el lado de alta y recupere de inmediato lo que contiene la manguera: el líquido encerrado entre dos válvulas puede reventarla',
  'Leave the compressor off': 'Deje el compresor apagado',
  'High and low side stand at the same pressure': 'Los lados de alta y de baja están a la misma presión',
  'Give the power back and start': 'Restablezca la alimentación y arranque',
  'The suction line frosts or sweats back to the compressor, or the compressor knocks':
    'La línea de succión se escarcha o suda hasta el compresor, o el compresor golpea',
  'Liquid comes back to it': 'Le regresa líquido',
  'Close the cylinder at once, and stop the compressor if it knocks':
    'Cierre el cilindro de inmediato y detenga el compresor si golpea',
  'Let it run before anything is judged': 'Déjelo funcionar antes de juzgar nada',
  'Weigh the cylinder, write both weights down and check the seal for leaks':
    'Pese el cilindro, anote ambos pesos y revise que el sello no tenga fugas',
  'Check the seal for leaks and sign the record': 'Revise que el sello no tenga fugas y firme el registro',
  'Weigh the cylinder, write both weights down, cap the ports and check them for leaks':
    'Pese el cilindro, anote ambos pesos, tape los puertos y revise que no tengan fugas',
  'The capillary is blocked': 'El tubo capilar está obstruido',
  'The metering device is shut or blocked, or a valve in the line is closed':
    'El dispositivo de expansión está cerrado u obstruido, o hay una válvula cerrada en la línea',
  'The low-side pressure has not risen': 'La presión del lado de baja no ha subido',
  'Close the cylinder and find the restriction; do not charge through the low side to get round it':
    'Cierre el cilindro y encuentre la restricción; no cargue por el lado de baja para evitarla',
  'Only if the cylinder gave no more before all was in: let the rest in slowly at the suction port; {0} is a blend, so take liquid and throttle it to vapour before the port':
    'Solo si el cilindro dejó de entregar antes de que entrara todo: deje entrar el resto despacio por el puerto de succión; el {0} es una mezcla, así que tome líquido y estrangúlelo a vapor antes del puerto',
  'Only if the cylinder gave no more before all was in: let the rest in slowly at the suction port, as vapour':
    'Solo si el cilindro dejó de entregar antes de que entrara todo: deje entrar el resto despacio por el puerto de succión, como vapor',
  'Charge to weigh in {0}': 'Carga por peso {0}',
  'Weighed in so far {0}': 'Cargado por peso hasta ahora {0}',
  'The weighed charge is within {0} of {1}': 'La carga pesada está a menos de {0} de {1}',
  '{0} are still to go in': 'Todavía faltan por entrar {0}',
  '{0} too much went in': 'Entraron {0} de más',
  'The scale must resolve {0}': 'La báscula debe distinguir {0}',
  'The scale is too coarse for this charge': 'La báscula es demasiado gruesa para esta carga',
  'The weighed charge is uncertain by {0}; it must be right within {1}':
    'La carga pesada tiene una incertidumbre de {0}; debe ser correcta dentro de {1}',
  'A plain scale was assumed: describe yours among the instruments and correct the entry; only if it is coarser than that':
    'Se supuso una báscula común: describa la suya entre los instrumentos y corrija la anotación; solo si es más gruesa que eso',
  'If it has not run yet: give the power back, start it, let it run {0} and see that it cools':
    'Si todavía no funcionó: devuelva la alimentación, póngalo en marcha, déjelo funcionar {0} y vea que enfríe',
  'Recover, and weigh in again on a finer scale': 'Recupere y cargue por peso de nuevo con una báscula más fina',
  'Weigh in {0}, as liquid, into the high side of the stopped system':
    'Cargue por peso {0}, como líquido, en el lado de alta con el sistema detenido',
  'Lay ready: a scale fine enough for {0}, the cylinder, short hoses that shut off at their ends, gauges, vacuum pump with its gauge, recovery machine and cylinder':
    'Tenga listos: una báscula lo bastante fina para {0}, el cilindro, mangueras cortas con cierre en las puntas, manómetros, bomba de vacío con su vacuómetro, recuperadora y cilindro de recuperación',
  'A sealed system has no service valves. Before anything is connected, find its process tube, or where one can be fitted, and have an adapter with a valve for it. On the high side the charge goes in as told below; on the low side only, it goes in there as vapour, the compressor off, in small weighed parts, waiting for the pressure to settle between them':
    'Un sistema sellado no tiene válvulas de servicio. Antes de conectar nada, localice su tubo de proceso, o dónde se puede poner uno, y tenga un adaptador con válvula para él. En el lado de alta la carga entra como se indica abajo; si solo está en el lado de baja, entra por allí como vapor, con el compresor apagado, en partes pequeñas pesadas, esperando entre ellas a que la presión se asiente',
  'Pinch the process tube off, seal it, and take the adapter off; where the refrigerant burns, without a flame':
    'Estrangule el tubo de proceso, séllelo y quite el adaptador; si el refrigerante es inflamable, sin llama',
  '{0}, until “{1}”': '{0}, hasta que “{1}”',
  '{0}. If after {1} “{2}”: {3}': '{0}. Si después de {1} “{2}”: {3}',
  '{0}. If “{1}”: {2}': '{0}. Si “{1}”: {2}',
  'Recover {0} into a recovery cylinder': 'Recupere {0} en un cilindro de recuperación',
  'Weigh the cylinder before and after; where the charge is critical, recover all and weigh in again':
    'Pese el cilindro antes y después; si la carga es crítica, recupere todo y cargue por peso de nuevo',
  'liquid line': 'línea de líquido',
  'Head-pressure control': 'Control de presión de condensación',
  'fall of the level': 'descenso del nivel',
  'vapour in the line': 'vapor en la línea',
  'tube size': 'medida del tubo',
  'outside diameter': 'diámetro exterior',
  'old drier, inside volume': 'filtro secador viejo, volumen interior',
  'new drier, inside volume': 'filtro secador nuevo, volumen interior',
  'design temperature difference': 'diferencia de temperatura de diseño',
  'held condensing temperature': 'temperatura de condensación mantenida',
  'lowest ambient temperature': 'menor temperatura ambiente',
  'condenser, inside volume': 'condensador, volumen interior',
  'constant heat flow, estimated within 10 %': 'flujo de calor constante, estimado dentro de 10 %',
  'hose, inside diameter': 'manguera, diámetro interior',
  'hose, length': 'manguera, longitud',
  'balance of the hose': 'balance de la manguera',
  gave: 'entregó',
  kept: 'retuvo',
  'charge to weigh in': 'carga por peso',
  'sum of its parts': 'suma de sus partes',
  'weight before': 'peso antes',
  'weight after': 'peso después',
  'step of the scale': 'paso de la báscula',
  'share of the scale': 'participación de la báscula',
  '{0} by a scale with steps of {1}: fine enough for {2}': '{0} por una báscula con pasos de {1}: basta para {2}',
  '{0} by a scale with steps of {1}: too coarse for {2}, take a finer one':
    '{0} por una báscula con pasos de {1}: demasiado gruesa para {2}, tome una más fina',
  'Fill the hose before the scale is set to zero, as the sequence says: filled after it, the hose would keep {0} of what left the cylinder':
    'Llene la manguera antes de poner la báscula en cero, como dice la secuencia: si se llena después, la manguera retendría {0} de lo que salió del cilindro',
  'The level of a charging cylinder at {0} falls by {1} for {2}: vapour takes the place of the liquid':
    'El nivel de un cilindro de carga a {0} baja {1} por {2}: el vapor ocupa el lugar del líquido',
  'Its graduation, in mass of liquid at {0}, falls by {1}': 'Su graduación, en masa de líquido a {0}, baja {1}',
} as const
