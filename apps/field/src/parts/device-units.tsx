import type { Preferences } from '../session/preference.ts'
import { CHOSEN_QUANTITIES, choicesOf, choiceThatHolds } from '../session/unit-choices.ts'
import { t } from '../words/t.ts'
import { Choices } from './choices.tsx'

/** The unit of each quantity, apart from the system that is turned on. */
export function DeviceUnits({ preferences }: { readonly preferences: Preferences }) {
  const units = preferences.units.value
  return (
    <div class="form">
      <p class="hint">{t('What was typed is kept as it was typed; this changes only how it is shown here.')}</p>
      {CHOSEN_QUANTITIES.map((of) => {
        const { label, choices } = choicesOf(of)
        const labels = Object.fromEntries(Object.entries(choices).map(([name, choice]) => [name, choice.label]))
        return (
          <Choices
            key={of}
            label={label}
            choices={labels}
            chosen={choiceThatHolds(of, units)}
            choose={(choice) => preferences.chooseUnit(of, choice)}
          />
        )
      })}
    </div>
  )
}
