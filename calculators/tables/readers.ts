/**
 * Which calculators work with which standard tables, for the links between their pages.
 *
 * In: nothing. Out: ids of tables by id of the calculator. A table that no calculator reads stands for
 * readers alone. A test follows the imports and holds this list against them.
 */
const boat = ['boat-ampacity', 'boat-engine-space'] as const

export const tablesRead: Readonly<Record<string, readonly string[]>> = {
  'air-density': ['standard-atmosphere', 'vapour-pressure'],
  'battery-restraint': ['bolts-iso-898-1'],
  'cabin-heater': ['blade-fuse-ratings'],
  'cable-drop': ['aircraft-ampacity', ...boat, 'flexible-copper', 'loom-wire'],
  'charge-pilot': ['charge-cable-codes'],
  'charge-time': ['breaker-ratings'],
  'fastener-torque': ['bolts-iso-898-1', 'bolts-sae-j429', 'nut-factors'],
  'hose-bend': ['hose-bend-radii', 'hose-clamps'],
  'main-fuse': ['flexible-copper', 'traction-fuse-ratings'],
  'motor-circuit': [
    'blade-fuse-ratings',
    'blade-fuse-times',
    ...boat,
    'flexible-copper',
    'loom-wire',
  ],
  'panel-hole': ['bundle-diameters', 'clearance-holes', 'gland-holes'],
  'pump-inlet': ['vapour-pressure'],
}
