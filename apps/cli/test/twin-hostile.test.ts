import { readFileSync } from 'node:fs'
import { type BenchAnswer, benchSession } from '@chargewright/cycle'
import { INCH_POUND, METRIC, type Problem, type Result } from '@chargewright/quantity'
import { APPLICATIONS, METERING_DEVICES, type MeteringDevice } from '@chargewright/visit'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { answerJson } from '../src/bench/bench-json.ts'
import { answerText } from '../src/bench/bench-text.ts'
import { BENCH_COMMANDS, parseRequest } from '../src/bench/parse-request.ts'
import { readRequest } from '../src/bench/read-request.ts'
import { chart } from '../src/commands/chart.ts'
import { chartJson } from '../src/commands/chart-json.ts'
import { chartText } from '../src/commands/chart-text.ts'
import { diagnose } from '../src/commands/diagnose.ts'
import { diagnoseJson } from '../src/commands/diagnose-json.ts'
import { diagnoseText } from '../src/commands/diagnose-text.ts'
import { dose } from '../src/commands/dose.ts'
import { doseJson } from '../src/commands/dose-json.ts'
import { doseText } from '../src/commands/dose-text.ts'
import { twin } from '../src/commands/twin.ts'
import { twinJson } from '../src/commands/twin-json.ts'
import { twinText } from '../src/commands/twin-text.ts'
import { WHAT_IF_AXES } from '../src/commands/what-if-axis.ts'
import { parseJson } from '../src/json-reader.ts'
import { answersOrRefuses } from './answers-or-refuses.ts'
import { defectOf } from './defects.ts'
import { damagedJson, flagsLike, someFlagsLike, typed, visitLine } from './hostile-values.ts'

// Some 8 000 damaged systems, visits, flags and requests, the same in every run. None may end in anything but an answer
// that can be printed or a problem that names its field, its value and what would have been accepted.
const SYSTEM = readFileSync('examples/service/system.json', 'utf8')

const parsed =
  <Answer, Flags>(ask: (data: unknown, flags: Flags) => Result<Answer, readonly Problem[]>) =>
  ([text, flags]: readonly [string, Flags]): Result<Answer, readonly Problem[]> => {
    const data = parseJson(text, 'file')
    return data.ok ? ask(data.value, flags) : data
  }

/** Systems of any kind and size; their figures now and then contradict each other, or are none. */
const anySystem = fc
  .tuple(
    fc.record({
      refrigerant: fc.constantFrom('R-410A', 'R-22', 'R-32', 'R-134a', 'R-448A', 'R-290', 'CO2'),
      meteringDevice: fc.constantFrom(...Object.keys(METERING_DEVICES)),
      application: fc.constantFrom(...Object.keys(APPLICATIONS)),
      receiver: fc.boolean(),
    }),
    fc.constantFrom(['3 ton', '6 lb 8 oz'], ['1 kW', '400 g'], ['40 kW', '15 kg'], ['5 ton', '2 oz'], ['0 W', '0 g']),
    someFlagsLike({
      nameplateSubcooling: ['10 °F', '0 °F', '8 K'],
      lineLength: ['15 ft', '0 ft', '60 m'],
      boxSetPoint: ['38 °F', '-10 °F'],
      elevation: ['5000 ft', '0 m'],
    }),
  )
  .map(([kind, [nominalCapacity, nameplateCharge], figures]) =>
    JSON.stringify({ ...kind, nominalCapacity, nameplateCharge, ...figures }),
  )

const systems = fc.oneof(damagedJson([SYSTEM]), anySystem)

test('[property] twin answers or refuses any system in any weather', () => {
  const flags = someFlagsLike({
    outdoor: ['95 degF', '20 °C', '125 degF'],
    return: ['80 degF', '5 °C', '-20 °C'],
    wetBulb: ['67 degF', '3 °C', '90 degF'],
    charge: ['90 %', '1.4', '0.3', '5 lb', '2 kg'],
    whatIf: Object.keys(WHAT_IF_AXES),
  })
  answersOrRefuses(fc.tuple(systems, flags), parsed(twin), { text: twinText, json: twinJson }, 3000)
})

test('[property] chart answers or refuses any system', () => {
  const flags = fc.record(
    {
      measure: fc.constantFrom('superheat' as const, 'subcooling' as const),
      family: fc.constantFrom('wet-bulb' as const, 'dry-bulb' as const),
      humidity: flagsLike({ humidity: ['50 %', '0.1', '100 %'] }).map(({ humidity }) => humidity),
    },
    { requiredKeys: ['family'] },
  )
  const unit = fc.constantFrom('°F' as const, '°C' as const)
  const ask = ([text, f, u]: readonly [string, Parameters<typeof chart>[1], '°F' | '°C']) =>
    parsed((data: unknown) => chart(data, f, u))([text, undefined])
  answersOrRefuses(fc.tuple(systems, flags, unit), ask, { text: chartText, json: chartJson }, 600)
})

