import { FIGURES, type FigureId, type SystemStatement } from './system.ts'

/** A fact of the system by its name in the file. */
export type FactName = keyof SystemStatement

/** What the facts that are chosen or named are called; those that are figures carry their own label. */
const LABELS: Readonly<Record<Exclude<FactName, FigureId>, string>> = {
  name: 'Name of the system',
  refrigerant: 'Refrigerant',
  meteringDevice: 'Metering device',
  application: 'Application',
  receiver: 'Receiver',
  sightGlass: 'Sight glass',
  accumulator: 'Accumulator',
  liquidLineTube: 'Liquid line, outside diameter in inches',
  makersChart: 'Maker’s chart',
  accessories: 'Added parts',
  compressorRating: 'Rating of the compressor',
}

/** What a fact of the system is called. */
export function factLabel(name: FactName): string {
  return isFigure(name) ? FIGURES[name].label : LABELS[name]
}

function isFigure(name: FactName): name is FigureId {
  return Object.hasOwn(FIGURES, name)
}
