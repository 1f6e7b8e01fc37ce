import { type Statement, say } from '@chargewright/quantity'
import type { Refrigerant } from '@chargewright/refrigerant'
import type { Application, Visit } from '@chargewright/visit'
import type { Assessment, Caution, Finding } from './assessment.ts'
import { chargeLimitCautions } from './charge-limit-cautions.ts'
import { againstLimit } from './compare.ts'
import { burns } from './flammable.ts'
import { LIMITS } from './limit.ts'
import type { Case } from './ruling.ts'

const HABIT = 'common practice'
const caution = (id: string, statement: Statement, source = HABIT): Caution => ({ id, statement, source })

/** What can hurt someone, the compressor or the air in the act that the finding asks for; the gravest first. */
export function cautions(asked: Case, finding: Finding): readonly Caution[] {
  const opened = finding.kind === 'add' || finding.kind === 'recover' || finding.kind === 'not-the-charge'
  return [
    ...harmDone(asked),
    ...flooding(asked),
    ...overload(asked),
    ...flammable(asked.refrigerant, asked.visit.system.facts.application, opened),
    ...(finding.kind === 'add' ? adding(asked, finding.dose?.compressor === 'running') : []),
    ...(finding.kind === 'recover' || finding.cause?.id === 'leak' ? recovering() : []),
    ...(finding.cause?.id === 'leak'
      ? [
          caution(
            'pressure-test',
            say`Pressure test with regulated dry nitrogen only; never with oxygen or compressed air`,
          ),
          caution('vacuum', say`Do not run a hermetic compressor in a vacuum`),
        ]
      : []),
    ...(opened ? [PROTECTION, AUTHORITY] : []),
  ]
}

/** A visit, and its refrigerant where that is known. */
interface Charged {
  readonly visit: Visit
  readonly refrigerant?: Refrigerant | undefined
}

const PROTECTION = caution('protection', say`Wear eye and hand protection; lock out power before opening panels`)
const AUTHORITY = caution('authority', say`The maker's instructions, local codes and a licence come first`)

/** What belongs beside each act, whoever asks for it: the technician may do it before any finding does. */
export function cautionsBeside({ visit, refrigerant }: Charged): Assessment['beside'] {
  const burning = refrigerant ? flammable(refrigerant, visit.system.facts.application, true) : []
  const opened = refrigerant ? openedWhereItBurns(refrigerant) : {}
  return {
    'pressure-test': [],
    evacuation: [],
    ...opened,
    'connect-gauge': burning,
    'into-system': [...burning, ...adding({ visit, refrigerant }, true), PROTECTION],
    'out-of-system': [...burning, ...recovering(), PROTECTION],
    'adjust-valve': VALVE,
  }
}

/** What is left of a burning refrigerant, in the oil above all, meets the torch of the repair or leaves through the pump. */
function openedWhereItBurns({ name }: Refrigerant): Partial<Assessment['beside']> {
  switch (burns(name)) {
    case 'yes':
      return {
        'pressure-test': [
          caution(
            'flame',
            say`${name} burns: no flame and no torch until all of it is recovered and the system is purged with dry nitrogen; ventilate, keep ignition sources away`,
          ),
        ],
        evacuation: [
          caution(
            'pump-exhaust',
            say`${name} burns, and the oil still gives it off under vacuum: use a pump rated for it, lead its exhaust outdoors, ventilate, no flame and no switch sparking nearby`,
          ),
        ],
      }
    case 'unknown':
      return { 'pressure-test': [unknownClass(name)], evacuation: [unknownClass(name)] }
    case 'no':
      return {}
  }
}

const unknownClass = (name: string): Caution =>
  caution(
    'safety-class',
    say`The safety class of ${name} is not on file here: read the cylinder's label before opening anything`,
  )

const RECEIVER_FULL = caution(
  'receiver-full',
  say`Pumped down, the receiver holds the whole charge: it must not stand more than 80 % full of liquid then`,
)

const VALVE: readonly Caution[] = [
  caution(
    'valve-slowly',
    say`Turn the stem a quarter turn at a time and let it run ${LIMITS.settleTime.quantity}: a valve answers late`,
  ),
  caution('valve-flooding', say`Keep a superheat at all times: opened too far, it lets liquid into the compressor`),
  caution('stem-cap', say`Put the cap back on the stem and check it for leaks`),
]

