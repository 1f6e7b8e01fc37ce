/** Start, new system, system and visit. */
export const APP_SCREENS = {
  'New system': 'Sistema nuevo',
  'From the nameplate; what is not known yet stays empty': 'De la placa; lo que aún no se sabe queda vacío',
  'Name, or where it stands': 'Nombre, o dónde está',
  'Clinic roof, unit 2': 'Azotea de la clínica, unidad 2',
  'What it does': 'Para qué sirve',
  'What feeds the evaporator': 'Qué alimenta al evaporador',
  '“{0}” is no one refrigerant: choose one above, or press again to keep it as typed.':
    '“{0}” no es un solo refrigerante: elija uno arriba u oprima de nuevo para guardarlo como se escribió.',
  'Marked as usual in the trade: {0}.': 'Marcado como habitual en el oficio: {0}.',
  'Taken as usual: with receiver and sight glass.': 'Se toma lo habitual: con recibidor y mirilla.',
  'Taken as usual: no receiver.': 'Se toma lo habitual: sin recibidor.',
  'It stays marked as not checked until it is confirmed at the unit.':
    'Queda marcado como no comprobado hasta que se confirme en el equipo.',
  '3 ton, 10 kW': '3 ton, 10 kW',
  '6 lb 8 oz, 2.9 kg': '6 lb 8 oz, 2.9 kg',
  'Begin the visit': 'Empezar la visita',
  'Keep the system, visit later': 'Guardar el sistema, la visita después',
  'New visit, described on the way': 'Visita nueva, se describe sobre la marcha',
  'No system of your own yet.': 'Todavía no hay un sistema suyo.',
  'A system is the unit you are called to. Describe it once, from its nameplate; every visit to it then begins with what is known, and its page shows how superheat, subcooling and charge went from visit to visit.':
    'Un sistema es el equipo al que lo llaman. Descríbalo una vez, de su placa; cada visita empieza entonces con lo que se sabe, y su página muestra cómo fueron el sobrecalentamiento, el subenfriamiento y la carga de visita en visita.',
  'Your systems': 'Sus sistemas',
  'Find a system': 'Buscar un sistema',
  'name, refrigerant or a word of a note': 'nombre, refrigerante o una palabra de una nota',
  'No system here has all these words in its name, its refrigerant or a note.':
    'Ningún sistema de aquí tiene todas estas palabras en su nombre, su refrigerante o una nota.',
  Record: 'Registro',
  'This device': 'Este dispositivo',
  'New visit': 'Visita nueva',
  'Put this system aside': 'Apartar este sistema',
  'It goes out of the list with its visits; nothing is deleted, and it can come back.':
    'Sale de la lista con sus visitas; no se borra nada, y puede volver.',
  'The system and its visits': 'El sistema y sus visitas',
} as const
