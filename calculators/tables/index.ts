/**
 * Every standard table, by id, loaded when first used. Sorted by id.
 */
import type { Table } from './define.ts'

export const tables: Readonly<Record<string, () => Promise<Table>>> = {
  'aircraft-ampacity': async () => (await import('./aircraft-ampacity.ts')).aircraftAmpacity,
  'aircraft-fuses': async () => (await import('./aircraft-fuses.ts')).aircraftFuses,
  awg: async () => (await import('./awg.ts')).awg,
  'blade-fuse-ratings': async () => (await import('./blade-fuse-ratings.ts')).bladeFuseRatings,
  'blade-fuse-times': async () => (await import('./blade-fuse-times.ts')).bladeFuseTimes,
  'boat-ampacity': async () => (await import('./boat-ampacity.ts')).boatAmpacity,
  'boat-engine-space': async () => (await import('./boat-engine-space.ts')).boatEngineSpace,
  'bolts-iso-898-1': async () => (await import('./bolts-iso-898-1.ts')).boltsIso8981,
  'bolts-sae-j429': async () => (await import('./bolts-sae-j429.ts')).boltsSaeJ429,
  'breaker-ratings': async () => (await import('./breaker-ratings.ts')).breakers,
  'bundle-diameters': async () => (await import('./bundle-diameters.ts')).bundleDiameters,
  'charge-cable-codes': async () => (await import('./charge-cable-codes.ts')).chargeCableCodes,
  'clearance-holes': async () => (await import('./clearance-holes.ts')).clearanceHoles,
  'flexible-copper': async () => (await import('./flexible-copper.ts')).flexibleCopper,
  'gland-holes': async () => (await import('./gland-holes.ts')).glandHoles,
  'hose-bend-radii': async () => (await import('./hose-bend-radii.ts')).hoseBendRadii,
  'hose-clamps': async () => (await import('./hose-clamps.ts')).hoseClamps,
  'loom-wire': async () => (await import('./loom-wire.ts')).loomWire,
  'nut-factors': async () => (await import('./nut-factors.ts')).nutFactors,
  'standard-atmosphere': async () => (await import('./standard-atmosphere.ts')).standardAtmosphere,
  'traction-fuse-ratings': async () => (await import('./traction-fuse-ratings.ts')).tractionFuses,
  'tyre-sizes': async () => (await import('./tyre-sizes.ts')).tyreSizes,
  'vapour-pressure': async () => (await import('./vapour-pressure.ts')).vapourPressure,
  'vehicle-wire': async () => (await import('./vehicle-wire.ts')).vehicleWire,
}
