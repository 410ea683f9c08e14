/**
 * Litres of antifreeze and water for a strength, what it freezes at, and what it costs in flow.
 *
 * In: loop volume, strength wanted (or a freezing point), what is already in the loop, how strong the
 * concentrate is. Out: what to drain and what to add. Strengths are by volume and volumes are added as
 * if nothing contracted; mixing really loses under 1 %.
 */
import { coolantOf } from '../coolant-fields.ts'
import {
  freezingPoint,
  massFraction,
  propertiesOf,
  propertySource,
  volumeFraction,
  type Basis,
  type Coolant,
  type Glycol,
} from '../coolant.ts'
import { strengthFreezingAt } from '../coolant-strength.ts'
import { defineCalculator, type Level } from '../define.ts'
import { words } from '../../src/words/words.ts'

const weakest = 0.25
const usual = [0.4, 0.5] as const
const strongest = 0.6
const freezeMargin = 5
/** Half a point of strength: 50.3 % asked for by a freezing point is still "50 %". */
const slack = 0.005
/** Rounding, as a share of the loop. */
const tiny = 1e-12

interface MixInput {
  readonly volume: number
  readonly coolant: Glycol
  readonly wanted: number | undefined
  readonly target: number | undefined
  readonly strength: number
  readonly amount: number | undefined
  readonly existing: number | undefined
  readonly existingBasis: Basis | undefined
}

interface Plan {
  readonly drain: number
  readonly concentrate: number
  readonly water: number
}

const problems = {
  'no aim': words`Give the strength wanted, or the freezing point wanted.`,
  'no mix': words`No mix up to 60 % freezes at the temperature wanted.`,
  'unknown rest': words`Say how strong the coolant in the loop is and whether by volume or by mass, or drain it all and leave its amount out.`,
  overfull: words`More coolant is given as being in the loop than the loop holds.`,
  'too thin': words`This concentrate is not stronger than the mix wanted: it cannot be reached. Use neat antifreeze.`,
} as const
type Problem = keyof typeof problems

function aim({ coolant, wanted, target }: MixInput): number | undefined {
  return wanted ?? (target === undefined ? undefined : strengthFreezingAt(coolant, target))
}

/** Strength by volume of what is in the loop. */
function rest({ coolant, existing, existingBasis }: MixInput): number | undefined {
  const left = coolantOf(coolant, existing, existing === 0 ? 'volume' : existingBasis)
  return left && volumeFraction(left)
}

function planOf(input: MixInput): Plan | Problem {
  const { volume, strength, amount = 0, wanted, target } = input
  const goal = aim(input)
  if (goal === undefined) return wanted === undefined && target === undefined ? 'no aim' : 'no mix'
  // Of nothing any strength will do.
  const left = amount === 0 ? goal : rest(input)
  if (left === undefined) return 'unknown rest'
  if (amount > volume) return 'overfull'
  const missing = volume * goal - amount * left
  const room = volume - amount
  const plan = (drain: number, concentrate: number): Plan => {
    const water = room + drain - concentrate
    return { drain, concentrate, water: water > tiny * volume ? water : 0 }
  }
  if (missing < -tiny * volume) return plan(amount - (volume * goal) / left, 0)
  if (missing / strength <= room + tiny * volume) return plan(0, Math.max(0, missing / strength))
  if (strength <= goal) return 'too thin'
  const drain = (missing - room * strength) / (strength - left)
  return plan(drain, room + drain)
}

const additions = { concentrate: words`concentrate`, water: words`water` }

/** What brings the coolant in the loop to strength when nothing is drained and there is room. */
function additionOf(input: MixInput): { what: keyof typeof additions; volume: number } | undefined {
  const { amount = 0, strength } = input
  const goal = aim(input)
  const left = rest(input)
  if (amount === 0 || goal === undefined || left === undefined) return undefined
  if (left > goal) {
    return goal > 0 ? { what: 'water', volume: (amount * (left - goal)) / goal } : undefined
  }
  if (left === goal) return { what: 'concentrate', volume: 0 }
  return strength > goal
    ? { what: 'concentrate', volume: (amount * (goal - left)) / (strength - goal) }
    : undefined
}

