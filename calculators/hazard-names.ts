/**
 * The classes of harm by name: signal word and title, without the caution text, which a page has
 * already and a browser need not fetch again.
 *
 * Signal words follow ANSI Z535 (DANGER will, WARNING could cause death or serious injury; CAUTION
 * minor injury; NOTICE damage only). They belong to hazards and never to verdicts.
 */
import { words } from '../src/words/words.ts'
export type HazardId =
  | 'high-voltage'
  | 'stored-energy'
  | 'arc-and-short'
  | 'low-voltage-burns'
  | 'moving-vehicle'
  | 'unexpected-start'
  | 'loss-of-drive'
  | 'coolant-poison'
  | 'hot-coolant'
  | 'leak-onto-high-voltage'
  | 'wiring-fire'
  | 'cell-fire'
  | 'burnt-pack'
  | 'battery-gas'
  | 'welding-near-fuel'
  | 'crush'
  | 'brakes'
  | 'fan-starts'
  | 'loss-of-12-volts'
  | 'insulation-tester'
  | 'earth-and-residual-current'
  | 'overspeed'
  | 'not-approval'
  | 'dry-pump'
  | 'range-promise'

export interface HazardName {
  readonly signal: 'DANGER' | 'WARNING' | 'CAUTION' | 'NOTICE'
  readonly title: string
}

/** Shown with every hazard panel, and with whatever leaves the page. */
export const standingWords = words`This is arithmetic. Local codes and licensed practice decide; the work must be inspected and tested before use.`

export const hazardNames: Readonly<Record<HazardId, HazardName>> = {
  'high-voltage': { signal: 'DANGER', title: words`High voltage` },
  'stored-energy': { signal: 'DANGER', title: words`Stored energy` },
  'arc-and-short': { signal: 'WARNING', title: words`Arc and short circuit` },
  'low-voltage-burns': { signal: 'WARNING', title: words`Burns and arcs below 60 V` },
  'moving-vehicle': { signal: 'WARNING', title: words`Moving vehicle` },
  'unexpected-start': { signal: 'WARNING', title: words`Unexpected start and runaway` },
  'loss-of-drive': { signal: 'WARNING', title: words`Loss of drive in traffic` },
  'coolant-poison': { signal: 'WARNING', title: words`Poison` },
  'hot-coolant': { signal: 'WARNING', title: words`Hot liquid under pressure` },
  'leak-onto-high-voltage': { signal: 'WARNING', title: words`Coolant on high voltage` },
  'wiring-fire': { signal: 'WARNING', title: words`Wiring fire` },
  'cell-fire': { signal: 'WARNING', title: words`Cell fire and gas` },
  'burnt-pack': { signal: 'WARNING', title: words`Toxic gas and re-ignition` },
  'battery-gas': { signal: 'WARNING', title: words`Hydrogen and acid` },
  'welding-near-fuel': { signal: 'WARNING', title: words`Welding and grinding` },
  crush: { signal: 'WARNING', title: words`Crush` },
  brakes: { signal: 'WARNING', title: words`Loss of brakes` },
  'fan-starts': { signal: 'WARNING', title: words`Fan starts by itself` },
  'loss-of-12-volts': { signal: 'WARNING', title: words`Loss of the 12 V supply` },
  'insulation-tester': { signal: 'WARNING', title: words`Insulation tester` },
  'earth-and-residual-current': {
    signal: 'WARNING',
    title: words`Earth and residual current protection`,
  },
  overspeed: { signal: 'WARNING', title: words`Motor overspeed` },
  'not-approval': { signal: 'NOTICE', title: words`Not an approval` },
  'dry-pump': { signal: 'NOTICE', title: words`Dry running` },
  'range-promise': { signal: 'NOTICE', title: words`Range is not a promise` },
}
