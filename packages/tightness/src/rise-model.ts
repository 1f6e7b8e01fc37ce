/**
 * What makes the pressure rise in a shut-off, evacuated system. Pressures in Pa, times in s, the leak in Pa/s.
 *
 * A leak lets air in at a steady rate as long as the pressure stays below half an atmosphere, because the flow through
 * it is choked: a straight line. Moisture boils off and, with nothing pumping, comes to rest where its vapour is in
 * equilibrium: the curve levels.
 *
 * @source rise and level for moisture, steady rise for a leak: *common practice*; choked flow below about 0.53 of the
 * pressure outside: any text on gas dynamics
 */
export type RiseModel =
  | { readonly kind: 'steady'; readonly start_Pa: number }
  | { readonly kind: 'leak'; readonly start_Pa: number; readonly leak_Pa_s: number }
  | { readonly kind: 'moisture'; readonly start_Pa: number; readonly rise_Pa: number; readonly time_s: number }
  | {
      readonly kind: 'leak-and-moisture'
      readonly start_Pa: number
      readonly leak_Pa_s: number
      readonly rise_Pa: number
      readonly time_s: number
    }

export type RiseKind = RiseModel['kind']

/** Pressure that a model gives at a time, Pa. */
export function pressureAt(model: RiseModel, elapsed_s: number): number {
  switch (model.kind) {
    case 'steady':
      return model.start_Pa
    case 'leak':
      return model.start_Pa + model.leak_Pa_s * elapsed_s
    case 'moisture':
      return model.start_Pa + model.rise_Pa * levelled(elapsed_s, model.time_s)
    case 'leak-and-moisture':
      return model.start_Pa + model.leak_Pa_s * elapsed_s + model.rise_Pa * levelled(elapsed_s, model.time_s)
  }
}

/** Share of the way to its level, 1 − e^(−t/τ). */
export const levelled = (elapsed_s: number, time_s: number): number => -Math.expm1(-elapsed_s / time_s)
