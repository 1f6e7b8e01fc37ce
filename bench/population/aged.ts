import type { Coil } from './coil.ts'
import type { Device } from './device-law.ts'
import type { Random } from './random.ts'
import type { Unit } from './unit.ts'

/**
 * One unit of a model, as production and years have made it. Standard deviations; nearly all units lie within twice
 * them: coil conductance 5 % and some dirt, inner volume 5 %, compressor 2.5 %, airflow 6 %, bore of the device 2 %,
 * setting of a valve 0.6 K.
 *
 * @param spread factor on all of them
 */
export function aged(unit: Unit, random: Random, spread: number): Unit {
  const { factor, uniform } = random
  const worn = (coil: Coil): Coil => ({
    ...coil,
    fin_W_mK: coil.fin_W_mK * factor(0.05 * spread) * (1 - uniform(0, 0.06 * spread)),
    grooves: coil.grooves * factor(0.05 * spread),
    roomy: coil.roomy * factor(0.05 * spread),
  })
  const { compressor, condenserFan, evaporatorFan, liquidLine, suctionLine } = unit
  const inside = { ...evaporatorFan, clean_m3_s: evaporatorFan.clean_m3_s * factor(0.06 * spread) }
  const outside = { ...condenserFan, clean_m3_s: condenserFan.clean_m3_s * factor(0.05 * spread) }
  return {
    ...unit,
    compressor: {
      ...compressor,
      sweep: compressor.sweep * factor(0.025 * spread),
      motor: Math.min(compressor.motor * factor(0.02 * spread), 0.94),
    },
    condenser: worn(unit.condenser),
    evaporator: worn(unit.evaporator),
    evaporatorFan: { ...inside, power_W: inside.power_W * factor(0.08 * spread) },
    condenserFan: { ...outside, power_W: outside.power_W * factor(0.08 * spread) },
    device: usedDevice(unit.device, unit, random, spread),
    liquidLine: { ...liquidLine, drierDrop: liquidLine.drierDrop * factor(0.2 * spread) },
    suctionLine: { ...suctionLine, gain_W_K: suctionLine.gain_W_K * factor(0.2 * spread) },
    oil_kg: unit.oil_kg * factor(0.08 * spread),
  }
}

function usedDevice(device: Device, { fluid }: Unit, { factor, normal }: Random, spread: number): Device {
  switch (device.kind) {
    case 'fixed-orifice':
    case 'capillary':
      return { ...device, area: device.area * factor(0.02 * spread) }
    case 'thermostatic': {
      const perKelvin = fluid.dewPressure(284) - fluid.dewPressure(283)
      return {
        ...device,
        area: device.area * factor(0.04 * spread),
        spring_Pa: device.spring_Pa + perKelvin * normal(0, 0.6 * spread),
        stuck_Pa: perKelvin * normal(0, 0.3),
      }
    }
  }
}
