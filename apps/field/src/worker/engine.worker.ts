import type { Answer, Ask, Given, TaskName, Tasks, VisitEvents } from './protocol.ts'
import { rehearsal } from './rehearsal.ts'
import { TASKS } from './tasks.ts'

/** The thread of the engine: it takes one task after the other, and a task that fails takes nothing else with it. */
addEventListener('message', async ({ data }: MessageEvent<Ask>) => {
  postMessage(await answerTo(data))
  if (data.task === 'assess') rehearse(data.given[0])
})

async function answerTo({ turn, task, given }: Ask): Promise<Answer> {
  try {
    return { turn, ok: true, value: await work(task, given) }
  } catch (error) {
    return { turn, ok: false, detail: error instanceof Error ? error.message : String(error) }
  }
}

function work<Name extends TaskName>(task: Name, given: Given<Name>): ReturnType<Tasks[Name]> {
  const run = TASKS[task] as (...given: Given<Name>) => ReturnType<Tasks[Name]>
  return run(...given)
}

/** What was described of the systems that are rehearsed. */
const rehearsed = new Set<string>()

/** Once for each description of a system; questions come between the pieces. */
function rehearse(visit: VisitEvents): void {
  const described = JSON.stringify(visit.events.filter(({ kind }) => kind === 'system-described'))
  if (rehearsed.has(described)) return
  const pieces = rehearsal(visit, TIMES)
  rehearsed.add(described)
  const next = (i: number) => {
    if (i === pieces.length) return
    try {
      pieces[i]!()
    } catch {
      // Whoever asks about this visit is told.
      return
    }
    setTimeout(next, 0, i + 1)
  }
  setTimeout(next, PAUSE_ms, 0)
}

/** After as many times little more is compiled. */
const TIMES = 6
/** The page asks for its pictures first. */
const PAUSE_ms = 300
