import {
  evidence,
  type Measure,
  ok,
  type Problem,
  type Quantity,
  quantity,
  type Result,
  say,
} from '@chargewright/quantity'
import type { Figure } from '@chargewright/visit'
import type { Case } from '../ruling.ts'
import { accessoryCharge } from './accessory-charge.ts'
import { type Contents, liquidAt, vapourOver } from './contents.ts'
import { copperTube } from './copper-tube.ts'
import { drierExchange } from './drier-exchange.ts'
import { floodingCharge } from './flooding-charge.ts'
import { lineCharge } from './line-charge.ts'
import { liquidTemperature } from './liquid-temperature.ts'
import { weighInTotal } from './weigh-in-total.ts'

type Mass = Quantity<'mass'>
type Part = Result<Measure<Mass>, Problem>

/** The amount, where the nameplate charge is known, and what could not be reckoned: that part is then left out. */
export interface Amount {
  readonly total: Measure<Mass> | undefined
  readonly problems: readonly Problem[]
}

/**
 * Nameplate charge + lines beyond the included length + larger drier + head-pressure control + accessories, each with its
 * evidence.
 * The maker's own figures go before what is reckoned from tubes and volumes.
 */
export function amount(asked: Case): Amount {
  const { nameplateCharge } = asked.visit.system.figures
  if (!nameplateCharge) return { total: undefined, problems: [] }
  const parts = [...lines(asked), ...drier(asked), ...headPressureControl(asked), ...accessories(asked)]
  const known = parts.flatMap((part) => (part.ok ? [part.value] : []))
  const total = weighInTotal(figure('Nameplate charge', nameplateCharge), known)
  const problems = [...parts, total].flatMap((part) => (part.ok ? [] : [part.error]))
  return { total: total.ok ? total.value : undefined, problems }
}

function figure(name: string, { quantity: value, typed, eventId }: Figure): Measure<Mass> {
  return { quantity: value as Mass, evidence: { ...evidence(say`${name} ${value}, typed “${typed}”`), eventId } }
}

function lines(asked: Case): readonly Part[] {
  const { facts, figures } = asked.visit.system
  const { lineLength, includedLineLength, lineChargePerLength } = figures
  if (!lineLength || !includedLineLength) return []
  const length = lineLength.quantity as Quantity<'length'>
  const included = includedLineLength.quantity as Quantity<'length'>
  if (lineChargePerLength) {
    const mass = quantity('mass', (length.si - included.si) * lineChargePerLength.quantity.si)
    const statement = say`Lines ${mass}: ${length} less ${included} included, at ${lineChargePerLength.quantity}`
    const tree = { ...evidence(statement, 'maker, as entered'), eventId: lineChargePerLength.eventId }
    return [ok({ quantity: mass, evidence: tree })]
  }
  if (facts.liquidLineTube === undefined) return []
  const tube = copperTube(facts.liquidLineTube, 'annealed')
  if (!tube.ok) return [tube]
  return [
    withLiquid(asked, (liquid) => lineCharge({ name: 'liquid line', tube: tube.value, length, included }, liquid)),
  ]
}

function drier(asked: Case): readonly Part[] {
  const { oldDrierVolume, newDrierVolume } = asked.visit.system.figures
  if (!oldDrierVolume || !newDrierVolume) return []
  const volumes = {
    oldVolume: oldDrierVolume.quantity as Quantity<'volume'>,
    newVolume: newDrierVolume.quantity as Quantity<'volume'>,
  }
  return [withLiquid(asked, (liquid) => drierExchange(volumes, liquid))]
}

function headPressureControl({ visit, refrigerant }: Case): readonly Part[] {
  const {
    floodingCharge: stated,
    condenserVolume,
    condenserDesignDifference,
    heldCondensing,
    lowestAmbient,
  } = visit.system.figures
  if (stated) return [ok(figure('Head-pressure control', stated))]
  if (!condenserVolume || !condenserDesignDifference || !heldCondensing || !lowestAmbient) return []
  return [
    floodingCharge(refrigerant, {
      volume: condenserVolume.quantity as Quantity<'volume'>,
      designDifference: condenserDesignDifference.quantity as Quantity<'temperature difference'>,
      heldCondensing: heldCondensing.quantity as Quantity<'temperature'>,
      lowestAmbient: lowestAmbient.quantity as Quantity<'temperature'>,
    }),
  ]
}

/** They stand with the liquid line, so that liquid and vapour in them are as warm as its liquid. */
function accessories(asked: Case): readonly Part[] {
  return asked.accessories.map((accessory) =>
    withLiquid(asked, (liquid) => {
      const vapour = vapourOver(asked.refrigerant, liquidTemperature(asked))
      return vapour.ok ? accessoryCharge(accessory, liquid, vapour.value) : vapour
    }),
  )
}

function withLiquid(asked: Case, part: (liquid: Contents) => Part): Part {
  const liquid = liquidAt(asked.refrigerant, liquidTemperature(asked))
  return liquid.ok ? part(liquid.value) : liquid
}
