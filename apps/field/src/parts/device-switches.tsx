import { type Preferences, THEMES, UNIT_SYSTEMS } from '../session/preference.ts'
import { LANGUAGES } from '../words/language.ts'
import { t } from '../words/t.ts'

/** How this device shows things: units, light and language, each turned over in one tap. */
export function DeviceSwitches({ preferences }: { readonly preferences: Preferences }) {
  const { unitSystem, theme, language, turnUnits, turnTheme, turnLanguage } = preferences
  return (
    <fieldset class="switches" aria-label={t('Show')}>
      <Switch label={t('Language')} states={LANGUAGES} now={language.value} turn={turnLanguage} />
      <Switch label={t('Units')} states={labels} now={unitSystem.value} turn={turnUnits} />
      <Switch label={t('Light')} states={THEMES} now={theme.value} turn={turnTheme} />
    </fieldset>
  )
}

const labels = { 'inch-pound': UNIT_SYSTEMS['inch-pound'].label, metric: UNIT_SYSTEMS.metric.label } as const

interface SwitchProps<State extends string> {
  readonly label: string
  readonly states: Readonly<Record<State, string>>
  readonly now: State
  readonly turn: () => void
}

/** One key that names both states; the one that holds is written in ink. */
function Switch<State extends string>({ label, states, now, turn }: SwitchProps<State>) {
  return (
    <button type="button" class="switch" aria-label={t('{0}: {1}. Turn over', label, t(states[now]))} onClick={turn}>
      {(Object.entries<string>(states) as [State, string][]).map(([state, words]) => (
        <span key={state} data-now={state === now}>
          {t(words)}
        </span>
      ))}
    </button>
  )
}
