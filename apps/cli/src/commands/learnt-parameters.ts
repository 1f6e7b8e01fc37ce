import { type Learned, PARAMETERS, type ParameterName } from '@chargewright/cycle'

/** One thing that readings taught of a system: a factor on what its nameplate gave, with its standard uncertainty. */
export interface LearntParameter {
  readonly name: ParameterName
  readonly meaning: string
  readonly factor: number
  /** Relative, of the factor. */
  readonly u: number
}

/** What was learnt, the charge apart, which is told as a mass. */
export function learntParameters({ parameters, covariance }: Learned): readonly LearntParameter[] {
  const names = Object.keys(PARAMETERS) as ParameterName[]
  return names.flatMap((name, i) =>
    name === 'charge'
      ? []
      : [
          {
            name,
            meaning: PARAMETERS[name].meaning,
            factor: Math.exp(parameters[name]),
            u: Math.sqrt(covariance[i]![i]!),
          },
        ],
  )
}
