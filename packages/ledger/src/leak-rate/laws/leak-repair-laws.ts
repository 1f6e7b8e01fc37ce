import type { LeakRepairLaw } from '../leak-repair-law.ts'
import { US_40_CFR_82_157, US_40_CFR_82_157_OF_2019 } from './us-40-cfr-82-157.ts'
import { US_40_CFR_84_106 } from './us-40-cfr-84-106.ts'

/** Every wording of every leak-repair law that is known here, the oldest first. */
export const LEAK_REPAIR_LAWS: readonly LeakRepairLaw[] = [US_40_CFR_82_157_OF_2019, US_40_CFR_82_157, US_40_CFR_84_106]
