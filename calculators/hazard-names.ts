/**
 * The classes of harm by name: signal word and title, without the caution text, which a page has
 * already and a browser need not fetch again.
 *
 * Signal words follow ANSI Z535 (DANGER will, WARNING could cause death or serious injury; CAUTION
 * minor injury; NOTICE damage only). They belong to hazards and never to verdicts.
 */
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
export const standingWords =
  'This is arithmetic. Local codes and licensed practice decide; the work must be inspected and tested before use.'

export const hazardNames: Readonly<Record<HazardId, HazardName>> = {
  'high-voltage': { signal: 'DANGER', title: 'High voltage' },
  'stored-energy': { signal: 'DANGER', title: 'Stored energy' },
  'arc-and-short': { signal: 'WARNING', title: 'Arc and short circuit' },
  'low-voltage-burns': { signal: 'WARNING', title: 'Burns and arcs below 60 V' },
  'moving-vehicle': { signal: 'WARNING', title: 'Moving vehicle' },
  'unexpected-start': { signal: 'WARNING', title: 'Unexpected start and runaway' },
  'loss-of-drive': { signal: 'WARNING', title: 'Loss of drive in traffic' },
  'coolant-poison': { signal: 'WARNING', title: 'Poison' },
  'hot-coolant': { signal: 'WARNING', title: 'Hot liquid under pressure' },
  'leak-onto-high-voltage': { signal: 'WARNING', title: 'Coolant on high voltage' },
  'wiring-fire': { signal: 'WARNING', title: 'Wiring fire' },
  'cell-fire': { signal: 'WARNING', title: 'Cell fire and gas' },
  'burnt-pack': { signal: 'WARNING', title: 'Toxic gas and re-ignition' },
  'battery-gas': { signal: 'WARNING', title: 'Hydrogen and acid' },
  'welding-near-fuel': { signal: 'WARNING', title: 'Welding and grinding' },
  crush: { signal: 'WARNING', title: 'Crush' },
  brakes: { signal: 'WARNING', title: 'Loss of brakes' },
  'fan-starts': { signal: 'WARNING', title: 'Fan starts by itself' },
  'loss-of-12-volts': { signal: 'WARNING', title: 'Loss of the 12 V supply' },
  'insulation-tester': { signal: 'WARNING', title: 'Insulation tester' },
  'earth-and-residual-current': {
    signal: 'WARNING',
    title: 'Earth and residual current protection',
  },
  overspeed: { signal: 'WARNING', title: 'Motor overspeed' },
  'not-approval': { signal: 'NOTICE', title: 'Not an approval' },
  'dry-pump': { signal: 'NOTICE', title: 'Dry running' },
  'range-promise': { signal: 'NOTICE', title: 'Range is not a promise' },
}
