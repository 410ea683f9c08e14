/**
 * The classes of harm, each with its caution text: what, consequence, how to avoid it.
 *
 * Signal words follow ANSI Z535 (DANGER will, WARNING could cause death or serious injury; CAUTION
 * minor injury; NOTICE damage only). They belong to hazards and never to verdicts.
 */
import { hazardNames, type HazardId, type HazardName } from './hazard-names.ts'

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
    what: 'More than 60 V DC or 30 V AC is on these conductors.',
    consequence: 'Touching them kills.',
    avoid:
      'Treat them as live until you have measured them dead at the terminals with a CAT III 1000 V meter. Wear tested Class 0 gloves with leather over them. Never work alone.',
    source: 'Voltage line: FMVSS 305 definition of a high voltage source. Gloves: 29 CFR 1910.137.',
    reviewed,
  },
  'stored-energy': {
    ...hazardNames['stored-energy'],
    what: 'Controller capacitors, and a permanent-magnet motor that is turned, put voltage back on the terminals after isolation.',
    consequence: 'Terminals believed dead give a fatal shock.',
    avoid:
      'Isolate, wait, then measure at the terminals before touching; keep the driven wheels still.',
    source: 'Common practice.',
    reviewed,
  },
  'arc-and-short': {
    ...hazardNames['arc-and-short'],
    what: 'A dropped spanner across cells or busbars passes thousands of amperes.',
    consequence: 'Molten metal, burns and fire.',
    avoid:
      'Insulated tools, no rings or watch, and a cover over everything you are not working on.',
    source: 'Common practice.',
    reviewed,
  },
  'low-voltage-burns': {
    ...hazardNames['low-voltage-burns'],
    what: 'A 12 V battery or a few cells will weld a ring or a tool.',
    consequence: 'Deep burns and fire, without any shock to warn you.',
    avoid: 'Take the earth lead off first, cover the positive post, take off rings and watch.',
    source: 'Common practice.',
    reviewed,
  },
  'moving-vehicle': {
    ...hazardNames['moving-vehicle'],
    what: 'A powered vehicle can drive off while you test it.',
    consequence: 'People are run over or crushed.',
    avoid: 'Driven wheels off the ground, chocks on the others, a second person at the isolator.',
    source: 'Common practice.',
    reviewed,
  },
  'unexpected-start': {
    ...hazardNames['unexpected-start'],
    what: 'A failed controller or a throttle fault can command full torque; an electric motor gives no sound that it is ready.',
    consequence: 'The vehicle moves without a driver who expects it.',
    avoid:
      'Prove the interlocks and the emergency isolator before first power; keep the isolator in reach.',
    source: 'Common practice.',
    reviewed,
  },
  'loss-of-drive': {
    ...hazardNames['loss-of-drive'],
    what: 'A cut-back, a trip or a blown fuse takes the drive away without notice.',
    consequence: 'The vehicle stops where others do not expect it.',
    avoid:
      'Fit a warning before the limit is reached, and keep lamps and brakes working without the drive.',
    source: 'Common practice.',
    reviewed,
  },
  'coolant-poison': {
    ...hazardNames['coolant-poison'],
    what: 'Ethylene glycol tastes sweet.',
    consequence: 'Spoonfuls kill pets and children.',
    avoid:
      'Wipe up every drip, cap and label the containers, hand the old coolant to a disposal point.',
    source: 'Veterinary toxicology texts: about 1.4 mL/kg (cat), 4.4 to 6.6 mL/kg (dog).',
    reviewed,
  },
  'hot-coolant': {
    ...hazardNames['hot-coolant'],
    what: 'A warm loop is under pressure, and so is a loop on test air.',
    consequence: 'Scalds, and hoses or caps that fly off.',
    avoid:
      'Open the cap cold. Use a regulator and a relief valve on any test air, and stay below the weakest rating.',
    source: 'Common practice.',
    reviewed,
  },
  'leak-onto-high-voltage': {
    ...hazardNames['leak-onto-high-voltage'],
    what: 'Coolant conducts.',
    consequence: 'A leak onto a joint or connector bridges insulation: shock and fire.',
    avoid:
      'Route hoses so that no drip can reach a high-voltage joint; test isolation after every leak, before power.',
    source: 'Common practice.',
    reviewed,
  },
  'wiring-fire': {
    ...hazardNames['wiring-fire'],
    what: 'The fuse protects the wire, not the load.',
    consequence: 'A wire behind too large a fuse burns before the fuse opens.',
    avoid:
      'Put the fuse at the source end, never larger than the wire carries; never fit a larger fuse to stop it blowing.',
    source: 'Common practice.',
    reviewed,
  },
  'cell-fire': {
    ...hazardNames['cell-fire'],
    what: 'Damaged, overcharged or frozen-charged lithium cells burn and give off toxic gas.',
    consequence: 'A fire that restarts and cannot be smothered.',
    avoid:
      'Charge in sight, with a smoke detector, outdoors or beside a clear exit; never charge below the cell sheet’s limit.',
    source: 'Common practice.',
    reviewed,
  },
  'burnt-pack': {
    ...hazardNames['burnt-pack'],
    what: 'A pack that has burnt or vented gives off toxic gas and can light again hours or days later.',
    consequence: 'Poisoning and a second fire.',
    avoid:
      'Keep away and upwind, call the fire service and say that it is a lithium battery, keep it outdoors and apart afterwards.',
    source: 'Common practice.',
    reviewed,
  },
  'battery-gas': {
    ...hazardNames['battery-gas'],
    what: 'A lead-acid battery on charge gives off hydrogen and holds sulphuric acid.',
    consequence: 'Explosion, burns, blindness.',
    avoid:
      'Ventilate, no sparks or flame near it, eye protection, connect and disconnect with the charger off.',
    source: 'Common practice.',
    reviewed,
  },
  'welding-near-fuel': {
    ...hazardNames['welding-near-fuel'],
    what: 'Sparks reach fuel, vapour in an empty tank, and cells.',
    consequence: 'Explosion and fire.',
    avoid:
      'Fuel system and cells out of the building first, battery disconnected, extinguisher and a fire watch afterwards.',
    source: 'Common practice.',
    reviewed,
  },
  crush: {
    ...hazardNames.crush,
    what: 'A vehicle on a jack, or a pack on a hoist, falls.',
    consequence: 'Crushed limbs or death.',
    avoid:
      'Rated stands on firm ground, rated lifting gear, nobody beneath. Measure ride height with the vehicle on its wheels.',
    source: 'Common practice.',
    reviewed,
  },
  brakes: {
    ...hazardNames.brakes,
    what: 'Added mass, a missing vacuum source or regeneration changes how the vehicle stops.',
    consequence: 'It does not stop in the distance the driver expects.',
    avoid: 'Have the brakes tested at the new mass, on a roller, before the road.',
    source: 'Common practice.',
    reviewed,
  },
  'fan-starts': {
    ...hazardNames['fan-starts'],
    what: 'A thermostat or a controller starts the fan without notice, also with the key off.',
    consequence: 'Cut fingers.',
    avoid: 'Pull the fan fuse before reaching in; fit a guard.',
    source: 'Common practice.',
    reviewed,
  },
  'loss-of-12-volts': {
    ...hazardNames['loss-of-12-volts'],
    what: 'Lamps, wipers and the contactor all hang on the 12 V side.',
    consequence: 'Losing it loses drive and lights together, at night, in traffic.',
    avoid: 'Keep a 12 V battery, and fit a low-voltage warning the driver can see.',
    source: 'Common practice.',
    reviewed,
  },
  'insulation-tester': {
    ...hazardNames['insulation-tester'],
    what: 'An insulation tester puts 500 V or more on everything it is connected to.',
    consequence: 'Shock, and destroyed electronics.',
    avoid:
      'Do not use it on a connected controller or battery management unless the maker allows it. Test wet as well as dry.',
    source: 'Common practice.',
    reviewed,
  },
  'earth-and-residual-current': {
    ...hazardNames['earth-and-residual-current'],
    what: 'A vehicle on charge is mains equipment.',
    consequence: 'A broken earth leaves the body live.',
    avoid:
      'Prove the earth from plug to body before each new outlet; use an outlet with residual current protection that local rules ask for.',
    source: 'Common practice; local electrical code.',
    reviewed,
  },
  overspeed: {
    ...hazardNames.overspeed,
    what: 'A rotor beyond its rated speed bursts.',
    consequence: 'Fragments leave the housing.',
    avoid: 'Limit the speed in the controller, and mind the change down.',
    source: 'Common practice.',
    reviewed,
  },
  'not-approval': {
    ...hazardNames['not-approval'],
    what: 'No figure here makes a vehicle legal.',
    consequence: 'Rules differ by place and change.',
    avoid:
      'Ask the inspector and the insurer before cutting metal, and note the date of the answer.',
    source: 'Common practice.',
    reviewed,
  },
  'dry-pump': {
    ...hazardNames['dry-pump'],
    what: 'A circulation pump is cooled and lubricated by its coolant.',
    consequence: 'It is ruined within minutes when run dry.',
    avoid: 'Fill and bleed before the first power; feed it from a tank above it.',
    source: 'Common practice.',
    reviewed,
  },
  'range-promise': {
    ...hazardNames['range-promise'],
    what: 'Wind, cold, tyres and speed move it by a third.',
    consequence: 'You are left at the roadside.',
    avoid: 'Keep a fifth in hand until you have measured your own route in winter.',
    source: 'Common practice.',
    reviewed,
  },
}
