/** Cylinders, leak rates and the law. */
export const LEDGER = {
  '{0} must not go into cylinder {1}, which holds {2}': '{0} no debe entrar al cilindro {1}, que contiene {2}',
  'Cylinder {0} holds new refrigerant: recover into a recovery cylinder':
    'El cilindro {0} contiene refrigerante nuevo: recupere en un cilindro de recuperación',
  'Cylinder {0} was sold filled and must never be filled again':
    'El cilindro {0} se vendió lleno y nunca se debe volver a llenar',
  'The fill limit of cylinder {0} is not known: keep to the one stamped or stated for this gas':
    'No se conoce el límite de llenado del cilindro {0}: respete el que esté estampado o indicado para este gas',
  '{0} cannot come out of cylinder {1}, which holds {2}': '{0} no puede salir del cilindro {1}, que contiene {2}',
  'Cylinder {0} holds refrigerant recovered from {1}: into {2} only if both have one owner, else it must be reclaimed first':
    'El cilindro {0} contiene refrigerante recuperado de {1}: a {2} solo si ambos son del mismo dueño; si no, primero hay que regenerarlo',
  'Cylinder {0} weighs {1} {2} than after its last entry':
    'El cilindro {0} pesa {1} {2} que después de su última anotación',
  'By the scale, {0} went the other way than was entered':
    'Según la báscula, {0} fue en sentido contrario a lo anotado',
  'Cylinder {0} says that {1} moved, the visit says {2}':
    'El cilindro {0} indica que se movió {1}, la visita indica {2}',
  'Cylinder {0} holds {1}; it may hold {2}': 'El cilindro {0} contiene {1}; puede contener {2}',
  'Cylinder {0} weighs {1} less than its stamped tare': 'El cilindro {0} pesa {1} menos que su tara estampada',
  'The full charge of {0} is less than {1}': 'La carga completa de {0} es menor que {1}',
  'Residential and light commercial air conditioning and heat pumps are exempt':
    'El aire acondicionado y las bombas de calor residenciales y comerciales livianos están exentos',
  'The full charge of {0} cannot be told from {1}': 'La carga completa de {0} no se distingue de {1}',
  'Residential and light commercial air conditioning and heat pumps are exempt; say whether this is one':
    'El aire acondicionado y las bombas de calor residenciales y comerciales livianos están exentos; indique si este lo es',
  '{0} is or contains an ozone-depleting substance': '{0} es o contiene una sustancia que agota la capa de ozono',
  '{0} holds no ozone-depleting substance': '{0} no contiene ninguna sustancia que agote la capa de ozono',
  '{0} is an ozone-depleting substance or a substitute for one':
    '{0} es una sustancia que agota la capa de ozono o un sustituto de una',
  'Whether {0} is an exempt substitute depends on its use': 'Si {0} es un sustituto exento depende de su uso',
  '{0} is or contains the regulated hydrofluorocarbon {1}': '{0} es o contiene el hidrofluorocarbono regulado {1}',
  '{0} holds no regulated hydrofluorocarbon': '{0} no contiene ningún hidrofluorocarbono regulado',
  '{0} t of CO₂ equivalent and {1} of unsaturated gases': '{0} t de CO₂ equivalente y {1} de gases insaturados',
  'Hermetically sealed and labelled, with {0}: exempt': 'Sellado herméticamente y etiquetado, con {0}: exento',
  'It holds {0}: below the least amount': 'Contiene {0}: por debajo de la cantidad mínima',
  'It holds {0}: a check at least every {1} months': 'Contiene {0}: una revisión al menos cada {1} meses',
  'Inspect for leaks, until it kept to its leak rate for four quarters in a row':
    'Inspeccione las fugas hasta que haya respetado su tasa de fuga cuatro trimestres seguidos',
  'Inspect for leaks, until it kept to its leak rate for one year':
    'Inspeccione las fugas hasta que haya respetado su tasa de fuga un año',
  'a passed follow-up verification test': 'una prueba de verificación posterior aprobada',
  'Leak rate {0} % a year ({1}) {2} the {3} % of {4}': 'La tasa de fuga, {0} % al año ({1}), {2} el {3} % de {4}',
  'Find and repair the leaks': 'Encuentre y repare las fugas',
  'Pass the initial verification test': 'Apruebe la prueba de verificación inicial',
  'Pass the follow-up verification test': 'Apruebe la prueba de verificación posterior',
  'If it is not repaired: a retrofit or retirement plan': 'Si no se repara: un plan de reconversión o retiro',
  'If it is not repaired: retrofitted or retired': 'Si no se repara: reconvertido o retirado',
  'a passed initial verification test': 'una prueba de verificación inicial aprobada',
  'the date of the plan': 'la fecha del plan',
  'refrigerant to be added to the mothballed appliance': 'refrigerante por agregar al equipo fuera de servicio',
  'After {0}: {1}': 'Después de {0}: {1}',
  'Holds {0}, unexplained {1}': 'Contiene {0}, sin explicar {1}',
  'Left out of the balance, because it cannot stand': 'Queda fuera del balance, porque no se sostiene',
  'Not counted: {0} with no cylinder named. Correct that in the log':
    'No se cuenta: {0} sin cilindro nombrado. Corríjalo en el registro',
  'Not counted: {0} of a refrigerant that nobody named. Name it at the system':
    'No se cuenta: {0} de un refrigerante que nadie nombró. Nómbrelo en el sistema',
  'Not counted: what moved from or into cylinder {0}, which was not weighed in here':
    'No se cuenta: lo que salió del cilindro {0} o entró en él, porque no se pesó aquí',
  'Not counted. {0}': 'No se cuenta. {0}',
  '1 move': '1 movimiento',
  '{0} moves': '{0} movimientos',
  'an id of its own': 'un id propio',
  'a cylinder of this book': 'un cilindro de este libro',
  'AHRI Guideline K, as quoted in the trade press; 49 CFR 173.304a, recalled':
    'AHRI Guideline K, según la prensa del oficio; 49 CFR 173.304a, de memoria',
  '49 CFR 178.65, recalled': '49 CFR 178.65, de memoria',
  '40 CFR 82.152, recycle': '40 CFR 82.152, reciclaje',
  'balance of the cylinder': 'balance del cilindro',
  'the system of this visit': 'el sistema de esta visita',
  Systems: 'Sistemas',
  Elsewhere: 'En otra parte',
  'AHRI Guideline K, as quoted in the trade press': 'AHRI Guideline K, según la prensa del oficio',
  '49 CFR 173.304a, recalled: not liquid-full at 130 °F': '49 CFR 173.304a, de memoria: no lleno de líquido a 130 °F',
  'water capacity': 'capacidad de agua',
  'fill limit': 'límite de llenado',
  'the 80 % rule needs a liquid at 130 °F; use the filling density stated for this gas':
    'la regla del 80 % requiere un líquido a 130 °F; use la densidad de llenado indicada para este gas',
  'new': 'nuevo',
  recovered: 'recuperado',
  'an id that this book has not used before': 'un id que este libro no haya usado antes',
  'the id of an earlier movement of this book': 'el id de un movimiento anterior de este libro',
  'a date like 2026-02-03': 'una fecha como 2026-02-03',
  years: 'años',
  'a year': 'un año',
  'a refrigerant whose potential is known': 'un refrigerante cuyo potencial se conozca',
  'is over': 'supera',
  'is not over': 'no supera',
  'the day on which refrigerant was last added before, if only at installation':
    'el día en que se agregó refrigerante la vez anterior, aunque fuera en la instalación',
  'days since the last addition': 'días desde la última adición',
  days: 'días',
  'refrigerant added': 'refrigerante agregado',
  'full charge': 'carga completa',
  'refrigerant added, uncertainty': 'refrigerante agregado, incertidumbre',
  'full charge, uncertainty': 'carga completa, incertidumbre',
  'commercial refrigeration': 'refrigeración comercial',
  'industrial process refrigeration': 'refrigeración de procesos industriales',
  'refrigerated transport': 'transporte refrigerado',
  'another appliance': 'otro equipo',
  'US, appliance maintenance and leak repair (Clean Air Act, section 608)':
    'EE. UU., mantenimiento de equipos y reparación de fugas (Clean Air Act, sección 608)',
  'US, management of hydrofluorocarbons, leak repair (AIM Act, subsection (h))':
    'EE. UU., gestión de hidrofluorocarbonos, reparación de fugas (AIM Act, inciso (h))',
  'EU, fluorinated greenhouse gases, leak checks': 'UE, gases fluorados de efecto invernadero, control de fugas',
} as const
