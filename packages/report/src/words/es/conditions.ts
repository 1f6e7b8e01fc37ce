/** What must hold before a method may speak. */
export const CONDITIONS = {
  'The air filter or the indoor coil is dirty or blocked':
    'El filtro de aire o el serpentín interior está sucio u obstruido',
  'Clean the filter and the coil, let the system settle and read again':
    'Limpie el filtro y el serpentín, deje que el sistema se estabilice y lea de nuevo',
  'Bring the airflow to 400 CFM per ton ({0} to {1}), let the system settle and read again':
    'Lleve el flujo de aire a 400 CFM por tonelada (de {0} a {1}), deje que el sistema se estabilice y lea de nuevo',
  'Airflow {0} is below {1}': 'El flujo de aire, {0}, está por debajo de {1}',
  'More than the {0} that were asked for: look at the scale again, and enter what truly moved':
    'Más que los {0} que se pedían: mire otra vez la báscula y anote lo que de verdad pasó',
  'More went in at once than the whole nameplate charge': 'Entró de una vez más que toda la carga de placa',
  'Stop the compressor, and do not start it: correct the entry in the log, or recover what is too much':
    'Detenga el compresor y no lo ponga en marcha: corrija la anotación en el registro, o recupere lo que sobra',
  'Read again what was read before that': 'Lea de nuevo lo que se leyó antes de eso',
  'The load was high before the last change; nothing tells whether it still is':
    'La carga térmica era alta antes del último cambio; nada dice si todavía lo es',
  'The system was empty and evacuated before it was weighed in':
    'El sistema estaba vacío y evacuado antes de cargarlo por peso',
  'The charge was lost, and nothing tells that the leak is repaired':
    'Se perdió la carga, y nada dice que la fuga esté reparada',
  'Find the leak and repair it; what is weighed in would leave the same way':
    'Encuentre la fuga y repárela; lo que se cargue se iría por el mismo camino',
  'whether the leak was found and repaired': 'si se encontró y reparó la fuga',
  'No pressure test is in the log': 'No hay prueba de presión en el registro',
  'No vacuum test is in the log': 'No hay prueba de vacío en el registro',
  'Neither a pressure test nor a vacuum test is in the log':
    'No hay prueba de presión ni prueba de vacío en el registro',
  'A pressure test and a vacuum test are in the log': 'Hay prueba de presión y prueba de vacío en el registro',
  'Stand it under dry nitrogen, then hold it under vacuum, and enter both':
    'Déjelo bajo nitrógeno seco, luego manténgalo en vacío, y anote ambas pruebas',
  'to be read again when that is done': 'se lee de nuevo cuando eso esté hecho',
  'Airflow {0} is {1} the usual {2} to {3}': 'El flujo de aire, {0}, está {1} la banda habitual de {2} a {3}',
  'Airflow {0} is in range': 'El flujo de aire, {0}, está en la banda',
  'Expected split {0}': 'Diferencia de temperatura esperada {0}',
  'The temperature split is {0} above the expected one: too little air':
    'La diferencia de temperatura del aire está {0} por encima de la esperada: muy poco aire',
  'Put the airflow right (filter, coil, blower, ducts), let the system settle and read again':
    'Corrija el flujo de aire (filtro, serpentín, ventilador, ductos), deje que el sistema se estabilice y lea de nuevo',
  'The temperature split is below the expected one by more than {0}: air is not short, the capacity is':
    'La diferencia de temperatura del aire está por debajo de la esperada en más de {0}: no falta aire, falta capacidad',
  'The temperature split is within {0} of the expected one':
    'La diferencia de temperatura del aire está a menos de {0} de la esperada',
  'little air looks like a wrong charge': 'el poco aire parece una carga incorrecta',
  'Nothing tells whether the indoor airflow is right': 'Nada indica si el flujo de aire interior es correcto',
  'Measure the airflow, or read return air (dry and wet bulb) and supply air':
    'Mida el flujo de aire, o lea el aire de retorno (bulbo seco y húmedo) y el aire de suministro',
  'The suction line reads {0}, colder than the refrigerant there can be, {1}':
    'La línea de succión marca {0}, más fría de lo que puede estar allí el refrigerante, {1}',
  'Check the thermometer and its contact, the gauge, and that the refrigerant is the one on the nameplate; read again':
    'Revise el termómetro y su contacto, el manómetro, y que el refrigerante sea el de la placa; lea de nuevo',
  'the suction line and its pressure do not fit together': 'la línea de succión y su presión no concuerdan',
  'The system rested {0} after liquid went in': 'El sistema reposó {0} después de entrar líquido',
  'Liquid went into the stopped system; it has not rested {0} since':
    'Entró líquido al sistema detenido; desde entonces no ha reposado {0}',
  'Leave the compressor off {0} so that the pressures equalise, then start':
    'Deje el compresor apagado {0} para que se igualen las presiones y luego arranque',
  'The load is high: {0}': 'La carga térmica es alta: {0}',
  'Force a high load: hold the doors open or warm the box, until the valve stands wide open; then look again':
    'Fuerce una carga térmica alta: mantenga las puertas abiertas o caliente la cámara hasta que la válvula esté totalmente abierta; luego mire de nuevo',
  'The load is as found, and nothing shows that it is high':
    'La carga térmica es la que había, y nada muestra que sea alta',
  'Nothing tells whether the load is high': 'Nada indica si la carga térmica es alta',
  'box against set point tells the load': 'la cámara frente a su punto de ajuste indica la carga térmica',
  'a glass is judged only under high load': 'una mirilla se juzga solo con carga térmica alta',
  'set point {0}, typed “{1}”': 'punto de ajuste {0}; se escribió “{1}”',
  'The box stands at least {0} above its set point: the valve is wide open':
    'La cámara está al menos {0} por encima de su punto de ajuste: la válvula está totalmente abierta',
  'The box is within {0} of its set point: the valve is throttling':
    'La cámara está a menos de {0} de su punto de ajuste: la válvula está modulando',
  'The air entering the condenser was not read': 'No se leyó el aire que entra al condensador',
  'the superheat target hangs on it': 'el objetivo de sobrecalentamiento depende de él',
  'It is colder outdoors than {0}: superheat tells nothing about the charge':
    'Afuera hace más frío que {0}: el sobrecalentamiento no dice nada de la carga',
  'Recover, evacuate and weigh in the nameplate charge, or come back on a warmer day':
    'Recupere, haga vacío y cargue por peso la carga de placa, o vuelva un día más cálido',
  'It is colder outdoors than {0}: the superheat method is near its limit':
    'Afuera hace más frío que {0}: el método de sobrecalentamiento está cerca de su límite',
  'It is warm enough outdoors': 'Afuera hace suficiente calor',
  'The return air was read before the last change, and it cools as the system runs':
    'El aire de retorno se leyó antes del último cambio, y se enfría mientras el sistema funciona',
  'was read before the last change': 'se leyó antes del último cambio',
  'The readings were taken before the last change to the system':
    'Las lecturas se tomaron antes del último cambio en el sistema',
  'Let it run {0}, then read again': 'Déjelo funcionar {0} y luego lea de nuevo',
  'it was read before the last change': 'se leyó antes del último cambio',
  'Let it run until {0} have passed without a change, then read again':
    'Déjelo funcionar hasta que pasen {0} sin cambios y luego lea de nuevo',
  'Nothing says how long the system has run without a change':
    'Nada dice cuánto tiempo ha funcionado el sistema sin cambios',
  'Let it run {0} and say so': 'Déjelo funcionar {0} e indíquelo',
  'readings count only when the system has settled': 'las lecturas valen solo cuando el sistema se ha estabilizado',
  'The system has run at least {0} without a change': 'El sistema ha funcionado al menos {0} sin cambios',
  'The system has not yet run {0} without a change': 'El sistema todavía no ha funcionado {0} sin cambios',
  'The system ran {0} {1}; {2} are asked for': 'El sistema funcionó {0} {1}; se piden {2}',
  'When it was read, the system had run {0} {1}; {2} are asked for':
    'Cuando se leyó, el sistema llevaba {0} funcionando {1}; se piden {2}',
  'Some readings were taken before the system had run {0}':
    'Algunas lecturas se tomaron antes de que el sistema hubiera funcionado {0}',
  'The system was looked at before the last change to it': 'El sistema se observó antes de su último cambio',
  'Let it run {0}, then look again': 'Déjelo funcionar {0} y luego mire de nuevo',
  'it was seen before the last change': 'se vio antes del último cambio',
  'it was read before the system had settled': 'se leyó antes de que el sistema se estabilizara',
  '{0} still moves': '{0}: todavía se mueve',
  '{0} and {1} more still move': '{0} y {1} más todavía se mueven',
  'Nothing is measured yet': 'Todavía no se mide nada',
  'Watched for less than {0} so far': 'Observado menos de {0} hasta ahora',
  'All {0} readings have held still for {1}': 'Las {0} lecturas se han mantenido estables durante {1}',
  'The system is empty and evacuated': 'El sistema está vacío y evacuado',
  'The system still holds a charge of unknown weight': 'El sistema todavía tiene una carga de peso desconocido',
  'Recover all of it and weigh it, leak check, evacuate, then weigh in the right charge':
    'Recupérela toda y pésela, busque fugas, haga vacío y luego cargue por peso la carga correcta',
  'The charge was lost; what is left is not known': 'La carga se perdió; no se sabe cuánto queda',
  'Recover what is left, repair the leak, leak check and evacuate first':
    'Primero recupere lo que queda, repare la fuga, busque fugas y haga vacío',
  'Nothing tells whether the system is empty': 'Nada indica si el sistema está vacío',
  'A charge is weighed into an empty, evacuated system only':
    'La carga por peso se hace solo en un sistema vacío y evacuado',
  'whether to recover first or to weigh in': 'si primero hay que recuperar o cargar por peso',
  'Warm the return air or wait for other weather and test again, or recover, evacuate and weigh in':
    'Caliente el aire de retorno o espere otro clima y pruebe de nuevo, o recupere, haga vacío y cargue por peso',
  'No valid test: {0}': 'Prueba no válida: {0}',
  'The target superheat is at least {0}': 'El sobrecalentamiento objetivo es al menos {0}',
  'The target superheat {0} may lie below {1}: {2} is far above it, but once it comes near, this method cannot end in this weather':
    'El sobrecalentamiento objetivo {0} puede quedar por debajo de {1}: {2} queda muy por encima, pero cuando se acerque, este método no puede terminar con este clima',
  'Know beforehand that weighed steps cannot end in this weather: warm the return air or wait for other weather before the last one; or recover all of it now, evacuate and weigh in':
    'Sepa de antemano que los pasos pesados no pueden terminar con este clima: caliente el aire de retorno o espere otro clima antes del último; o recupere todo ahora, haga vacío y cargue por peso',
  'No valid test: the target superheat {0} is not clearly above {1}':
    'Prueba no válida: el sobrecalentamiento objetivo {0} no está claramente por encima de {1}',
} as const
