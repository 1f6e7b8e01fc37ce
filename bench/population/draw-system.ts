import { compressor } from '../../packages/cycle/src/components/compressor.ts'
import { condenser } from '../../packages/cycle/src/components/condenser.ts'
import { evaporator } from '../../packages/cycle/src/components/evaporator.ts'
import { cycle } from '../../packages/cycle/src/cycle.ts'
import { type Device, deviceFlow } from '../../packages/cycle/src/devices/device.ts'
import { deviceInlet } from '../../packages/cycle/src/devices/inlet.ts'
import type { Nameplate, Properties, System } from '../../packages/cycle/src/index.ts'
import { conditions, SOUND } from '../../packages/cycle/src/system.ts'
import type { Random } from './random.ts'

/** A system on site: what its maker printed, what it really is, and the charge that is right for it. */
export interface Drawn {
  readonly plate: Omit<Nameplate, 'properties'>
  readonly truth: System
  readonly right_kg: number
}

type Kind = 'fixed-orifice' | 'capillary' | 'thermostatic'

/**
 * Draws a comfort-cooling system. The equations are the package's; every parameter, ratio and habit is drawn here and
 * none is taken from the way the twin is sized: coil proportions, void fraction, leakage, circuiting, volumes and
 * lines all differ from unit to unit. After its nameplate was printed each unit got production scatter and age.
 *
 * Undefined when the draw is no system that a maker would build; the caller draws again.
 */
export function drawSystem(kind: Kind, properties: Properties, random: Random): Drawn | undefined {
  const { uniform, normal, one } = random
  const capacity = uniform(5000, 17_500)
  const subcooling = uniform(3.5, 8)
  const superheat = kind === 'thermostatic' ? uniform(4, 8) : uniform(5, 9.5)
  const at = conditions(308.15, 299.82, 292.59)
  if (!at.ok) return undefined
  const weather = at.value
  const evaporating = properties.saturated(properties.dewPressure(normal(280.4, 1.2)))
  const condensing = properties.saturated(properties.dewPressure(308.15 + uniform(8.5, 16)))
  const suction = properties.saturated(evaporating.pressure_Pa * uniform(0.97, 0.995))
  const gas = suction.vapourEnthalpy_J_kg + suction.vapourHeat_J_kgK * superheat
  const liquid = properties.saturated(properties.bubblePressure(condensing.bubble_K - subcooling)).liquidEnthalpy_J_kg
  const gain_W_K = uniform(0.5, 3.5)
  const flow = (capacity * 1.035 + gain_W_K * (308.15 - suction.dew_K - superheat)) / (gas - liquid)
  const outlet = gas - (gain_W_K * (308.15 - suction.dew_K - superheat)) / flow

  const unitMachine = {
    kind: 'volumetric',
    sweep_m3_s: 1,
    clearance: uniform(0.025, 0.09),
    bestEfficiency: uniform(0.62, 0.75),
    bestRatio: uniform(2.4, 3.2),
    heatLoss: uniform(0.04, 0.12),
  } as const
  const pumped = compressor(unitMachine, properties, suction, condensing, properties.vapour(suction, gas), gas, 0)
  const machine = { ...unitMachine, sweep_m3_s: flow / pumped.flow_kg_s }
  const tube = { massFlux: uniform(120, 250), diameter_m: uniform(0.006, 0.009) }
  const voidFraction = one(['zivi', 'rouhani-axelsson', 'hughmark'] as const)

  const hot = fitted(
    coil(random, capacity * uniform(1.35e-4, 1.75e-4), flow, capacity * 0.018),
    (c) =>
      liquid -
      condenser(c, properties, condensing, pumped.dischargeEnthalpy_J_kg, flow, weather.outdoor, 1, voidFraction, tube)
        .outletEnthalpy_J_kg,
    { twoPhase: uniform(1.8, 3.5), vapour: uniform(0.4, 0.9), liquid: uniform(0.18, 0.45) },
  )
  const cold = fitted(
    { ...coil(random, capacity * normal(6.2e-5, 0.4e-5), flow, capacity * 0.036), circuitSpread: uniform(0, 0.14) },
    (c) =>
      evaporator(
        c,
        evaporating,
        liquid,
        evaporating.vapourDensity_kg_m3,
        flow,
        weather.indoor,
        weather.saturatedAir,
        1,
        voidFraction,
        tube,
      ).outletEnthalpy_J_kg - outlet,
    { twoPhase: uniform(1.2, 3), vapour: uniform(0.13, 0.32), liquid: 1 },
  )
  if (!hot || !cold) return undefined
  const inlet = deviceInlet(properties, properties.saturated(0.99 * condensing.pressure_Pa), liquid)
  const coilSuperheat = properties.vapour(evaporating, outlet).temperature_K - evaporating.dew_K
  const shape = deviceShape(kind, random, coilSuperheat)
  const device = sized(
    shape,
    (d) => deviceFlow(d, properties, inlet, evaporating.pressure_Pa, coilSuperheat).flow_kg_s / flow,
  )
  if (!device) return undefined

  const maker: System = {
    properties,
    compressor: machine,
    condenser: { ...hot, volume_m3: capacity * uniform(0.3e-6, 0.6e-6) },
    evaporator: { ...cold, volume_m3: capacity * uniform(0.25e-6, 0.5e-6) },
    device,
    liquidLine: {
      volume_m3: uniform(0.15e-3, 0.8e-3),
      drierVolume_m3: uniform(0.1e-3, 0.3e-3),
      loss_W_K: uniform(0, 3),
      drop_Pa: uniform(0.003, 0.012) * condensing.pressure_Pa,
      ratedFlow_kg_s: flow,
    },
    suctionLine: {
      volume_m3: uniform(0.5e-3, 2e-3),
      drop_Pa: evaporating.pressure_Pa - suction.pressure_Pa,
      ratedFlow_kg_s: flow,
      ratedDensity_kg_m3: properties.vapour(suction, gas).density_kg_m3,
      gain_W_K,
    },
    inventory: {
      voidFraction,
      tube,
      dischargeVolume_m3: capacity * uniform(0.02e-6, 0.2e-6),
      shellVolume_m3: capacity * uniform(0.03e-6, 0.4e-6),
      offset_kg: capacity * uniform(0, 3e-5),
    },
    rated: {
      conditions: weather,
      charge_kg: 1,
      unknowns: {
        lnSuction: Math.log(suction.pressure_Pa),
        lnCondensing: Math.log(condensing.pressure_Pa),
        suctionEnthalpy_J_kg: gas,
      },
      flow_kg_s: flow,
      capacity_W: capacity,
      superheat_K: superheat,
      subcooling_K: subcooling,
    },
    trips: {
      high_Pa: 0.85 * properties.critical.pressure_Pa,
      low_Pa: properties.dewPressure(253),
      frostIsNormal: false,
    },
  }
  const rating = cycle(maker, weather, { ...SOUND, charge_kg: 1 }, maker.rated.unknowns)
  const right_kg = rating.charge_kg
  const power = rating.compressor.power_W + capacity * (0.018 + 0.036)
  return {
    plate: {
      application: 'comfort-cooling',
      device: kind,
      capacity_W: round(capacity, 100),
      charge_kg: round(right_kg, 0.01),
      efficiency: { kind: 'cop', cop: round(capacity / power, 0.05) },
      ...(kind === 'thermostatic' ? { subcooling_K: round(subcooling, 0.5) } : {}),
    },
    truth: aged({ ...maker, rated: { ...maker.rated, charge_kg: right_kg } }, random),
    right_kg,
  }
}