/** A burning refrigerant is told from the first gauge on; that its class is not known, once the system is opened. */
function flammable({ name }: Refrigerant, application: Application | undefined, opened: boolean): readonly Caution[] {
  switch (burns(name)) {
    case 'yes':
      return [
        caution(
          'flammable',
          say`${name} burns: ventilate, keep ignition sources away, use equipment rated for it, keep to the charge limit of the room`,
        ),
        ...chargeLimitCautions(name, application),
      ]
    case 'unknown':
      if (!opened) return []
      return [unknownClass(name)]
    case 'no':
      return []
  }
}

function adding({ visit, refrigerant }: Charged, isRunning: boolean): readonly Caution[] {
  return [
    caution(
      'no-liquid-low-side',
      say`Never liquid into a running low side: it slugs the compressor and washes out its oil`,
    ),
    ...(isRunning && refrigerant?.kind === 'blend'
      ? [
          caution(
            'blend-as-liquid',
            say`${refrigerant.name} leaves its cylinder as liquid, or its composition shifts; throttle it to vapour before the port`,
          ),
        ]
      : []),
    ...(visit.observations.leak
      ? []
      : [caution('find-the-leak', say`A charge that went missing left through a leak: find it`)]),
    ...(visit.system.facts.receiver ? [RECEIVER_FULL] : []),
    ...(visit.system.facts.accumulator
      ? [
          caution(
            'accumulator',
            say`An accumulator hides liquid that left the evaporator: wait the full time before reading`,
          ),
        ]
      : []),
  ]
}

function recovering(): readonly Caution[] {
  return [
    caution('no-venting', say`Never vent: recover`, 'law in most countries, e.g. 40 CFR 82.154; local law first'),
    caution(
      'cylinder-fill',
      say`Fill the recovery cylinder to 80 % of its volume at most, and never mix refrigerants in it`,
      'AHRI Guideline K as reported',
    ),
  ]
}

function flooding({ measures }: Case): readonly Caution[] {
  const superheat = measures.superheat
  if (!superheat || againstLimit(superheat.quantity, LIMITS.floodingSuperheat.quantity) === 'above') return []
  return [
    caution(
      'flooding',
      say`Superheat at the compressor is ${superheat.quantity}: liquid may reach it. Do not leave it running like this`,
    ),
  ]
}

function overload({ visit }: Case): readonly Caution[] {
  const amps = visit.readings['compressor-current']
  const rated = visit.system.figures.ratedLoadCurrent
  if (!amps || !rated || amps.quantity.si <= rated.quantity.si) return []
  return [
    caution(
      'overload',
      say`The compressor draws ${amps.quantity}, more than its rated-load current ${rated.quantity}: find out why before anything else`,
    ),
  ]
}

/** An act in the log that should not have been done is told, so that the compressor is looked after. */
function harmDone({ visit }: Case): readonly Caution[] {
  const slugged = visit.moves.some(
    ({ fact }) =>
      fact.direction === 'into-system' &&
      fact.phase === 'liquid' &&
      fact.port === 'suction' &&
      fact.compressor === 'running',
  )
  const mixed = visit.moves.find(
    ({ fact }) =>
      fact.direction === 'into-system' &&
      fact.refrigerant !== undefined &&
      visit.system.facts.refrigerant !== undefined &&
      !sameName(fact.refrigerant, visit.system.facts.refrigerant),
  )
  return [
    ...(slugged
      ? [
          caution(
            'liquid-went-low',
            say`Liquid went into the running low side: listen to the compressor and check its oil`,
          ),
        ]
      : []),
    ...(mixed
      ? [
          caution(
            'mixed',
            say`${mixed.fact.refrigerant ?? ''} went into a system of ${visit.system.facts.refrigerant ?? ''}: the charge is mixed; recover it all`,
          ),
        ]
      : []),
  ]
}

function sameName(a: string, b: string): boolean {
  const plain = (name: string) => name.toUpperCase().replace(/^R-?/, '').replace(/[\s-]/g, '')
  return plain(a) === plain(b)
}
