/** What can hurt someone or something. */
export const CAUTIONS = {
  'Pressure test with regulated dry nitrogen only; never with oxygen or compressed air':
    'Haga la prueba de presión solo con nitrógeno seco regulado; nunca con oxígeno ni aire comprimido',
  'Do not run a hermetic compressor in a vacuum': 'No haga funcionar un compresor hermético en vacío',
  'Wear eye and hand protection; lock out power before opening panels':
    'Use protección para los ojos y las manos; bloquee la alimentación eléctrica antes de abrir paneles',
  '{0} burns: no flame and no torch until all of it is recovered and the system is purged with dry nitrogen; ventilate, keep ignition sources away':
    'El {0} es inflamable: sin llama ni soplete hasta recuperarlo todo y purgar el sistema con nitrógeno seco; ventile y aleje las fuentes de ignición',
  '{0} burns, and the oil still gives it off under vacuum: use a pump rated for it, lead its exhaust outdoors, ventilate, no flame and no switch sparking nearby':
    'El {0} es inflamable, y el aceite todavía lo suelta al vacío: use una bomba apta para él, lleve su descarga al exterior, ventile, sin llama ni interruptor que haga chispa cerca',
  "The maker's instructions, local codes and a licence come first":
    'Las instrucciones del fabricante, las normas locales y la licencia están primero',
  '{0} burns: ventilate, keep ignition sources away, use equipment rated for it, keep to the charge limit of the room':
    'El {0} es inflamable: ventile, aleje las fuentes de ignición, use equipo apto para él y respete el límite de carga del recinto',
  "The safety class of {0} is not on file here: read the cylinder's label before opening anything":
    'La clase de seguridad del {0} no está registrada aquí: lea la etiqueta del cilindro antes de abrir nada',
  'Never liquid into a running low side: it slugs the compressor and washes out its oil':
    'Nunca cargue líquido por el lado de baja en marcha: causa golpes de líquido en el compresor y le lava el aceite',
  '{0} leaves its cylinder as liquid, or its composition shifts; throttle it to vapour before the port':
    'El {0} sale del cilindro como líquido, o su composición se altera; estrangúlelo a vapor antes del puerto',
  'A charge that went missing left through a leak: find it': 'La carga que falta se fue por una fuga: encuéntrela',
  'Pumped down, the receiver holds the whole charge: it must not stand more than 80 % full of liquid then':
    'Al recoger la carga en el recibidor, este la contiene toda: no debe quedar lleno de líquido a más del 80 %',
  'An accumulator hides liquid that left the evaporator: wait the full time before reading':
    'Un acumulador oculta el líquido que salió del evaporador: espere el tiempo completo antes de leer',
  'Never vent: recover': 'Nunca libere refrigerante a la atmósfera: recupérelo',
  'Fill the recovery cylinder to 80 % of its volume at most, and never mix refrigerants in it':
    'Llene el cilindro de recuperación hasta el 80 % de su volumen como máximo y nunca mezcle refrigerantes en él',
  'Superheat at the compressor is {0}: liquid may reach it. Do not leave it running like this':
    'El sobrecalentamiento en el compresor es {0}: puede llegarle líquido. No lo deje funcionando así',
  'The compressor draws {0}, more than its rated-load current {1}: find out why before anything else':
    'El compresor consume {0}, más que su corriente nominal con carga {1}: averigüe la causa antes que nada',
  'Liquid went into the running low side: listen to the compressor and check its oil':
    'Entró líquido por el lado de baja en marcha: escuche el compresor y revise su aceite',
  '{0} went into a system of {1}: the charge is mixed; recover it all':
    'Entró {0} a un sistema de {1}: la carga está mezclada; recupérela toda',
  'Dry nitrogen only: oxygen with oil explodes, air brings water and oxygen':
    'Solo nitrógeno seco: el oxígeno con aceite explota, el aire trae agua y oxígeno',
  'Use a regulator and a relief valve set no higher than the lowest test pressure on the nameplates':
    'Use un regulador y una válvula de alivio ajustada a no más que la menor presión de prueba de las placas',
  'Raise the pressure in steps and stand clear; never tighten or braze a joint under pressure':
    'Suba la presión por pasos y manténgase a distancia; nunca apriete ni suelde una unión bajo presión',
  'Never run a hermetic compressor in a vacuum, nor test its insulation there: the windings arc':
    'Nunca haga funcionar un compresor hermético en vacío ni pruebe allí su aislamiento: los devanados hacen arco',
  'Recover the refrigerant before pulling a vacuum: the pump would vent it':
    'Recupere el refrigerante antes de hacer vacío: la bomba lo liberaría a la atmósfera',
  'Keep a superheat at all times: opened too far, it lets liquid into the compressor':
    'Mantenga siempre un sobrecalentamiento: si se abre demasiado, deja entrar líquido al compresor',
  'Air conditioner: up to {0} of {1} in a circuit whatever the room; above that the size of the room decides, above {2} it takes special measures, above {3} it belongs in no occupied space':
    'Aire acondicionado: hasta {0} de {1} por circuito en cualquier recinto; por encima decide el tamaño del recinto, por encima de {2} exige medidas especiales, por encima de {3} no corresponde a ningún espacio ocupado',
  'Refrigerating appliance: up to {0} of {1} in a circuit whatever the room; a commercial one up to {2} where its marking says for how large a room, a household one no more. A system built on site goes by the size of its room':
    'Aparato de refrigeración: hasta {0} de {1} por circuito en cualquier recinto; uno comercial hasta {2} donde su rotulado diga para qué tamaño de recinto, uno doméstico no más. Un sistema armado en el sitio se rige por el tamaño de su recinto',
} as const