const round = (x: number, to: number) => Math.round(x / to) * to

function coil({ normal }: Random, airflow: number, flow: number, fan: number): System['condenser'] {
  const bare = { airUa_W_K: 0, twoPhaseUa_W_K: 0, vapourUa_W_K: 0, liquidUa_W_K: 0, volume_m3: 0 }
  return { ...bare, airflow_kg_s: airflow * Math.exp(normal(0, 0.03)), ratedFlow_kg_s: flow, fan_W: fan }
}

/** The coil of these proportions that brings the refrigerant where the design has it, by bisection. */
function fitted<C extends System['condenser']>(
  bare: C,
  beyond: (coil: C) => number,
  shape: { twoPhase: number; vapour: number; liquid: number },
): C | undefined {
  const of = (ln: number): C => {
    const air = bare.airflow_kg_s * 1020 * Math.exp(ln)
    return {
      ...bare,
      airUa_W_K: air,
      twoPhaseUa_W_K: shape.twoPhase * air,
      vapourUa_W_K: shape.vapour * air,
      liquidUa_W_K: shape.liquid * air,
    }
  }
  const ln = bisect((u) => beyond(of(u)), -2.3, 2.7)
  return ln === undefined ? undefined : of(ln)
}

function deviceShape(kind: Kind, { uniform }: Random, coilSuperheat: number): (size: number) => Device {
  const [length, friction, opening, band] = [uniform(0.009, 0.016), uniform(12, 32), uniform(0.4, 0.75), uniform(4, 8)]
  switch (kind) {
    case 'fixed-orifice':
      return (ln) => ({ kind, diameter_m: 1.5e-3 * Math.exp(ln), length_m: length })
    case 'capillary':
      return (ln) => ({ kind, diameter_m: 2e-3 * Math.exp(ln), friction })
    case 'thermostatic':
      return (ln) => ({
        kind,
        area_m2: 2e-6 * Math.exp(2 * ln),
        staticSuperheat_K: coilSuperheat - opening * band,
        band_K: band,
      })
  }
}

function sized(shape: (ln: number) => Device, share: (device: Device) => number): Device | undefined {
  const ln = bisect((u) => Math.log(share(shape(u))), -1.5, 1.5)
  return ln === undefined ? undefined : shape(ln)
}

function bisect(f: (x: number) => number, from: number, to: number): number | undefined {
  let [low, high] = [from, to]
  const sign = Math.sign(f(low))
  if (sign * Math.sign(f(high)) >= 0) return undefined
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2
    if (Math.sign(f(middle)) === sign) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/** Production scatter and age, after the nameplate was printed; the nameplate charge stays right by definition. */
function aged(system: System, { normal }: Random): System {
  const by = (sd: number) => Math.exp(normal(0, sd))
  const worn = <C extends System['condenser']>(coil: C): C => {
    const [ua, volume, air] = [by(0.05), by(0.02), by(0.05)]
    return {
      ...coil,
      airUa_W_K: coil.airUa_W_K * ua,
      twoPhaseUa_W_K: coil.twoPhaseUa_W_K * ua,
      vapourUa_W_K: coil.vapourUa_W_K * ua,
      liquidUa_W_K: coil.liquidUa_W_K * ua,
      volume_m3: coil.volume_m3 * volume,
      airflow_kg_s: coil.airflow_kg_s * air,
    }
  }
  const { compressor: machine } = system
  return {
    ...system,
    compressor:
      machine.kind === 'volumetric'
        ? { ...machine, sweep_m3_s: machine.sweep_m3_s * by(0.02), bestEfficiency: machine.bestEfficiency * by(0.03) }
        : machine,
    condenser: worn(system.condenser),
    evaporator: worn(system.evaporator),
  }
}