function mixOf(input: MixInput): Coolant | undefined {
  return coolantOf(input.coolant, aim(input), 'volume')
}

const families = {
  inorganic: words`silicate or other inorganic (about 2 years)`,
  'organic-acid': words`organic acid (about 5 years)`,
  hybrid: 'hybrid',
}

export const coolantMix = defineCalculator({
  id: 'coolant-mix',
  title: words`Coolant mix`,
  phase: 'cooling',
  purpose: words`How much antifreeze and water to put in, for an empty loop or one that is filled already, and when the mix freezes.`,
  inputs: {
    volume: {
      type: 'number',
      label: words`Loop volume`,
      symbol: 'V',
      of: 'volume',
      units: ['L', 'qt'],
      hard: [0.5, 30],
      usual: [1.5, 12],
      help: words`Hoses, parts and tank to its mark.`,
    },
    coolant: {
      type: 'choice',
      label: words`Glycol`,
      help: words`The glycol, not its colour: the sheet names it.`,
      options: {
        'ethylene-glycol': words`ethylene glycol`,
        'propylene-glycol': words`propylene glycol`,
      },
      choice: true,
    },
    wanted: {
      type: 'number',
      label: words`Strength wanted, by volume`,
      symbol: 'x_w',
      of: 'fraction',
      units: ['%', '%'],
      hard: [5, 100],
      usual: [25, 60],
      help: words`Usually 40 to 50 %; left out, it is worked from the freezing point.`,
      choice: true,
      optional: true,
    },
    target: {
      type: 'number',
      label: words`Freezing point wanted`,
      symbol: 'T_w',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-50, 0],
      usual: [-45, -10],
      help: words`Used when no strength is given.`,
      choice: true,
      optional: true,
    },
    coldest: {
      type: 'number',
      label: words`Coldest to be expected`,
      symbol: 'T_c',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-50, 30],
      usual: [-35, 10],
      help: words`Where the vehicle stands overnight.`,
      optional: true,
    },
    strength: {
      type: 'number',
      label: words`Glycol in the concentrate, by volume`,
      symbol: 's',
      of: 'fraction',
      units: ['%', '%'],
      hard: [30, 100],
      usual: [45, 100],
      help: words`Neat antifreeze about 95 %; ready-mixed about 50 %.`,
      assume: { value: 95, because: words`neat antifreeze holds about 5 % water and inhibitors` },
    },
    amount: {
      type: 'number',
      label: words`Coolant already in the loop`,
      symbol: 'A',
      of: 'volume',
      units: ['L', 'qt'],
      hard: [0, 30],
      usual: [0, 12],
      help: words`What is left in it now; left out for an empty loop.`,
      optional: true,
    },
    existing: {
      type: 'number',
      label: words`Its strength`,
      symbol: 'x_1',
      of: 'fraction',
      units: ['%', '%'],
      hard: [0, 100],
      usual: [0, 60],
      help: words`By hydrometer or refractometer; 0 for water.`,
      optional: true,
    },
    existingBasis: {
      type: 'choice',
      label: words`Its strength is`,
      help: words`Hydrometers go by volume.`,
      options: { volume: words`by volume`, mass: words`by mass` },
      optional: true,
    },
    family: {
      type: 'choice',
      label: words`Inhibitor family of the new coolant`,
      help: words`On the sheet; colours prove nothing.`,
      options: families,
      choice: true,
      optional: true,
    },
    existingFamily: {
      type: 'choice',
      label: words`Family of what is in the loop`,
      help: words`As for the new one.`,
      options: {
        ...families,
        water: words`plain water`,
        'other-glycol': words`the other glycol`,
        unknown: words`unknown`,
      },
      optional: true,
    },
    waterQuality: {
      type: 'choice',
      label: words`Water`,
      help: words`What the concentrate is thinned with.`,
      options: {
        distilled: words`distilled`,
        deionised: words`deionised`,
        tested: words`tap, tested: chloride under 40, sulphate under 100, hardness under 170 mg/L`,
        tap: words`tap, not tested`,
        unknown: words`unknown`,
      },
      choice: true,
      optional: true,
    },
    temperature: {
      type: 'number',
      label: words`Working temperature`,
      symbol: 'T',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-30, 100],
      usual: [20, 70],
      help: words`Where thickness and specific heat are compared with water.`,
      assume: { value: 50, because: words`a warm loop` },
    },
  },
  outputs: {
    concentrate: {
      type: 'number',
      label: words`Concentrate to add`,
      symbol: 'V_s',
      of: 'volume',
      units: ['L', 'qt'],
    },
    water: {
      type: 'number',
      label: words`Water to add`,
      symbol: 'V_0',
      of: 'volume',
      units: ['L', 'qt'],
    },
    drain: {
      type: 'number',
      label: words`To drain first`,
      symbol: 'V_1',
      of: 'volume',
      units: ['L', 'qt'],
    },
    addOnly: {
      type: 'number',
      label: words`To add if nothing is drained`,
      symbol: 'V_a',
      of: 'volume',
      units: ['L', 'qt'],
    },
    addWhat: { type: 'text', label: words`Of what` },
    concentration: {
      type: 'number',
      label: words`Strength by volume`,
      symbol: 'x',
      of: 'fraction',
      units: ['%', '%'],
    },
    massConcentration: {
      type: 'number',
      label: words`Strength by mass`,
      symbol: 'w',
      of: 'fraction',
      units: ['%', '%'],
    },
    freezing: {
      type: 'number',
      label: words`Freezes at`,
      symbol: 'T_f',
      of: 'temperature',
      units: ['°C', '°F'],
    },
    viscosity: {
      type: 'number',
      label: words`Viscosity, warm`,
      symbol: 'μ',
      of: 'viscosity',
      units: ['mPa·s', 'cP'],
    },
    viscosityRatio: {
      type: 'number',
      label: words`Times as thick as water`,
      symbol: 'μ/μ_0',
      of: 'number',
      units: ['', ''],
    },
    specificHeatRatio: {
      type: 'number',
      label: words`Specific heat against water`,
      symbol: 'c/c_0',
      of: 'fraction',
      units: ['%', '%'],
    },
  },
  formula: [
    String.raw`V_s = \frac{V x - (A - V_1)\,x_1}{s}`,
    String.raw`V_0 = V - (A - V_1) - V_s`,
    String.raw`V_1 = \frac{V x - A x_1 - (V - A)\,s}{s - x_1}\quad\text{when the room left is too small}`,
    String.raw`V_a = \frac{A\,(x - x_1)}{s - x}`,
  ],
  validity: [
    words`Volumes are added as if mixing lost nothing (it loses under 1 %), and what is drained is as strong as the rest.`,
    words`Freezing points are those of the ASHRAE 2001 tables, up to 60 % by volume; other tables differ by up to 2.5 K. A used coolant may freeze as new and protect nothing: its inhibitors age.`,
  ],
  checks: {
    amounts: { title: words`Amounts`, basis: 'model: volumes add' },
    strength: {
      title: words`Strength of the mix`,
      basis: "published: heat-transfer fluid makers' notes (25 %), a machinery manual (40 to 60 %)",
    },
    freeze: { title: words`Frost`, basis: 'common practice' },
    families: { title: words`Mixing families`, basis: 'common practice' },
    water: {
      title: words`Water`,
      basis: 'published: TM 5-3895-383-24, table 15, chloride 40, sulphate 100, hardness 170 mg/L',
    },
  },
  hazards: ['coolant-poison', 'hot-coolant', 'leak-onto-high-voltage'],
  sources: [
    {
      title: 'ASHRAE Handbook Fundamentals, tables of inhibited glycol solutions',
      edition: '2001',
      at: 'as stored in the CoolProp repository, commit ea27c639',
      trust: 'read',
    },
    {
      title:
        'Heat-transfer fluid makers on the least strength: inhibitors, and growth below a fifth',
      trust: 'read',
    },
    {
      title: 'TM 5-3895-383-24 and other machinery manuals, water and strength of coolant',
      at: 'table 15; 40 to 60 % glycol',
      trust: 'read',
    },
    {
      title: 'Water: IAPWS SR6-08, Kell 1975',
      at: 'held against computed IF97 values',
      trust: 'recalled',
    },
  ],

  compute(input) {
    const plan = planOf(input)
    const made = typeof plan === 'string' ? undefined : plan
    const addition = additionOf(input)
    const mix = mixOf(input)
    const at = mix && propertiesOf(mix, input.temperature)
    const water = propertiesOf({ ...input, kind: 'water', basis: 'volume' }, input.temperature)
    return {
      concentrate: made?.concentrate,
      water: made?.water,
      drain: made?.drain,
      addOnly: addition?.volume,
      addWhat: addition && additions[addition.what],
      concentration: mix?.strength,
      massConcentration: mix && massFraction(mix),
      freezing: mix && freezingPoint(mix),
      viscosity: at?.viscosity,
      viscosityRatio: at && water && at.viscosity / water.viscosity,
      specificHeatRatio: at && water && at.specificHeat / water.specificHeat,
    }
  },

  findings(input, { concentration, freezing, drain, water }, say) {
    const { coldest, amount = 0, volume, family, existingFamily, waterQuality } = input
    const plan = planOf(input)
    const margin = freezing === undefined || coldest === undefined ? undefined : coldest - freezing
    const stays = amount - (drain ?? 0) > 0
    const bad = existingFamily === 'other-glycol'
    const familyLevel: Level =
      amount === 0 || existingFamily === 'water'
        ? 'pass'
        : bad
          ? 'stop'
          : !stays
            ? 'pass'
            : family === undefined || existingFamily === undefined || existingFamily === 'unknown'
              ? 'unknown'
              : family === existingFamily
                ? 'pass'
                : 'stop'
    const waterLevel: Level =
      water === 0
        ? 'pass'
        : waterQuality === undefined || waterQuality === 'unknown'
          ? 'unknown'
          : waterQuality === 'tap'
            ? 'watch'
            : 'pass'
    return [
      {
        check: 'amounts',
        level:
          typeof plan !== 'string'
            ? 'pass'
            : plan === 'too thin' || plan === 'overfull'
              ? 'stop'
              : 'unknown',
        text:
          typeof plan === 'string'
            ? problems[plan]
            : amount === 0
              ? words`${say(plan.concentrate, 'L')} concentrate and ${say(plan.water, 'L')} water fill the loop.`
              : words`Drain ${say(plan.drain, 'L')}, then add ${say(plan.concentrate, 'L')} concentrate and ${say(plan.water, 'L')} water.`,
        threshold: words`the loop’s ${say(volume, 'L')}`,
      },
      { check: 'strength', ...strengthFinding(concentration, (x) => say(x, '%')) },
      {
        check: 'freeze',
        level:
          margin === undefined
            ? 'unknown'
            : margin < 0
              ? 'stop'
              : margin < freezeMargin
                ? 'watch'
                : 'pass',
        text:
          margin === undefined
            ? words`Frost cannot be judged: it needs the mix and the coldest temperature to be expected.`
            : margin < freezeMargin
              ? words`The mix freezes at ${say(freezing, '°C')} and ${say(coldest, '°C')} is expected: make it stronger.`
              : words`The mix freezes at ${say(freezing, '°C')}, ${say(margin, 'K')} below the coldest expected.`,
        threshold: words`at least ${say(freezeMargin, 'K', 1)} below the coldest; stop above it`,
      },
      {
        check: 'families',
        level: familyLevel,
        text:
          familyLevel === 'stop'
            ? bad
              ? words`Two glycols in one loop gel, or protect nothing: drain all of it and flush before filling.`
              : words`Two inhibitor families in one loop gel, or protect nothing: drain all of it and flush before filling.`
            : familyLevel === 'unknown'
              ? words`What is in the loop may not suit the new coolant: find out both families, or drain all of it and flush.`
              : words`No two families meet. Label the tank with kind, strength and date.`,
        threshold: words`one family in the loop`,
      },
      {
        check: 'water',
        level: waterLevel,
        text:
          waterLevel === 'watch'
            ? words`Untested tap water can pit aluminium: use distilled or deionised water, or have it tested.`
            : waterLevel === 'unknown'
              ? words`Say which water is used; distilled or deionised is the usual choice.`
              : water === 0
                ? words`No water is added.`
                : words`This water suits aluminium.`,
        threshold: words`chloride under 40, sulphate under 100, hardness under 170 mg/L`,
      },
    ]
  },

  working(input, output, say) {
    const { volume, strength, amount = 0, wanted, target, temperature } = input
    const { concentration, freezing, concentrate, water, drain, addOnly, addWhat } = output
    const mix = mixOf(input)
    const left = amount === 0 ? 0 : rest(input)
    return [
      wanted === undefined
        ? words`A freezing point of ${say(target, '°C')} takes x = ${say(concentration, '%')} by volume`
        : words`x = ${say(wanted, '%')} by volume freezes at ${say(freezing, '°C')}`,
      words`By mass: ${say(output.massConcentration, '%')}`,
      ...(amount === 0
        ? []
        : [
            words`In the loop: A = ${say(amount, 'L')} at x_1 = ${say(left, '%')} by volume`,
            `V_1 = ${say(drain, 'L')}`,
          ]),
      `V_s = (V x − (A − V_1) x_1) / s = (${say(volume, 'L')} × ${say(concentration, '%')} − ${say(drain === undefined ? undefined : amount - drain, 'L')} × ${say(left, '%')}) / ${say(strength, '%')} = ${say(concentrate, 'L')}`,
      `V_0 = V − (A − V_1) − V_s = ${say(water, 'L')}`,
      ...(amount === 0 || addWhat === undefined
        ? []
        : [
            words`Without draining: V_a = ${say(addOnly, 'L')} of ${addWhat}, if there is room for it`,
          ]),
      `${words`At ${say(temperature, '°C')}: μ = ${say(output.viscosity, 'mPa·s')}, ${say(output.viscosityRatio, '')} times water’s; c = ${say(output.specificHeatRatio, '%')} of water’s`}${mix && output.viscosity !== undefined ? ` (${propertySource(mix)})` : ''}`,
    ]
  },

  examples: [
    {
      name: 'From 30 to 50 %',
      from: 'hand: drain 8 × (0.5 − 0.3) / (1 − 0.3) = 2.2857 L; or add 8 × 0.2 / 0.5 = 3.2 L',
      inputs: {
        volume: '8 L',
        coolant: 'ethylene-glycol',
        wanted: '50 %',
        coldest: '-20 °C',
        strength: '100 %',
        amount: '8 L',
        existing: '30 %',
        existingBasis: 'volume',
        family: 'organic-acid',
        existingFamily: 'organic-acid',
      },
      outputs: { drain: '2.2857 L', concentrate: '2.2857 L', water: '0 L', addOnly: '3.2 L' },
      findings: {
        amounts: 'pass',
        strength: 'pass',
        freeze: 'pass',
        families: 'pass',
        water: 'pass',
      },
    },
    {
      name: 'Ethylene glycol, 47.6 % by volume',
      from: 'ASHRAE Handbook Fundamentals 2001: 50 % by mass, freezes at −33.8 °C',
      inputs: {
        volume: '4 L',
        coolant: 'ethylene-glycol',
        wanted: '47.6 %',
        coldest: '-31 °C',
        strength: '95.2 %',
        waterQuality: 'tap',
      },
      outputs: {
        massConcentration: '50.0 %',
        freezing: '-33.8 °C',
        concentrate: '2 L',
        water: '2 L',
      },
      tolerance: 0.002,
      why: 'the fit lies up to 0.33 K from the table; 0.2 % of the absolute temperature is 0.5 K',
      findings: { freeze: 'watch', water: 'watch' },
    },
    {
      name: 'Propylene glycol for −21.1 °C',
      from: 'ASHRAE Handbook Fundamentals 2001: 39.6 % by volume, 40 % by mass',
      inputs: {
        volume: '5 L',
        coolant: 'propylene-glycol',
        target: '-21.1 °C',
        coldest: '-25 °C',
        amount: '2 L',
        existing: '50 %',
        existingBasis: 'volume',
        family: 'hybrid',
        existingFamily: 'inorganic',
      },
      outputs: { concentration: '39.6 %', massConcentration: '40 %' },
      tolerance: 0.01,
      why: 'the fit lies up to 0.33 K from the table, 0.4 % of strength here',
      findings: { strength: 'pass', freeze: 'stop', families: 'stop', water: 'unknown' },
    },
    {
      name: 'Thickness at 40 °C',
      from: 'ASHRAE 2001: 50 % ethylene glycol by volume, 2.26 mPa·s; IAPWS water 0.6528 mPa·s',
      inputs: {
        volume: '5 L',
        coolant: 'ethylene-glycol',
        wanted: '50 %',
        temperature: '40 °C',
      },
      outputs: { viscosity: '2.26 mPa·s', viscosityRatio: '3.46', specificHeatRatio: '80.4 %' },
      tolerance: 0.03,
      why: 'the viscosity fit lies up to 4 % from its table',
      findings: { freeze: 'unknown' },
    },
    {
      name: 'Thin, and who knows what is in the loop',
      from: 'threshold case',
      inputs: { volume: '5 L', coolant: 'ethylene-glycol', wanted: '30 %', amount: '3 L' },
      outputs: {},
      findings: { amounts: 'unknown', strength: 'watch', families: 'unknown' },
    },
    {
      name: 'Ready-mixed cannot make it stronger',
      from: 'threshold case',
      inputs: {
        volume: '5 L',
        coolant: 'ethylene-glycol',
        wanted: '65 %',
        strength: '50 %',
        amount: '5 L',
        existing: '40 %',
        existingBasis: 'volume',
        existingFamily: 'unknown',
      },
      outputs: {},
      findings: { amounts: 'stop', strength: 'stop', families: 'unknown' },
    },
  ],
})

function strengthFinding(
  x: number | undefined,
  write: (x: number) => string,
): { level: Level; text: string; threshold: string } {
  const threshold = words`40 to 50 % by volume; stop below 25 % and above 60 %`
  if (x === undefined)
    return { level: 'unknown', text: words`The strength cannot be told.`, threshold }
  const shown = words`${write(x)} by volume`
  if (x < weakest) {
    const text = words`${shown} is too thin: its inhibitors no longer protect and bacteria feed on it. Use at least 25 %.`
    return { level: 'stop', text, threshold }
  }
  if (x > strongest) {
    const text = words`${shown} is too strong: it carries less heat and frost protection falls again. Use at most 60 %.`
    return { level: 'stop', text, threshold }
  }
  if (x < usual[0] - slack) {
    const text = words`${shown} is thin for frost and for its inhibitors: 40 to 50 % is usual.`
    return { level: 'watch', text, threshold }
  }
  if (x > usual[1] + slack) {
    const text = words`${shown} is thick and carries less heat: 40 to 50 % is usual unless the frost demands it.`
    return { level: 'watch', text, threshold }
  }
  return { level: 'pass', text: words`${shown} is usual.`, threshold }
}
