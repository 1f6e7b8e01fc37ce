import type { Answer, Ask, Given, TaskName, Tasks } from './protocol.ts'
import { TASKS } from './tasks.ts'

/** The thread of the engine: it takes one task after the other, and a task that fails takes nothing else with it. */
addEventListener('message', async ({ data }: MessageEvent<Ask>) => {
  postMessage(await answerTo(data))
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
