/**
 * What a coolant loop holds, whether the fill went in, and how far the coolant rises when hot.
 *
 * In: hoses and parts, the mix, the coldest and the hottest coolant, litres filled. Out: volume, what
 * is missing, expansion, the air space the tank needs. Less than the loop holds has gone in: the rest
 * is air, and it sits where the heat is.
 */
import { coolantFields, coolantFinding, coolantOf } from '../coolant-fields.ts'
import { propertiesOf, propertySource, volumeFraction } from '../coolant.ts'
import { defineCalculator, type InputValues, type Level } from '../define.ts'
import { heeding, wrongWay } from '../wrong-way.ts'
import { words } from '../../src/words/words.ts'

/** Share of the loop that went in; common practice. */
const fillPass = 0.97
const fillStop = 0.92
/** More than this went in: the list is short of something. Common practice. */
const fillMost = 1.05
/** Air space over expansion; common practice. */
const airPass = 1.5
const airStop = 1

const inputs = {
  hoses: {
    type: 'list',
    label: words`Hoses`,
    row: words`hose`,
    help: words`All of them, also the one to the tank.`,
    rows: [1, 60],
    optional: true,
    fields: {
      name: { type: 'text', label: words`Hose`, help: words`From where to where.` },
      length: {
        type: 'number',
        label: words`Length`,
        symbol: 'L',
        of: 'length',
        units: ['m', 'ft'],
        hard: [0.02, 30],
        usual: [0.1, 10],
        help: words`Between the ends of the spigots.`,
        choice: true,
      },
      bore: {
        type: 'number',
        label: words`Bore`,
        symbol: 'd',
        of: 'length',
        units: ['mm', 'in'],
        hard: [3, 80],
        usual: [8, 32],
        help: words`Inside diameter.`,
        choice: true,
      },
    },
  },
  parts: {
    type: 'list',
    label: words`Parts`,
    row: words`part`,
    help: words`Radiator, cold plates, pump, heater, and the tank up to its cold mark.`,
    rows: [1, 60],
    optional: true,
    fields: {
      name: { type: 'text', label: words`Part`, help: words`What it is.` },
      volume: {
        type: 'number',
        label: words`Holds`,
        symbol: 'V_i',
        of: 'volume',
        units: ['L', 'qt'],
        hard: [0, 50],
        usual: [0.02, 10],
        help: words`From its sheet, or filled from a measuring jug.`,
      },
    },
  },
  ...coolantFields,
  coldTemperature: {
    type: 'number',
    label: words`Coldest coolant`,
    symbol: 'T_k',
    of: 'temperature',
    units: ['°C', '°F'],
    hard: [-50, 60],
    usual: [-30, 25],
    help: words`The cold mark has to be wet here; filling it warm is worked from this too.`,
    assume: { value: 0, because: words`a frosty morning` },
  },
  hotTemperature: {
    type: 'number',
    label: words`Hottest coolant`,
    symbol: 'T_h',
    of: 'temperature',
    units: ['°C', '°F'],
    hard: [0, 100],
    usual: [40, 90],
    help: words`On the worst hill.`,
  },
  filled: {
    type: 'number',
    label: words`Went in`,
    symbol: 'V_f',
    of: 'volume',
    units: ['L', 'qt'],
    hard: [0, 200],
    usual: [0.5, 30],
    help: words`By the jug, into an empty loop, up to the cold mark.`,
    optional: true,
  },
  airSpace: {
    type: 'number',
    label: words`Air space of the tank`,
    symbol: 'V_a',
    of: 'volume',
    units: ['L', 'qt'],
    hard: [0, 50],
    usual: [0.05, 5],
    help: words`From the cold mark to the cap, or to the overflow bottle’s brim.`,
    choice: true,
    optional: true,
  },
} as const

type Inputs = InputValues<typeof inputs>

const contents = ({ hoses = [], parts = [] }: Inputs) => [
  ...hoses.map(({ name, length, bore }) => ({ name, volume: (Math.PI / 4) * bore ** 2 * length })),
  ...parts.map(({ name, volume }) => ({ name, volume })),
]

