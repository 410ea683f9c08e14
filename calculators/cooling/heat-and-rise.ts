/**
 * Heat shed into the coolant and how much warmer the coolant leaves.
 *
 * In: power and efficiency, or the loss itself, and the coolant's flow, kind and temperature. Out:
 * heat, rise, heat capacity rate, energy of a peak. The rise is judged at full heat: coolant passes a
 * part in seconds, so a rest between peaks does not lower it.
 */
import { coolantFields, coolantFinding, coolantOf } from '../coolant-fields.ts'
import { propertiesOf, propertySource, volumeFraction } from '../coolant.ts'
import { defineCalculator, type Level } from '../define.ts'
import { words } from '../../src/words/words.ts'

const riseWatch = 5
const riseStop = 10
const efficiencyWatch = 0.98
const weakestMix = 0.25
const strongestMix = 0.6

interface HeatInput {
  readonly power: number | undefined
  readonly efficiency: number | undefined
  readonly loss: number | undefined
}

/** A stated loss wins over power and efficiency. */
function ownLoss({ power, efficiency, loss }: HeatInput): number | undefined {
  if (loss !== undefined) return loss
  return power === undefined || efficiency === undefined ? undefined : power * (1 - efficiency)
}

export const heatAndRise = defineCalculator({
  id: 'heat-and-rise',
  title: words`Heat and coolant rise`,
  phase: 'cooling',
  purpose: words`How much heat a controller, motor or charger puts into the coolant, and how much warmer the coolant gets on the way through.`,
  inputs: {
    power: {
      type: 'number',
      label: words`Power going in`,
      symbol: 'P',
      of: 'power',
      units: ['kW', 'hp'],
      hard: [0.5, 250],
      usual: [5, 60],
      help: words`Electrical power into the part, in the worst case: the slow laden hill.`,
      optional: true,
    },
    efficiency: {
      type: 'number',
      label: words`Efficiency`,
      symbol: 'η',
      of: 'fraction',
      units: ['%', '%'],
      hard: [70, 99.5],
      usual: [85, 98],
      help: words`Controller 95 to 98 %, motor with controller 85 to 92 %.`,
      optional: true,
    },
    loss: {
      type: 'number',
      label: words`Heat it loses`,
      symbol: 'Q_1',
      of: 'power',
      units: ['W', 'BTU/h'],
      hard: [20, 75_000],
      usual: [100, 10_000],
      help: words`If the sheet states the loss; it is then used instead of power and efficiency.`,
      optional: true,
    },
    others: {
      type: 'list',
      label: words`Other parts on the loop`,
      row: words`part`,
      help: words`What else heats the same coolant at the same time.`,
      rows: [1, 20],
      optional: true,
      fields: {
        name: { type: 'text', label: words`Part`, help: words`What it is.` },
        loss: {
          type: 'number',
          label: words`Heat`,
          symbol: 'Q_i',
          of: 'power',
          units: ['W', 'BTU/h'],
          hard: [0, 75_000],
          usual: [20, 10_000],
          help: words`What it puts into the coolant.`,
        },
      },
    },
    duty: {
      type: 'number',
      label: words`Duty`,
      symbol: 'D',
      of: 'fraction',
      units: ['%', '%'],
      hard: [0, 100],
      usual: [10, 100],
      help: words`Share of the time at this heat; only the mean heat depends on it.`,
      assume: { value: 100, because: words`the worst case: it never rests` },
    },
    flow: {
      type: 'number',
      label: words`Coolant flow`,
      symbol: 'V̇',
      of: 'flow',
      units: ['L/min', 'gal/min'],
      hard: [0.5, 60],
      usual: [4, 20],
      help: words`What really flows: a bucket test or the pump-and-loop result, not the figure on the box.`,
    },
    ...coolantFields,
    temperature: {
      type: 'number',
      label: words`Coolant temperature`,
      symbol: 'T',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-30, 90],
      usual: [10, 65],
      help: words`Where the density and specific heat are taken.`,
    },
    minimumFlow: {
      type: 'number',
      label: words`Least flow the sheet asks for`,
      symbol: 'V̇_min',
      of: 'flow',
      units: ['L/min', 'gal/min'],
      hard: [0.1, 60],
      usual: [2, 20],
      help: words`From the sheet of the cold plate or controller.`,
      optional: true,
    },
    peakTime: {
      type: 'number',
      label: words`Length of the peak`,
      symbol: 't',
      of: 'time',
      units: ['s', 's'],
      hard: [1, 7200],
      usual: [5, 1800],
      help: words`For the energy of one peak.`,
      optional: true,
    },
  },
  outputs: {
    heat: {
      type: 'number',
      label: words`Heat into the coolant`,
      symbol: 'Q',
      of: 'power',
      units: ['W', 'BTU/h'],
    },
    meanHeat: {
      type: 'number',
      label: words`Heat, mean over time`,
      symbol: 'Q_m',
      of: 'power',
      units: ['W', 'BTU/h'],
    },
    rise: {
      type: 'number',
      label: words`Coolant rise`,
      symbol: 'ΔT',
      of: 'temperatureDifference',
      units: ['K', 'Δ°F'],
    },
    capacityRate: {
      type: 'number',
      label: words`Heat capacity rate`,
      symbol: 'C',
      of: 'thermalConductance',
      units: ['W/K', 'BTU/(h·Δ°F)'],
    },
    energy: {
      type: 'number',
      label: words`Energy of the peak`,
      symbol: 'E',
      of: 'energy',
      units: ['kJ', 'BTU'],
    },
  },
  formula: [
    String.raw`Q = P\,(1-\eta) + \sum Q_i`,
    String.raw`C = \rho\,\dot V\,c_p`,
    String.raw`\Delta T = \frac{Q}{C}`,
    String.raw`E = Q\,t`,
  ],
  validity: [
    words`Steady heat and one stream of coolant. Power is what goes in; a shaft power must first be divided by the efficiency.`,
    words`Density and specific heat are taken at one temperature, between freezing (not below −35 °C) and 100 °C, up to 60 % glycol; outside, there is no result. Published tables differ by up to 4 %.`,
  ],
  checks: {
    rise: { title: words`Coolant rise`, basis: 'common practice' },
    efficiency: { title: words`Efficiency`, basis: 'common practice' },
    concentration: {
      title: words`Strength of the mix`,
      basis: "published: heat-transfer fluid makers' notes (25 %), a machinery manual (60 %)",
    },
    minimumFlow: { title: words`Least flow`, basis: "the part's own sheet" },
    coolant: { title: words`Coolant properties`, basis: 'published: ASHRAE 2001, IIR 2010, IAPWS' },
  },
  hazards: ['coolant-poison', 'hot-coolant', 'leak-onto-high-voltage'],
  sources: [
    {
      title: 'ASHRAE Handbook Fundamentals, tables of inhibited glycol solutions',
      edition: '2001',
      at: 'as fitted in the CoolProp repository, commit ea27c639',
      trust: 'read',
    },
    {
      title: 'Properties of Secondary Working Fluids for Indirect Systems, IIR',
      edition: '2010',
      at: 'coefficients in the CoolProp repository, commit ea27c639',
      trust: 'read',
    },
    {
      title: 'IAPWS: IF97 and SR6-08; Kell 1975 (water)',
      at: 'coefficients recalled, held against computed IF97 values',
      trust: 'recalled',
    },
  ],

  compute(input) {
    const own = ownLoss(input)
    const heat = own === undefined ? undefined : addOthers(own, input.others)
    const coolant = coolantOf(input.coolant, input.concentration, input.basis)
    const liquid = coolant && propertiesOf(coolant, input.temperature)
    const capacityRate = liquid && liquid.density * input.flow * liquid.specificHeat
    return {
      heat,
      meanHeat: heat === undefined ? undefined : heat * input.duty,
      rise: heat === undefined || capacityRate === undefined ? undefined : heat / capacityRate,
      capacityRate,
      energy:
        heat === undefined || input.peakTime === undefined ? undefined : heat * input.peakTime,
    }
  },

  findings(input, { rise }, say) {
    const { power, efficiency, loss, flow, minimumFlow, temperature } = input
    const coolant = coolantOf(input.coolant, input.concentration, input.basis)
    const strength = coolant && volumeFraction(coolant)
    const riseLevel: Level =
      rise === undefined
        ? 'unknown'
        : rise > riseStop
          ? 'stop'
          : rise > riseWatch
            ? 'watch'
            : 'pass'
    const efficiencyLevel: Level =
      loss !== undefined
        ? 'pass'
        : efficiency === undefined || power === undefined
          ? 'unknown'
          : efficiency > efficiencyWatch
            ? 'watch'
            : 'pass'
    const strengthLevel: Level =
      strength === undefined
        ? 'unknown'
        : strength > strongestMix
          ? 'stop'
          : strength < weakestMix
            ? 'watch'
            : 'pass'
    return [
      {
        check: 'rise',
        level: riseLevel,
        text:
          rise === undefined
            ? words`The rise cannot be told: it needs the heat and a coolant whose properties are known.`
            : riseLevel === 'pass'
              ? words`The coolant leaves ${say(rise, 'K')} warmer.`
              : words`The coolant leaves ${say(rise, 'K')} warmer: more flow is needed, or less heat in one loop.`,
        threshold: words`at most ${say(riseWatch, 'K', 1)}; stop above ${say(riseStop, 'K', 2)}`,
      },
      {
        check: 'efficiency',
        level: efficiencyLevel,
        text:
          loss !== undefined
            ? power === undefined || efficiency === undefined
              ? words`The heat is the stated loss; no efficiency is used.`
              : words`Loss and efficiency are both given: the stated ${say(loss, 'W')} is used, not the ${say(power * (1 - efficiency), 'W')} that the efficiency gives.`
            : efficiency === undefined || power === undefined
              ? words`There is no heat to work with: give power and efficiency, or the loss.`
              : efficiency > efficiencyWatch
                ? words`${say(efficiency, '%')} is optimistic away from the best point: give the loss from the sheet at this current, or take less.`
                : words`${say(efficiency, '%')} is within what such parts reach.`,
        threshold: words`at most 98 %, unless the loss is stated`,
      },
      {
        check: 'concentration',
        level: strengthLevel,
        text:
          strength === undefined
            ? words`Say how strong the mix is, and whether by volume or by mass.`
            : strengthLevel === 'stop'
              ? words`${say(strength, '%')} by volume is too strong: it carries less heat and its freezing point rises again. Thin it with water.`
              : strengthLevel === 'watch'
                ? input.coolant === 'water'
                  ? words`Plain water is too thin for corrosion inhibitors to work, in warm places too.`
                  : words`${say(strength, '%')} by volume is too thin for corrosion inhibitors to work, in warm places too.`
                : words`${say(strength, '%')} by volume keeps its inhibitors working.`,
        threshold: words`25 to 60 % by volume; stop above`,
      },
      {
        check: 'minimumFlow',
        level: minimumFlow === undefined ? 'unknown' : flow < minimumFlow ? 'stop' : 'pass',
        text:
          minimumFlow === undefined
            ? words`The least flow of the part is not given: look on its sheet.`
            : flow < minimumFlow
              ? words`${say(flow, 'L/min')} is below what the sheet asks for: a larger bore, fewer elbows or a stronger pump.`
              : words`${say(flow, 'L/min')} is enough for the sheet.`,
        threshold:
          minimumFlow === undefined
            ? words`the sheet’s least flow`
            : words`at least ${say(minimumFlow, 'L/min')}`,
      },
      { check: 'coolant', ...coolantFinding(coolant, temperature, say) },
    ]
  },

  working(input, { heat, meanHeat, rise, capacityRate, energy }, say) {
    const { power, efficiency, loss, others, duty, flow, temperature, peakTime } = input
    const own = ownLoss(input)
    const coolant = coolantOf(input.coolant, input.concentration, input.basis)
    const liquid = coolant && propertiesOf(coolant, temperature)
    const first =
      own === undefined
        ? words`Q_1 = cannot tell: give power and efficiency, or the loss`
        : loss === undefined
          ? `Q_1 = P (1 − η) = ${say(power, 'kW')} × (1 − ${say(efficiency, '%')}) = ${say(own, 'W')}`
          : words`Q_1 = ${say(loss, 'W')}, as stated`
    return [
      first,
      ...(others
        ? [
            `Q = ${[own, ...others.map((part) => part.loss)].map((part) => say(part, 'W')).join(' + ')} = ${say(heat, 'W')}`,
          ]
        : []),
      `Q_m = Q D = ${say(heat, 'W')} × ${say(duty, '%')} = ${say(meanHeat, 'W')}`,
      ...(coolant && liquid
        ? [
            words`At ${say(temperature, '°C')}: ρ = ${say(liquid.density, 'kg/m³', 4)}, c = ${say(liquid.specificHeat, 'J/(kg·K)', 4)} (${propertySource(coolant)})`,
            `C = ρ V̇ c = ${say(liquid.density, 'kg/m³', 4)} × ${say(flow, 'L/min')} × ${say(liquid.specificHeat, 'J/(kg·K)', 4)} = ${say(capacityRate, 'W/K')}`,
          ]
        : [words`C = cannot tell: the properties of the coolant are not known`]),
      `ΔT = Q / C = ${say(heat, 'W')} / ${say(capacityRate, 'W/K')} = ${say(rise, 'K')}`,
      ...(peakTime === undefined
        ? []
        : [`E = Q t = ${say(heat, 'W')} × ${say(peakTime, 's')} = ${say(energy, 'kJ')}`]),
    ]
  },

  examples: [
    {
      name: 'Engine test, jacket water',
      from: 'Joel, Basic Engineering Thermodynamics, example 17.1: 0.15 kg/s from 38 to 71 °C carries 20.7 kW; 0.15 kg/s is 9.13 L/min at 986 kg/m³',
      inputs: { loss: '20.7 kW', flow: '9.13 L/min', coolant: 'water', temperature: '54.5 °C' },
      outputs: { heat: '20.7 kW', rise: '33 K' },
      findings: { rise: 'stop', concentration: 'watch', minimumFlow: 'unknown' },
    },
    {
      name: 'Water at 60 °C',
      from: 'IAPWS-IF97: 983.30 kg/m³, 4182.3 J/(kg·K); 5 kW and 5 K need 14.590 L/min',
      inputs: {
        loss: '5 kW',
        flow: '14.590 L/min',
        coolant: 'water',
        temperature: '60 °C',
        peakTime: '60 s',
      },
      outputs: { rise: '5.00 K', energy: '300 kJ' },
    },
    {
      name: 'Half ethylene glycol by volume at 60 °C',
      from: 'ASHRAE Handbook Fundamentals 2001: 1052.04 kg/m³, 3435 J/(kg·K); times 8 L/min',
      inputs: {
        power: '27.5 kW',
        efficiency: '96 %',
        flow: '8 L/min',
        coolant: 'ethylene-glycol',
        concentration: '50 %',
        basis: 'volume',
        temperature: '60 °C',
        minimumFlow: '6 L/min',
      },
      outputs: { heat: '1100 W', capacityRate: '481.8 W/K' },
      findings: {
        rise: 'pass',
        efficiency: 'pass',
        concentration: 'pass',
        minimumFlow: 'pass',
        coolant: 'pass',
      },
    },
    {
      name: 'Half propylene glycol by volume at 20 °C',
      from: 'ASHRAE Handbook Fundamentals 2001: 1042.87 kg/m³, 3532 J/(kg·K); times 6 L/min',
      inputs: {
        power: '60 kW',
        efficiency: '99 %',
        others: [{ name: 'charger', loss: '1.5 kW' }],
        flow: '6 L/min',
        coolant: 'propylene-glycol',
        concentration: '50 %',
        basis: 'volume',
        temperature: '20 °C',
        minimumFlow: '8 L/min',
      },
      outputs: { heat: '2100 W', capacityRate: '368.3 W/K' },
      findings: { rise: 'watch', efficiency: 'watch', minimumFlow: 'stop' },
    },
    {
      name: 'By mass',
      from: 'IIR 2010 fits at 52 % by mass and 50 °C: 1049.36 kg/m³, 3423.5 J/(kg·K); 5 kW and 5 K need 16.70 L/min',
      inputs: {
        loss: '5 kW',
        flow: '16.70 L/min',
        coolant: 'ethylene-glycol',
        concentration: '52 %',
        basis: 'mass',
        temperature: '50 °C',
      },
      outputs: { rise: '5.00 K' },
    },
    {
      name: 'Too strong',
      from: 'threshold case',
      inputs: {
        flow: '8 L/min',
        coolant: 'ethylene-glycol',
        concentration: '70 %',
        basis: 'volume',
        temperature: '20 °C',
      },
      outputs: {},
      findings: {
        rise: 'unknown',
        efficiency: 'unknown',
        concentration: 'stop',
        coolant: 'unknown',
      },
    },
    {
      name: 'Frozen',
      from: 'threshold case',
      inputs: {
        loss: '500 W',
        flow: '8 L/min',
        coolant: 'propylene-glycol',
        concentration: '30 %',
        basis: 'volume',
        temperature: '-20 °C',
      },
      outputs: {},
      findings: { rise: 'unknown', coolant: 'stop' },
    },
  ],
})

function addOthers(own: number, others: readonly { readonly loss: number }[] | undefined): number {
  return (others ?? []).reduce((sum, { loss }) => sum + loss, own)
}
