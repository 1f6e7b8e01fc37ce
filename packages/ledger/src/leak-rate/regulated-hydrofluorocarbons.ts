/**
 * Saturated hydrofluorocarbons that US law regulates, as refrigerants are named. Annex I of the EU regulation lists them too.
 *
 * @source AIM Act, subsection (c), and 40 CFR 84, appendix A, both recalled: not confirmed
 */
export const REGULATED_HYDROFLUOROCARBONS: ReadonlySet<string> = new Set([
  'R-23',
  'R-32',
  'R-41',
  'R-125',
  'R-134',
  'R-134a',
  'R-143',
  'R-143a',
  'R-152',
  'R-152a',
  'R-227ea',
  'R-236cb',
  'R-236ea',
  'R-236fa',
  'R-245ca',
  'R-245fa',
  'R-365mfc',
  'R-43-10mee',
])
