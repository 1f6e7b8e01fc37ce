import { benchSession } from '@chargewright/cycle'
import { METERING_DEVICES, type MeteringDevice } from '@chargewright/visit'
import { describe, expect, test } from 'vitest'
import { scriptedTerminal } from '../../test/scripted-terminal.ts'
import { run } from '../cli.ts'
import { BENCH_COMMANDS, parseRequest } from './parse-request.ts'

async function bench(stdin: string, ...flags: readonly string[]) {
  const terminal = scriptedTerminal(stdin)
  const code = await run(['bench', ...flags], terminal)
  return { code, out: terminal.out, err: terminal.err }
}

async function script(requests: readonly object[], ...flags: readonly string[]) {
  const lines = requests.map((request) => JSON.stringify(request)).join('\n')
  const { out, err } = await bench(lines, '--json', ...flags)
  return {
    answers: out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line)),
    err,
  }
}

const WAIT = { kind: 'wait', duration_s: 3600 }

describe('bench by a script', () => {
  test('[property] goes from the first look to a debrief that tells what each act did', async () => {
    const first = await script([{ kind: 'debrief' }], '--seed', '7')
    const right = first.answers[0].nameplate_charge_kg
    const off = first.answers[1].start_error_fraction * right
    const mend = off > 0 ? { kind: 'recover', mass_kg: off } : { kind: 'add', mass_kg: -off }
    const { answers, err } = await script([WAIT, mend, WAIT, { kind: 'look' }, { kind: 'debrief' }], '--seed', '7')
    expect(err).toBe('')
    expect(answers.map(({ kind }) => kind)).toEqual(['start', 'wait', 'act', 'wait', 'look', 'debrief'])
    expect(answers.every(({ practice }) => practice === true)).toBe(true)
    const end = answers[5]
    expect(Math.abs(end.final_error_fraction)).toBeLessThan(1e-9)
    expect(end.acts).toHaveLength(1)
    expect(end.acts[0].before.charge_kg - end.acts[0].after.charge_kg).toBeCloseTo(off, 9)
    // Settled at the right charge, the superheat is at the target within what the instruments may be off.
    expect(end.fault).toBe('none')
    expect(Math.abs(answers[4].readings.superheat_K - answers[0].target_superheat_K)).toBeLessThan(3)
  })

  test('[property] the same seed gives the same run, another seed another', async () => {
    const requests = [WAIT, { kind: 'indoor-fan', share: 0.7 }, WAIT, { kind: 'debrief' }]
    const [once, again, other] = await Promise.all([
      script(requests, '--seed', '11'),
      script(requests, '--seed', '11'),
      script(requests, '--seed', '12'),
    ])
    expect(again).toEqual(once)
    expect(other.answers.slice(1)).not.toEqual(once.answers.slice(1))
  })

  test('[property] what would hurt is allowed, and charged in the debrief', async () => {
    const harm = [{ kind: 'vent', mass_kg: 0.1 }, { kind: 'add', mass_kg: 0.2, phase: 'liquid' }, { kind: 'debrief' }]
    const { answers } = await script(harm, '--seed', '7')
    expect(answers.at(-1).harm).toMatchObject({ vented_kg: 0.1, liquid_into_suction_kg: 0.2 })
    expect(answers.at(-1).sentences.join(' ')).toContain('forbidden')
  })

  test('[limit] a bad line, an act that is impossible and anything after the debrief are refused, the rest goes on', async () => {
    const requests = [
      { kind: 'sing' },
      { kind: 'add' },
      { kind: 'wait', duration_s: 1e9 },
      { kind: 'turn-stem', turns: 1 },
      { kind: 'debrief' },
      { kind: 'look' },
    ]
    const { answers, err } = await script(requests, '--seed', '7')
    expect(answers.map(({ error }) => error?.field)).toEqual([
      undefined,
      'line.kind',
      'line.mass_kg',
      'wait',
      'valve stem',
      undefined,
      'bench',
    ])
    expect(err).toContain('5 of 6 lines')
  })
})

describe('bench at the prompt', () => {
  test('[property] every command that help lists is understood', () => {
    for (const [command] of BENCH_COMMANDS) expect([command, parseRequest(command).ok]).toEqual([command, true])
  })

  test('[property] amounts come in any unit', () => {
    expect(parseRequest('add 100 g liquid')).toEqual({
      ok: true,
      value: { kind: 'add', mass_kg: 0.1, phase: 'liquid' },
    })
    expect(parseRequest('  ADD  5 oz')).toMatchObject({ value: { kind: 'add', phase: 'vapour' } })
    expect(parseRequest('valve −0.5 turns')).toEqual({ ok: true, value: { kind: 'turn-stem', turns: -0.5 } })
    expect(parseRequest('fan 0.8')).toEqual({ ok: true, value: { kind: 'indoor-fan', share: 0.8 } })
    expect(parseRequest('wait 1 h')).toEqual({ ok: true, value: { kind: 'wait', duration_s: 3600 } })
  })

  test.each([
    'add',
    'add 5',
    'wait',
    'wait long',
    'valve',
    'valve round',
    'fan',
    'clean',
    'look around',
    'constructor',
  ])('[limit] “%s” is refused with what would do', (line) => {
    expect(parseRequest(line)).toMatchObject({ ok: false, error: { accepted: expect.stringMatching(/\S/) } })
  })

  test('[property] is marked as practice, hides what it is until the debrief, and ends with it', async () => {
    const { code, out, err } = await bench('look\nwait 15 min\nadd 5 oz\nfly\ndebrief\nlook\n', '--seed', '7')
    const [before = '', after = ''] = out.split('Debrief of a PRACTICE')
    expect(code).toBe(0)
    expect(out).toMatch(/^PRACTICE, no real system {2}\(seed 7\)/)
    expect(before.match(/\[practice \d/g)).toHaveLength(3)
    expect(before).not.toMatch(/is right|fault is/)
    expect(after).toContain('you added 5.0 oz as vapour')
    expect(after).not.toContain('[practice')
    expect(err).toBe('bench: “fly” is not known; expected one of the words that “help” lists\n')
  })

  test('[limit] an input that ends, and a line that is no text, do no harm', async () => {
    const { code, out } = await bench('help\nlook', '--seed', '7', '--units', 'metric')
    expect(code).toBe(0)
    expect(out).toContain('bar g')
    expect(out).toMatch(/Ended without a debrief\.\n$/)
  })
})

describe('bench of every device', () => {
  test.each(Object.keys(METERING_DEVICES) as MeteringDevice[])(
    '[property] %s starts and settles for 30 seeds',
    (device) => {
      for (let seed = 1; seed <= 30; seed++) {
        const session = benchSession(seed, device)
        if (!session.ok) throw new Error(JSON.stringify(session.error))
        const { start, answer } = session.value
        const settled = answer({ kind: 'wait', duration_s: 3600 })
        expect(settled).toMatchObject({ ok: true, value: { kind: 'wait' } })
        if (!settled.ok || settled.value.kind !== 'wait') continue
        expect(Object.values(settled.value.readings).every(Number.isFinite)).toBe(true)
        if (device === 'automatic') expect(start.target_K).toBeUndefined()
        else expect(start.target_K ?? 3).toBeGreaterThan(2)
      }
    },
  )

  test('[limit] a seed that is none is refused', async () => {
    for (const seed of ['-1', '0', '1.5', 'x', '2147483647']) {
      expect(await bench('', '--seed', seed)).toMatchObject({ code: 1, err: expect.stringContaining('seed: ') })
    }
  })
})