const litres = (label: string, symbol: string) =>
  ({ type: 'number', label, symbol, of: 'volume', units: ['L', 'qt'] }) as const

export const loopVolume = defineCalculator({
  id: 'loop-volume',
  title: words`Loop volume, fill and expansion`,
  phase: 'cooling',
  purpose: words`Adds up what the loop holds, tells from the litres that went in whether air is trapped, and how much air space the tank needs when the coolant expands.`,
  inputs,
  outputs: {
    volume: litres(words`Loop holds`, 'V'),
    hoseVolume: litres(words`of it in hoses`, 'V_h'),
    concentrate: litres(words`Glycol in it`, 'V_g'),
    fillShare: {
      type: 'number',
      label: words`Went in`,
      symbol: 'V_f/V',
      of: 'fraction',
      units: ['%', '%'],
    },
    missing: litres(words`Still missing`, 'V − V_f'),
    expansion: litres(words`Expansion`, 'ΔV'),
    expansionShare: {
      type: 'number',
      label: words`Expansion of volume`,
      symbol: 'ΔV/V',
      of: 'fraction',
      units: ['%', '%'],
    },
    airNeeded: litres(words`Air space needed`, 'V_n'),
    airInHand: litres(words`Air space in hand`, 'V_a − V_n'),
    table: {
      type: 'table',
      label: words`What holds it`,
      columns: {
        name: { type: 'text', label: words`Part` },
        volume: litres(words`Holds`, 'V_j'),
        share: {
          type: 'number',
          label: words`Share`,
          symbol: 's',
          of: 'fraction',
          units: ['%', '%'],
        },
      },
    },
  },
  formula: [
    String.raw`V = \sum \tfrac{\pi}{4} d^2 L + \sum V_i, \qquad \Delta V = V\left(\frac{\rho(T_k)}{\rho(T_h)} - 1\right), \qquad V_n = 1.5\,\Delta V`,
  ],
  validity: [
    words`Hoses are taken as round and not swollen; a rubber hose under pressure holds a little more.`,
    words`Only the coolant expands: the metal and rubber round it take up about a tenth of that.`,
    words`All coolant is taken to reach the hottest temperature at once, which is the careful end.`,
  ],
  checks: {
    contents: { title: words`Something to fill`, basis: 'model' },
    fill: { title: words`Fill`, basis: 'common practice' },
    air: { title: words`Air space of the tank`, basis: 'common practice' },
    coolant: {
      title: words`Coolant properties`,
      basis: 'published: ASHRAE 2001, IIR 2010, IAPWS',
    },
  },
  hazards: ['coolant-poison', 'hot-coolant', 'dry-pump'],
  sources: [
    {
      title: 'ASHRAE Handbook Fundamentals 2001 and IIR 2010 coolant densities',
      at: 'coefficients in the CoolProp repository, commit ea27c639',
      trust: 'read',
    },
    {
      title: 'Generator-set manual: a fill of much less than the capacity is trapped air',
      trust: 'read',
    },
  ],
  compute(input) {
    const rows = contents(input)
    const volume = rows.reduce((sum, row) => sum + row.volume, 0)
    const held = volume > 0 ? volume : undefined
    const coolant = coolantOf(input.coolant, input.concentration, input.basis)
    const cold = coolant && propertiesOf(coolant, input.coldTemperature)
    const hot = coolant && propertiesOf(coolant, input.hotTemperature)
    const expansionShare =
      cold === undefined || hot === undefined
        ? undefined
        : Math.max(0, cold.density / hot.density - 1)
    const expansion =
      held === undefined || expansionShare === undefined ? undefined : held * expansionShare
    const airNeeded = expansion === undefined ? undefined : airPass * expansion
    return {
      volume: held,
      hoseVolume: rows.slice(0, input.hoses?.length ?? 0).reduce((sum, row) => sum + row.volume, 0),
      concentrate: held && coolant && held * volumeFraction(coolant),
      fillShare: held && input.filled !== undefined ? input.filled / held : undefined,
      missing: held && input.filled !== undefined ? held - input.filled : undefined,
      expansion,
      expansionShare,
      airNeeded,
      airInHand:
        input.airSpace === undefined || airNeeded === undefined
          ? undefined
          : input.airSpace - airNeeded,
      table: rows.map((row) => ({ ...row, share: held && row.volume / held })),
    }
  },
  findings(input, output, say) {
    const { volume, fillShare, missing, expansion, airNeeded } = output
    const { airSpace } = input
    const L = (value: number | undefined) => say(value, 'L')
    const fillLevel: Level =
      fillShare === undefined
        ? 'unknown'
        : fillShare < fillStop
          ? 'stop'
          : fillShare < fillPass || fillShare > fillMost
            ? 'watch'
            : 'pass'
    const times =
      airSpace === undefined || expansion === undefined ? undefined : airSpace - expansion * airStop
    const airLevel: Level =
      airSpace === undefined || times === undefined || airNeeded === undefined
        ? 'unknown'
        : times < 0
          ? 'stop'
          : airSpace < airNeeded
            ? 'watch'
            : 'pass'
    const coolant = coolantOf(input.coolant, input.concentration, input.basis)
    const cold = coolantFinding(coolant, input.coldTemperature, say)
    return [
      {
        check: 'contents',
        level: volume === undefined ? 'unknown' : 'pass',
        text:
          volume === undefined
            ? words`No hose and no part with a volume is given.`
            : words`Hoses and parts hold ${L(volume)}.`,
        threshold: words`at least one hose or part`,
      },
      {
        check: 'fill',
        level: fillLevel,
        text:
          fillShare === undefined
            ? words`What went in is not known: fill from a measuring jug and note it.`
            : fillShare > fillMost
              ? words`${say(fillShare, '%')} of the loop went in: something that holds coolant is not in the list, or it was not empty.`
              : fillLevel === 'pass'
                ? words`${L(input.filled)} of ${L(volume)} went in.`
                : words`${L(missing)} did not go in: that much air is inside. Nose up, bleed, squeeze the hoses, run the pump in short bursts, top up.`,
        threshold: words`at least 97 % (watch), 92 % (stop); at most 105 % (watch)`,
      },
      {
        check: 'air',
        ...heeding(
          {
            level: airLevel,
            text:
              airLevel === 'unknown'
                ? words`The air space of the tank, the volume or the expansion is not known.`
                : airLevel === 'pass'
                  ? words`The coolant rises by ${L(expansion)}; the tank has ${L(airSpace)} of air.`
                  : airLevel === 'stop'
                    ? words`The coolant rises by ${L(expansion)} and the tank has ${L(airSpace)} of air: it comes out of the cap. A tank with ${L(airNeeded)} of air, or a lower cold mark.`
                    : words`The coolant rises by ${L(expansion)} and the tank has ${L(airSpace)} of air: little is left. A tank with ${L(airNeeded)} of air, or a lower cold mark.`,
          },
          wrongWay(
            say,
            '°C',
            [words`coldest coolant`, input.coldTemperature],
            [words`hottest coolant`, input.hotTemperature],
          ),
        ),
        threshold: words`at least 1.5 times the expansion (watch), once (stop)`,
      },
      {
        check: 'coolant',
        ...(cold.level === 'pass' ? coolantFinding(coolant, input.hotTemperature, say) : cold),
      },
    ]
  },
  working(input, { volume, expansion, expansionShare, airNeeded }, say) {
    const coolant = coolantOf(input.coolant, input.concentration, input.basis)
    const at = (temperature: number) =>
      say(coolant && propertiesOf(coolant, temperature)?.density, 'kg/m³', 5)
    return [
      ...(input.hoses ?? []).map(
        ({ name, length, bore }) =>
          `${name}: V = π/4 × (${say(bore, 'mm')})² × ${say(length, 'm')} = ${say((Math.PI / 4) * bore ** 2 * length, 'L')}`,
      ),
      `V = ${[...contents(input).map((row) => say(row.volume, 'L')), say(volume, 'L')]
        .join(' + ')
        .replace(/ \+ (?=[^+]*$)/, ' = ')}`,
      `ΔV/V = ρ(${say(input.coldTemperature, '°C')}) / ρ(${say(input.hotTemperature, '°C')}) − 1 = ${at(input.coldTemperature)} / ${at(input.hotTemperature)} − 1 = ${say(expansionShare, '%')}${coolant ? ` (${propertySource(coolant)})` : ''}`,
      `ΔV = ${say(volume, 'L')} × ${say(expansionShare, '%')} = ${say(expansion, 'L')}; V_n = 1.5 ΔV = ${say(airNeeded, 'L')}`,
    ]
  },
  examples: [
    {
      name: 'Ethylene glycol 50 %, 20 to 80 °C, ten litres',
      from: 'ASHRAE 2001 densities 1073.35 and 1038.46 kg/m³: 3.35978 %',
      inputs: {
        parts: [{ name: 'all', volume: '10 L' }],
        coolant: 'ethylene-glycol',
        concentration: '50 %',
        basis: 'volume',
        coldTemperature: '20 °C',
        hotTemperature: '80 °C',
        filled: '9.8 L',
        airSpace: '0.6 L',
      },
      outputs: {
        expansionShare: '3.36 %',
        expansion: '0.336 L',
        airNeeded: '0.504 L',
        concentrate: '5 L',
      },
      findings: { contents: 'pass', fill: 'pass', air: 'pass', coolant: 'pass' },
    },
    {
      name: 'Propylene glycol 40 %, 0 to 80 °C',
      from: 'ASHRAE 2001 densities 1045.12 and 997.25 kg/m³: 4.8002 %',
      inputs: {
        parts: [{ name: 'all', volume: '10 L' }],
        coolant: 'propylene-glycol',
        concentration: '40 %',
        basis: 'volume',
        hotTemperature: '80 °C',
        filled: '9.4 L',
        airSpace: '0.5 L',
      },
      outputs: { expansionShare: '4.80 %', fillShare: '94 %' },
      findings: { fill: 'watch', air: 'watch' },
    },
    {
      name: 'Water 20 to 60 °C',
      from: 'IAPWS-IF97 densities 998.251 and 983.254 kg/m³: 1.5253 %',
      inputs: {
        parts: [{ name: 'all', volume: '10 L' }],
        coolant: 'water',
        coldTemperature: '20 °C',
        hotTemperature: '60 °C',
        filled: '9 L',
        airSpace: '0.1 L',
      },
      outputs: { expansionShare: '1.525 %', missing: '1 L' },
      tolerance: 0.001,
      why: 'the densities are from another formulation, at 0.2 MPa',
      findings: { fill: 'stop', air: 'stop' },
    },
    {
      // π/4 × 16² mm² × 5.2 m = 201.0619 mm² × 5.2 m = 1.04552 L.
      name: 'Hose of 16 mm, 5.2 m, and parts',
      from: 'hand: 201.062 mm² × 5.2 m + 2.85 L',
      inputs: {
        hoses: [{ name: 'all hoses', length: '5.2 m', bore: '16 mm' }],
        parts: [
          { name: 'radiator', volume: '1.6 L' },
          { name: 'tank and plate', volume: '1.25 L' },
        ],
        coolant: 'ethylene-glycol',
        hotTemperature: '60 °C',
      },
      outputs: { volume: '3.8955 L', hoseVolume: '1.0455 L', expansion: 'cannot tell' },
      findings: { fill: 'unknown', air: 'unknown', coolant: 'unknown' },
    },
    {
      name: 'Nothing listed, frozen',
      from: 'threshold case',
      inputs: { coolant: 'water', coldTemperature: '-5 °C', hotTemperature: '60 °C' },
      outputs: {},
      findings: { contents: 'unknown', coolant: 'stop' },
    },
    {
      name: 'More than it holds',
      from: 'threshold case',
      inputs: {
        parts: [{ name: 'radiator', volume: '2 L' }],
        coolant: 'water',
        coldTemperature: '5 °C',
        hotTemperature: '60 °C',
        filled: '3 L',
      },
      outputs: {},
      findings: { fill: 'watch' },
    },
  ],
})
