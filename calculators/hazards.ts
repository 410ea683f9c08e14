/**
 * The classes of harm, each with its caution text: what, consequence, how to avoid it.
 *
 * Signal words follow ANSI Z535 (DANGER will, WARNING could cause death or serious injury; CAUTION
 * minor injury; NOTICE damage only). They belong to hazards and never to verdicts.
 */
import { hazardNames, type HazardId, type HazardName } from './hazard-names.ts'
import { words } from '../src/words/words.ts'

export { standingWords, type HazardId } from './hazard-names.ts'

export interface Hazard extends HazardName {
  readonly what: string
  readonly consequence: string
  readonly avoid: string
  readonly source: string
  /** YYYY-MM-DD */
  readonly reviewed: string
}

const reviewed = '2026-11-25'

export const hazards: Readonly<Record<HazardId, Hazard>> = {
  'high-voltage': {
    ...hazardNames['high-voltage'],
    what: words`More than 60 V DC or 30 V AC is on these conductors.`,
    consequence: words`Touching them kills.`,
    avoid: words`Treat them as live until you have measured them dead at the terminals with a CAT III 1000 V meter. Wear tested Class 0 gloves with leather over them. Never work alone.`,
    source: 'Voltage line: FMVSS 305 definition of a high voltage source. Gloves: 29 CFR 1910.137.',
    reviewed,
  },
  'stored-energy': {
    ...hazardNames['stored-energy'],
    what: words`Controller capacitors, and a permanent-magnet motor that is turned, put voltage back on the terminals after isolation.`,
    consequence: words`Terminals believed dead give a fatal shock.`,
    avoid: words`Isolate, wait, then measure at the terminals before touching; keep the driven wheels still.`,
    source: 'Common practice.',
    reviewed,
  },
  'arc-and-short': {
    ...hazardNames['arc-and-short'],
    what: words`A dropped spanner across cells or busbars passes thousands of amperes.`,
    consequence: words`Molten metal, burns and fire.`,
    avoid: words`Insulated tools, no rings or watch, and a cover over everything you are not working on.`,
    source: 'Common practice.',
    reviewed,
  },
  'low-voltage-burns': {
    ...hazardNames['low-voltage-burns'],
    what: words`A 12 V battery or a few cells will weld a ring or a tool.`,
    consequence: words`Deep burns and fire, without any shock to warn you.`,
    avoid: words`Take the earth lead off first, cover the positive post, take off rings and watch.`,
    source: 'Common practice.',
    reviewed,
  },
  'moving-vehicle': {
    ...hazardNames['moving-vehicle'],
    what: words`A powered vehicle can drive off while you test it.`,
    consequence: words`People are run over or crushed.`,
    avoid: words`Driven wheels off the ground, chocks on the others, a second person at the isolator.`,
    source: 'Common practice.',
    reviewed,
  },
  'unexpected-start': {
    ...hazardNames['unexpected-start'],
    what: words`A failed controller or a throttle fault can command full torque; an electric motor gives no sound that it is ready.`,
    consequence: words`The vehicle moves without a driver who expects it.`,
    avoid: words`Prove the interlocks and the emergency isolator before first power; keep the isolator in reach.`,
    source: 'Common practice.',
    reviewed,
  },
  'loss-of-drive': {
    ...hazardNames['loss-of-drive'],
    what: words`A cut-back, a trip or a blown fuse takes the drive away without notice.`,
    consequence: words`The vehicle stops where others do not expect it.`,
    avoid: words`Fit a warning before the limit is reached, and keep lamps and brakes working without the drive.`,
    source: 'Common practice.',
    reviewed,
  },
  'coolant-poison': {
    ...hazardNames['coolant-poison'],
    what: words`Ethylene glycol tastes sweet.`,
    consequence: words`Spoonfuls kill pets and children.`,
    avoid: words`Wipe up every drip, cap and label the containers, hand the old coolant to a disposal point.`,
    source: 'Veterinary toxicology texts: about 1.4 mL/kg (cat), 4.4 to 6.6 mL/kg (dog).',
    reviewed,
  },
  'hot-coolant': {
    ...hazardNames['hot-coolant'],
    what: words`A warm loop is under pressure, and so is a loop on test air.`,
    consequence: words`Scalds, and hoses or caps that fly off.`,
    avoid: words`Open the cap cold. Use a regulator and a relief valve on any test air, and stay below the weakest rating.`,
    source: 'Common practice.',
    reviewed,
  },
  'leak-onto-high-voltage': {
    ...hazardNames['leak-onto-high-voltage'],
    what: words`Coolant conducts.`,
    consequence: words`A leak onto a joint or connector bridges insulation: shock and fire.`,
    avoid: words`Route hoses so that no drip can reach a high-voltage joint; test isolation after every leak, before power.`,
    source: 'Common practice.',
    reviewed,
  },
  'wiring-fire': {
    ...hazardNames['wiring-fire'],
    what: words`The fuse protects the wire, not the load.`,
    consequence: words`A wire behind too large a fuse burns before the fuse opens.`,
    avoid: words`Put the fuse at the source end, never larger than the wire carries; never fit a larger fuse to stop it blowing.`,
    source: 'Common practice.',
    reviewed,
  },
  'cell-fire': {
    ...hazardNames['cell-fire'],
    what: words`Damaged, overcharged or frozen-charged lithium cells burn and give off toxic gas.`,
    consequence: words`A fire that restarts and cannot be smothered.`,
    avoid: words`Charge in sight, with a smoke detector, outdoors or beside a clear exit; never charge below the cell sheet’s limit.`,
    source: 'Common practice.',
    reviewed,
  },
  'burnt-pack': {
    ...hazardNames['burnt-pack'],
    what: words`A pack that has burnt or vented gives off toxic gas and can light again hours or days later.`,
    consequence: words`Poisoning and a second fire.`,
    avoid: words`Keep away and upwind, call the fire service and say that it is a lithium battery, keep it outdoors and apart afterwards.`,
    source: 'Common practice.',
    reviewed,
  },
  'battery-gas': {
    ...hazardNames['battery-gas'],
    what: words`A lead-acid battery on charge gives off hydrogen and holds sulphuric acid.`,
    consequence: words`Explosion, burns, blindness.`,
    avoid: words`Ventilate, no sparks or flame near it, eye protection, connect and disconnect with the charger off.`,
    source: 'Common practice.',
    reviewed,
  },
  'welding-near-fuel': {
    ...hazardNames['welding-near-fuel'],
    what: words`Sparks reach fuel, vapour in an empty tank, and cells.`,
    consequence: words`Explosion and fire.`,
    avoid: words`Fuel system and cells out of the building first, battery disconnected, extinguisher and a fire watch afterwards.`,
    source: 'Common practice.',
    reviewed,
  },
  crush: {
    ...hazardNames.crush,
    what: words`A vehicle on a jack, or a pack on a hoist, falls.`,
    consequence: words`Crushed limbs or death.`,
    avoid: words`Rated stands on firm ground, rated lifting gear, nobody beneath. Measure ride height with the vehicle on its wheels.`,
    source: 'Common practice.',
    reviewed,
  },
  brakes: {
    ...hazardNames.brakes,
    what: words`Added mass, a missing vacuum source or regeneration changes how the vehicle stops.`,
    consequence: words`It does not stop in the distance the driver expects.`,
    avoid: words`Have the brakes tested at the new mass, on a roller, before the road.`,
    source: 'Common practice.',
    reviewed,
  },
  'fan-starts': {
    ...hazardNames['fan-starts'],
    what: words`A thermostat or a controller starts the fan without notice, also with the key off.`,
    consequence: words`Cut fingers.`,
    avoid: words`Pull the fan fuse before reaching in; fit a guard.`,
    source: 'Common practice.',
    reviewed,
  },
  'loss-of-12-volts': {
    ...hazardNames['loss-of-12-volts'],
    what: words`Lamps, wipers and the contactor all hang on the 12 V side.`,
    consequence: words`Losing it loses drive and lights together, at night, in traffic.`,
    avoid: words`Keep a 12 V battery, and fit a low-voltage warning the driver can see.`,
    source: 'Common practice.',
    reviewed,
  },
  'insulation-tester': {
    ...hazardNames['insulation-tester'],
    what: words`An insulation tester puts 500 V or more on everything it is connected to.`,
    consequence: words`Shock, and destroyed electronics.`,
    avoid: words`Do not use it on a connected controller or battery management unless the maker allows it. Test wet as well as dry.`,
    source: 'Common practice.',
    reviewed,
  },
  'earth-and-residual-current': {
    ...hazardNames['earth-and-residual-current'],
    what: words`A vehicle on charge is mains equipment.`,
    consequence: words`A broken earth leaves the body live.`,
    avoid: words`Prove the earth from plug to body before each new outlet; use an outlet with residual current protection that local rules ask for.`,
    source: 'Common practice; local electrical code.',
    reviewed,
  },
  overspeed: {
    ...hazardNames.overspeed,
    what: words`A rotor beyond its rated speed bursts.`,
    consequence: words`Fragments leave the housing.`,
    avoid: words`Limit the speed in the controller, and mind the change down.`,
    source: 'Common practice.',
    reviewed,
  },
  'not-approval': {
    ...hazardNames['not-approval'],
    what: words`No figure here makes a vehicle legal.`,
    consequence: words`Rules differ by place and change.`,
    avoid: words`Ask the inspector and the insurer before cutting metal, and note the date of the answer.`,
    source: 'Common practice.',
    reviewed,
  },
  'dry-pump': {
    ...hazardNames['dry-pump'],
    what: words`A circulation pump is cooled and lubricated by its coolant.`,
    consequence: words`It is ruined within minutes when run dry.`,
    avoid: words`Fill and bleed before the first power; feed it from a tank above it.`,
    source: 'Common practice.',
    reviewed,
  },
  'range-promise': {
    ...hazardNames['range-promise'],
    what: words`Wind, cold, tyres and speed move it by a third.`,
    consequence: words`You are left at the roadside.`,
    avoid: words`Keep a fifth in hand until you have measured your own route in winter.`,
    source: 'Common practice.',
    reviewed,
  },
}
