/**
 * Every calculator, by id, loaded when first used. Sorted by id. Node and the browser share this list.
 */
import type { Calculator } from './define.ts'

export const calculators: Readonly<Record<string, () => Promise<Calculator>>> = {
  'adapter-alignment': async () =>
    (await import('./workshop/adapter-alignment.ts')).adapterAlignment,
  'air-density': async () => (await import('./vehicle/air-density.ts')).airDensityCalculator,
  'axle-balance': async () => (await import('./vehicle/axle-balance.ts')).axleBalance,
  'battery-restraint': async () =>
    (await import('./vehicle/battery-restraint.ts')).batteryRestraint,
  'brake-energy': async () => (await import('./vehicle/brake-energy.ts')).brakeEnergy,
  'cabin-heater': async () => (await import('./auxiliary/cabin-heater.ts')).cabinHeater,
  'cable-drop': async () => (await import('./auxiliary/cable-drop.ts')).cableDrop,
  'cell-current': async () => (await import('./traction/cell-current.ts')).cellCurrent,
  'cell-heating': async () => (await import('./traction/cell-heating.ts')).cellHeating,
  'cell-spread': async () => (await import('./traction/cell-spread.ts')).cellSpread,
  'charge-pilot': async () => (await import('./traction/charge-pilot.ts')).chargePilot,
  'charge-time': async () => (await import('./traction/charge-time.ts')).chargeTime,
  'coast-down': async () => (await import('./vehicle/coast-down.ts')).coastDown,
  'coolant-mix': async () => (await import('./cooling/coolant-mix.ts')).coolantMix,
  'cost-rollup': async () => (await import('./project/cost-rollup.ts')).costRollup,
  'fastener-torque': async () => (await import('./workshop/fastener-torque.ts')).fastenerTorque,
  gearing: async () => (await import('./vehicle/gearing.ts')).gearing,
  'heat-and-rise': async () => (await import('./cooling/heat-and-rise.ts')).heatAndRise,
  'heat-soak': async () => (await import('./cooling/heat-soak.ts')).heatSoak,
  'hill-start': async () => (await import('./vehicle/hill-start.ts')).hillStart,
  'hose-bend': async () => (await import('./cooling/hose-bend.ts')).hoseBend,
  'hose-suitability': async () => (await import('./cooling/hose-suitability.ts')).hoseSuitability,
  'isolation-resistance': async () =>
    (await import('./traction/isolation-resistance.ts')).isolationResistance,
  'joint-check': async () => (await import('./traction/joint-check.ts')).jointCheck,
  'key-off-drain': async () => (await import('./auxiliary/key-off-drain.ts')).keyOffDrain,
  'leak-test': async () => (await import('./cooling/leak-test.ts')).leakTest,
  'loop-heights': async () => (await import('./cooling/loop-heights.ts')).loopHeights,
  'loop-volume': async () => (await import('./cooling/loop-volume.ts')).loopVolume,
  'main-fuse': async () => (await import('./traction/main-fuse.ts')).mainFuse,
  'motor-circuit': async () => (await import('./auxiliary/motor-circuit.ts')).motorCircuit,
  'pack-layout': async () => (await import('./traction/pack-layout.ts')).packLayout,
  'panel-hole': async () => (await import('./workshop/panel-hole.ts')).panelHole,
  'pre-charge': async () => (await import('./traction/pre-charge.ts')).preCharge,
  'prediction-check': async () => (await import('./project/prediction-check.ts')).predictionCheck,
  'pump-and-loop': async () => (await import('./cooling/pump-and-loop.ts')).pumpAndLoop,
  'pump-inlet': async () => (await import('./cooling/pump-inlet.ts')).pumpInlet,
  'radiator-and-fan': async () => (await import('./cooling/radiator-and-fan.ts')).radiatorAndFan,
  'regen-limit': async () => (await import('./vehicle/regen-limit.ts')).regenLimit,
  'relay-and-switch': async () => (await import('./auxiliary/relay-and-switch.ts')).relayAndSwitch,
  'road-load': async () => (await import('./vehicle/road-load.ts')).roadLoad,
  'twelve-volt-budget': async () =>
    (await import('./auxiliary/twelve-volt-budget.ts')).twelveVoltBudget,
}
