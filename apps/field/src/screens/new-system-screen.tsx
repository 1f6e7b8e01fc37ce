import { ok, type Problem, type Result, type UnitPreference } from '@chargewright/quantity'
import {
  APPLICATIONS,
  type Application,
  METERING_DEVICES,
  type MeteringDevice,
  type SystemStatement,
} from '@chargewright/visit'
import { useSignal } from '@preact/signals'
import type { TargetedKeyboardEvent } from 'preact'
import { Choices } from '../parts/choices.tsx'
import { FormBlank } from '../parts/form-blank.tsx'
import { PageBar } from '../parts/page-bar.tsx'
import { RefrigerantReadPlace } from '../parts/refrigerant-read-place.tsx'
import { Trouble } from '../parts/trouble.tsx'
import { DraftPage, useDraftOf } from '../session/draft-place.ts'
import { notKeptInWords } from '../session/not-kept.ts'
import type { Preferences } from '../session/preference.ts'
import { START_ADDRESS, systemAddress, visitAddress } from '../session/route.ts'
import type { Session } from '../session/session.ts'
import { tradeDefaults } from '../session/trade-defaults.ts'
import { understand } from '../session/understand.ts'
import { problemInWords } from '../words/problem-in-words.ts'
import { t } from '../words/t.ts'
import { useEngine } from '../worker/engine-context.ts'
import { useAnswer } from '../worker/use-answer.ts'

interface Props {
  readonly session: Session
  readonly preferences: Preferences
}

/** What a system is, in the few answers that every method asks for. Everything else can wait for the unit. */
export function NewSystemScreen(props: Props) {
  return (
    <DraftPage.Provider value="new-system">
      <PageBar
        name={t('New system')}
        about={t('From the nameplate; what is not known yet stays empty')}
        back={{ address: START_ADDRESS, name: t('All systems') }}
        undo={undefined}
      />
      <NewSystemForm {...props} />
    </DraftPage.Provider>
  )
}

const FIGURES = {
  nominalCapacity: { label: 'Nominal capacity', accepts: ['cooling capacity'] },
  nameplateCharge: { label: 'Nameplate charge', accepts: ['mass'] },
} as const
type Figure = keyof typeof FIGURES

