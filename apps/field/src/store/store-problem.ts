import { t } from '../words/t.ts'
/** Why this device did not keep or give something. */
export interface StoreProblem {
  readonly kind: 'full' | 'refused' | 'closed' | 'unknown-log' | 'failed'
  /** What the browser itself said. */
  readonly detail: string
}

/** The problem in words, with what to do about it. */
export function describeStoreProblem({ kind, detail }: StoreProblem): string {
  switch (kind) {
    case 'full':
      return t('The storage of this device is full. Free some space, then enter it again.')
    case 'refused':
      return t('This browser refuses to store anything here (a private window, perhaps).')
    case 'closed':
      return t('Another tab has opened a newer version. Reload this page, then enter it again.')
    case 'unknown-log':
      return t('This device holds no such system or visit ({0}).', detail)
    case 'failed':
      return t('The browser could not store it: {0}', detail)
  }
}

/** What an exception of the browser's storage means. */
export function storeProblem(error: unknown): StoreProblem {
  const { name, message } = error instanceof Error || error instanceof DOMException ? error : { name: '', message: '' }
  const detail = message || name || String(error)
  switch (name) {
    case 'QuotaExceededError':
      return { kind: 'full', detail }
    case 'SecurityError':
    case 'NotAllowedError':
      return { kind: 'refused', detail }
    case 'InvalidStateError':
      return { kind: 'closed', detail }
    default:
      return { kind: 'failed', detail }
  }
}
