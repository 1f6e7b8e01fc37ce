import { airDensity, airOf, CP_AIR } from './air.ts'
import type { DeviceKind, Plate } from './case.ts'
import { type Compressor, pump } from './compressor-law.ts'
import { type Device, feed } from './device-law.ts'
import { drawCondenser, drawEvaporator } from './draw-coils.ts'
import { drawCompressor } from './draw-compressor.ts'
import { drawDevice } from './draw-device.ts'
import { drawFan } from './draw-fan.ts'
import { drawLines } from './draw-lines.ts'
import { drawRefrigerant } from './draw-refrigerant.ts'
import type { Family } from './family.ts'
import { type Fluid, fluid, subcooled, superheated, temperatureOf } from './fluid.ts'
import { lengthWhere } from './length-where.ts'
import { march } from './march.ts'
import { once, type Running, surroundings } from './operate.ts'
import { printedPlate } from './printed-plate.ts'
import type { Random } from './random.ts'
import { RATING } from './rating.ts'
import type { Unit } from './unit.ts'
import { VOID_LAWS } from './void-law.ts'

/** A model as its maker drew it, before any unit of it was built. */
export interface Design {
  readonly unit: Unit
  readonly rated: Running
  /** What the maker's procedure puts into it: rating charge with the lines as they are on this site. */
  readonly right_kg: number
  readonly plate: Plate
}

/**
 * Draws a model that cools rooms: the maker chooses pressures, superheat, subcooling and proportions, and finds the
 * compressor, the tube lengths and the device that make them true at the rating point.
 *
 * @returns undefined when the draw is none that a maker would build
 */