test('[property] diagnose answers or refuses any visit', () => {
  const ask = (text: string) => parsed((data: unknown) => diagnose(data))([text, undefined])
  answersOrRefuses(visitLine, ask, { text: diagnoseText, json: diagnoseJson }, 300)
})

test('[property] dose answers or refuses any visit', () => {
  const ask = (text: string) => parsed((data: unknown) => dose(data))([text, undefined])
  answersOrRefuses(visitLine, ask, { text: doseText, json: doseJson }, 1000)
})

/** What is wrong with an answer of the bench, or with its refusal. */
function defectsOf(answer: Result<BenchAnswer, Problem>, start: Parameters<typeof answerText>[1]): readonly unknown[] {
  if (!answer.ok) return [defectOf(answer.error)].filter((defect) => defect !== undefined)
  return [INCH_POUND, METRIC].flatMap((units) => {
    const text = answerText(answer.value, start, units, 80)
    const json = JSON.stringify(answerJson(answer.value, start, units))
    return [...(/NaN|Infinity|undefined/.test(text) ? [text] : []), ...(/:null[,}]/.test(json) ? [json] : [])]
  })
}

function startOf(seed: number, device: string) {
  const session = benchSession(seed, device as MeteringDevice)
  if (!session.ok) throw new Error(JSON.stringify(session.error))
  return session.value
}

const runs = <Line>(line: fc.Arbitrary<Line>) =>
  fc.tuple(
    fc.integer({ min: 1, max: 2_147_483_646 }),
    fc.constantFrom(...Object.keys(METERING_DEVICES)),
    fc.array(line, { minLength: 1, maxLength: 8 }),
  )

test('[property] the prompt of the bench answers or refuses anything that is typed', () => {
  const command = fc.constantFrom(...BENCH_COMMANDS.map(([each]) => each as string))
  const word = command.map((each) => each.split(' ')[0]!)
  const line = fc.oneof(
    command,
    fc.tuple(word, typed).map((parts) => parts.join(' ')),
    typed,
  )
  let answered = 0
  fc.assert(
    fc.property(runs(line), ([seed, device, lines]) => {
      const { start, answer } = startOf(seed, device)
      for (const each of lines) {
        const request = parseRequest(each)
        const found = request.ok ? answer(request.value) : request
        if (found.ok) answered += 1
        expect(defectsOf(found, start)).toEqual([])
      }
    }),
    { seed: 65, numRuns: 400 },
  )
  expect(answered).toBeGreaterThan(500)
})

test('[property] a script of the bench may ask for any amount', () => {
  const amount = fc.oneof(fc.double(), fc.double({ min: 0, max: 5, noNaN: true }), fc.constantFrom(0, -1, 1e9))
  const request = fc.oneof(
    fc.record({
      kind: fc.constant('wait'),
      duration_s: fc.oneof(amount, fc.double({ min: 0, max: 9000, noNaN: true })),
    }),
    fc.record({ kind: fc.constant('add'), mass_kg: amount, phase: fc.constantFrom('vapour', 'liquid', 'ice') }),
    fc.record({ kind: fc.constantFrom('recover', 'vent', 'recover-evacuate-recharge'), mass_kg: amount }),
    fc.record({ kind: fc.constant('turn-stem'), turns: amount }),
    fc.record({ kind: fc.constant('indoor-fan'), share: amount }),
    fc.record({ kind: fc.constantFrom('look', 'open-doors', 'clean-condenser', 'change-drier', 'restart', 'debrief') }),
    fc.jsonValue({ maxDepth: 2 }),
  )
  let answered = 0
  fc.assert(
    fc.property(runs(request), ([seed, device, requests]) => {
      const { start, answer } = startOf(seed, device)
      for (const each of requests) {
        const read = readRequest(each, 'line')
        if (!read.ok) {
          expect(read.error.map(defectOf).filter((defect) => defect !== undefined)).toEqual([])
          continue
        }
        const found = answer(read.value)
        if (found.ok) answered += 1
        expect(defectsOf(found, start)).toEqual([])
      }
    }),
    { seed: 66, numRuns: 400 },
  )
  expect(answered).toBeGreaterThan(500)
})