function NewSystemForm({ session, preferences }: Props) {
  const { value: units } = preferences.units
  const blanks = {
    name: useBlank('name'),
    refrigerant: useBlank('refrigerant'),
    nominalCapacity: useBlank('capacity'),
    nameplateCharge: useBlank('charge'),
  }
  const application = useSignal<Application | undefined>(undefined)
  const device = useSignal<MeteringDevice | undefined>(undefined)
  const trouble = useSignal<string | undefined>(undefined)
  const { answer: refrigerants } = useAnswer('refrigerants')
  const usual = application.value && tradeDefaults(application.value, device.value)

  /** A name that is questioned is kept all the same when it is meant. */
  const questioned = useSignal('')
  const engine = useEngine()
  const nameRead = async (typed: string) => {
    const read = await engine.ask({}, 'refrigerantNamed', typed)
    return read.ok ? read.value : undefined
  }

  const finish = async (open: (system: string) => Promise<string | undefined>) => {
    const refrigerant = blanks.refrigerant.text.value.trim()
    const read = await nameRead(refrigerant)
    if (questioned.value !== refrigerant && read?.kind === 'unclear') {
      questioned.value = refrigerant
      trouble.value = t(
        '“{0}” is no one refrigerant: choose one above, or press again to keep it as typed.',
        refrigerant,
      )
      return
    }
    const figures = figuresIn((name) => blanks[name].text.value, units)
    if (!figures.ok) {
      trouble.value = problemInWords(figures.error)
      return
    }
    const stated: SystemStatement = {
      ...worded('name', blanks.name.text.value),
      ...worded('refrigerant', read?.kind === 'read' ? read.name : refrigerant),
      ...figures.value,
      ...(application.value && { application: application.value }),
      ...(device.value && { meteringDevice: device.value }),
    }
    const assumed = Object.fromEntries(Object.entries(usual ?? {}).filter(([fact]) => !Object.hasOwn(stated, fact)))
    const started = await session.startSystem(stated, assumed)
    if (!started.ok) {
      trouble.value = notKeptInWords(started.error)
      return
    }
    for (const blank of Object.values(blanks)) blank.type('')
    location.hash = (await open(started.value)) ?? systemAddress(started.value)
  }
  const intoVisit = async (system: string) => {
    const visit = await session.start(system)
    return visit.ok ? visitAddress(visit.value) : undefined
  }
  return (
    <main class="start">
      <form
        class="new-system"
        onKeyDown={goOnByEnter}
        onSubmit={(event) => {
          event.preventDefault()
          void finish(intoVisit)
        }}
      >
        <FormBlank label={t('Name, or where it stands')} example={t('Clinic roof, unit 2')} {...blanks.name} />
        <Choices
          label={t('What it does')}
          choices={APPLICATIONS}
          chosen={application.value}
          choose={(to) => {
            application.value = to
          }}
        />
        <FormBlank
          label={t('Refrigerant')}
          example={t('as on the nameplate')}
          suggestions={refrigerants}
          {...blanks.refrigerant}
        >
          <RefrigerantReadPlace typed={blanks.refrigerant.text.value} take={blanks.refrigerant.type} />
        </FormBlank>
        <Choices
          label={t('What feeds the evaporator')}
          choices={METERING_DEVICES}
          chosen={device.value ?? usual?.meteringDevice ?? undefined}
          choose={(to) => {
            device.value = to
          }}
        />
        {usual && (
          <p class="usual" role="status">
            {device.value === undefined &&
              t('Marked as usual in the trade: {0}.', t(METERING_DEVICES[usual.meteringDevice!]))}{' '}
            {usual.receiver ? t('Taken as usual: with receiver and sight glass.') : t('Taken as usual: no receiver.')}{' '}
            {t('It stays marked as not checked until it is confirmed at the unit.')}
          </p>
        )}
        <FormBlank label={t('Nominal capacity')} example={t('3 ton, 10 kW')} {...blanks.nominalCapacity} />
        <FormBlank label={t('Nameplate charge')} example={t('6 lb 8 oz, 2.9 kg')} {...blanks.nameplateCharge} />
        {trouble.value !== undefined && <Trouble>{trouble.value}</Trouble>}
        <button type="submit" class="act">
          {t('Begin the visit')}
        </button>
        <button type="button" class="key" onClick={() => void finish(async () => undefined)}>
          {t('Keep the system, visit later')}
        </button>
      </form>
    </main>
  )
}

/** Enter in a blank goes on to what comes after it, as in a visit; only the last one may begin the visit. */
function goOnByEnter(event: TargetedKeyboardEvent<HTMLFormElement>) {
  const from = event.target
  if (event.key !== 'Enter' || event.isComposing || !(from instanceof HTMLInputElement)) return
  const controls = [...event.currentTarget.querySelectorAll<HTMLElement>(':is(input,button)')]
  const next = controls[controls.indexOf(from) + 1]
  if (!next || next.matches('[type="submit"]')) return
  event.preventDefault()
  next.focus()
}

/** A blank of the form; what stands in it survives a restart. */
function useBlank(field: string) {
  const draft = useDraftOf(field)
  const text = useSignal(draft.typedBefore ?? '')
  return {
    text,
    type: (typed: string) => {
      text.value = typed
      draft.keep(typed === '' ? undefined : typed)
    },
  }
}

const worded = (fact: 'name' | 'refrigerant', typed: string): SystemStatement => {
  const text = typed.trim()
  return text === '' ? {} : { [fact]: text }
}

/** The texts to keep for the figures that were filled in, or why one cannot be read. */
function figuresIn(typed: (name: Figure) => string, units: UnitPreference): Result<SystemStatement, Problem> {
  const stated: Partial<Record<Figure, string>> = {}
  for (const name of Object.keys(FIGURES) as Figure[]) {
    if (typed(name).trim() === '') continue
    const understood = understand(typed(name), FIGURES[name], units)
    if (!understood.ok) return understood
    stated[name] = understood.value.text
  }
  return ok(stated)
}