export function drawDesign(kind: DeviceKind, random: Random, family: Family): Design | undefined {
  const { uniform, normal, one, chance } = random
  const refrigerant = drawRefrigerant(kind, random)
  const f = fluid(refrigerant)
  const fine = uniform(0, 1)
  const capacity = 3517 * one([1.5, 2, 2, 2.5, 2.5, 3, 3, 3, 3.5, 4, 4, 5]) * uniform(0.93, 1.02)

  const evaporating = f.at(f.dewPressure(273.15 + Math.min(Math.max(normal(7.6 + fine, 1.2), 4.5), 11)))
  // Makers choose the middle of a glide; the dew point lies half of it above.
  const split = Math.max(17 - 7.5 * fine + normal(0, 1), 8.5)
  const plain = f.at(f.dewPressure(RATING.outdoor_K + split))
  const condensing = f.at(f.dewPressure(RATING.outdoor_K + split + 0.5 * (plain.dew_K - plain.bubble_K)))
  const subcooling_K = uniform(3.8, 8)
  const coilSuperheat_K = kind === 'thermostatic' ? uniform(3.5, 7) : uniform(4, 8.5)
  const suction = f.at(evaporating.p_Pa * uniform(0.965, 0.992))
  const discharge = f.at(condensing.p_Pa * uniform(1.004, 1.02))
  const gain_W_K = uniform(1, 4.5)
  const loss_W_K = uniform(0.5, 4)

  const holdsFlow = chance(0.2 + 0.5 * fine)
  const inside_W = capacity * (holdsFlow ? uniform(0.018, 0.032) : uniform(0.03, 0.05))
  const outside_W = capacity * uniform(0.012, 0.024)
  const out = superheated(evaporating, coilSuperheat_K)
  const liquid = subcooled(condensing, subcooling_K)
  const liquid_K = temperatureOf(condensing, liquid)
  const gained = gain_W_K * (RATING.outdoor_K - temperatureOf(evaporating, out))
  const lost = loss_W_K * (liquid_K - RATING.outdoor_K)
  const flow = (capacity + inside_W - lost) / (out - liquid)
  const feeding = liquid - lost / flow
  const gas = out + gained / flow

  const compressor = sizedCompressor(drawCompressor(random, fine), f, suction, gas, discharge.p_Pa, flow)
  const pumped = pump(compressor, f, suction, gas, discharge.p_Pa)

  const rejected = flow * (pumped.discharge_h - liquid)
  const outsideAir = rejected / (CP_AIR * split * uniform(0.5, 0.7))
  const condenserFan = drawFan(random, outsideAir / airDensity(RATING.outdoor_K + 8), outside_W, chance(0.2))
  const drawnLaw = one(VOID_LAWS)
  const voidLaw = family.voidFraction ?? drawnLaw
  const hot = drawCondenser(random, flow, voidLaw, (discharge.p_Pa - condensing.p_Pa) * discharge.rhoVapour)
  const hotLength = lengthWhere(
    (L) => {
      const coil = { ...hot, length_m: L }
      const fin = coil.fin_W_mK * L
      return (
        liquid -
        march(coil, discharge, condensing, pumped.discharge_h, flow, AT_RATING.outdoor, outsideAir, fin, 1).outlet_h
      )
    },
    10,
    400,
  )

  const evaporatorFan = drawFan(random, capacity * 5.37e-5 * uniform(0.88, 1.08), inside_W, holdsFlow)
  const insideAir =
    surroundings({ evaporatorFan, condenserFan } as Unit, RATING).inside.flow_m3_s * airDensity(RATING.returnAir_K)
  const cold = drawEvaporator(
    random,
    flow,
    voidLaw,
    evaporating.p_Pa * uniform(0.02, 0.07) * evaporating.rhoVapour,
    coilSuperheat_K < 4.5,
  )
  const coilInlet = f.at(evaporating.p_Pa + (cold.drop * flow ** 1.75) / evaporating.rhoVapour)
  const coldLength = lengthWhere(
    (L) => {
      const coil = { ...cold, length_m: L }
      const air = insideAir / (1 + AT_RATING.indoor.w)
      const share = insideAir / airDensity(RATING.returnAir_K) / evaporatorFan.clean_m3_s
      const fin = coil.fin_W_mK * L * share ** coil.finExponent
      return march(coil, coilInlet, evaporating, feeding, flow, AT_RATING.indoor, air, fin, 1).outlet_h - out
    },
    8,
    300,
  )
  if (hotLength === undefined || coldLength === undefined) return undefined

  const lines = drawLines(random, capacity, flow, condensing.rhoLiquid)
  const device_Pa = condensing.p_Pa - ((lines.drop + lines.drierDrop) * flow ** 2) / condensing.rhoLiquid
  const inlet = f.at(device_Pa)
  if (feeding > inlet.hLiquid) return undefined
  const around = {
    fluid: f,
    inlet,
    h: feeding,
    downstream_Pa: coilInlet.p_Pa,
    bulb_K: temperatureOf(evaporating, out),
    air_K: RATING.outdoor_K,
    equaliser_Pa: evaporating.p_Pa,
  }
  const loose = drawDevice(kind, random, around, flow, family)
  const device: Device = { ...loose, area: (loose.area * flow) / feed(loose, around) }

  const unit: Unit = {
    fluid: f,
    compressor,
    condenser: { ...hot, length_m: hotLength },
    condenserFan,
    evaporator: { ...cold, length_m: coldLength },
    evaporatorFan,
    device,
    liquidLine: {
      volume_m3: lines.liquid_m3,
      drier_m3: uniform(0.08e-3, 0.25e-3),
      drop: lines.drop,
      drierDrop: lines.drierDrop,
      strainerDrop: 0,
      loss_W_K,
    },
    suctionLine: {
      volume_m3: lines.suction_m3,
      drop: ((evaporating.p_Pa - suction.p_Pa) * f.density(suction.p_Pa, gas)) / flow ** 2,
      gain_W_K,
    },
    dischargeLine_m3: capacity * uniform(0.02e-6, 0.12e-6),
    shell_m3: capacity * uniform(0.2e-6, 0.5e-6),
    accumulator_m3: kind !== 'thermostatic' && chance(0.25) ? capacity * uniform(0.15e-6, 0.35e-6) : 0,
    accumulatorWetness: uniform(0.04, 0.15),
    oil_kg: capacity * uniform(0.7e-4, 1.3e-4),
    oilTakes: uniform(0.04, 0.16),
    gas_Pa: 0,
  }
  const unknowns = [Math.log(suction.p_Pa), Math.log(discharge.p_Pa), gas / 1e5] as const
  const { running: rated } = once(unit, surroundings(unit, RATING), unknowns)
  const cop = rated.capacity_W / rated.power_W
  const specific = rated.charge_kg / (capacity / 1000)
  const isBuilt = cop > 2.3 && cop < 5 && rated.discharge_K < 378 && specific > 0.13 && specific < 0.55
  if (!isBuilt) return undefined
  return {
    unit,
    rated,
    right_kg: rated.charge_kg,
    plate: printedPlate(kind, refrigerant, rated, lines.misjudged_kg, random),
  }
}

const AT_RATING = {
  outdoor: { T_K: RATING.outdoor_K, w: 0.008 },
  indoor: airOf(RATING.returnAir_K, RATING.returnWetBulb_K),
}

function sizedCompressor(
  c: Compressor,
  f: Fluid,
  suction: ReturnType<Fluid['at']>,
  h: number,
  to_Pa: number,
  flow: number,
): Compressor {
  const small = pump({ ...c, motorFall: 0 }, f, suction, h, to_Pa)
  const scale = flow / small.flow
  return { ...c, sweep: c.sweep * scale, ratedPower_W: small.power_W * scale }
}
