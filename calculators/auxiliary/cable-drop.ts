/**
 * Voltage drop, loss and rating of a cable, 12 V or traction.
 *
 * In: current, one-way length, size, how it returns, which rating is believed. Out: drop, loss, what
 * the cable carries, the next size up and what it leaves. The drop is worked out hot: copper at 70 °C
 * resists a fifth more than the table at 20 °C says.
 */
import { defineCalculator } from '../define.ts'
import type { Finding } from '../define.ts'
import {
  aircraftTable,
  boatEngineTable,
  boatTable,
  flexiblePerMetre,
  heated,
  loomTable,
  nextSize,
  printedAmpacity,
  sizeUnit,
  solidPerMetre,
  standardSizes,
  tableConditions,
} from '../wire.ts'
import { words } from '../../src/words/words.ts'

/** Of the supply; ABYC E-11 as marine wire charts quote it, the 5 % common practice. */
const criticalWatch = 0.03
const criticalStop = 0.05
const ordinaryStop = 0.1
/** Of the cable's rating; common practice. */
const usePass = 0.8
/** V; above it the body must not carry current: FMVSS 305 and UN R100. */
const highVoltage = 60
/** V; 33 CFR 183.425 is for circuits below it. */
const boatLimit = 50

const tables = {
  boat: boatTable,
  'boat-engine': boatEngineTable,
  aircraft: aircraftTable,
  loom: loomTable,
}

interface Run {
  readonly current: number
  readonly length: number
  readonly wire: number
  readonly conductor: 'flexible' | 'solid'
  readonly returnPath: 'wire' | 'chassis'
  readonly chassis: number
  readonly temperature: number
}

/** Ω there and back with this size. */
function resistance(run: Run, area = run.wire): number {
  const perMetre = run.conductor === 'flexible' ? flexiblePerMetre(area) : solidPerMetre(area)
  const ways = run.returnPath === 'wire' ? 2 : 1
  const body = run.returnPath === 'wire' ? 0 : run.chassis
  return perMetre * heated(run.temperature) * run.length * ways + body
}

export const cableDrop = defineCalculator({
  id: 'cable-drop',
  title: words`Cable size and voltage drop`,
  phase: 'auxiliary',
  purpose: words`Works out what a cable loses on the way and whether it may carry the current, with the rating’s own conditions beside it.`,
  inputs: {
    current: {
      type: 'number',
      label: words`Current`,
      symbol: 'I',
      of: 'current',
      units: ['A', 'A'],
      hard: [0.01, 2000],
      usual: [0.1, 600],
      help: words`Continuous, or the mean square over a drive.`,
    },
    length: {
      type: 'number',
      label: words`Length, one way`,
      symbol: 'L',
      of: 'length',
      units: ['m', 'ft'],
      hard: [0.01, 100],
      usual: [0.2, 15],
      help: words`Along the cable, not as the crow flies.`,
    },
    wire: {
      type: 'number',
      label: words`Cable`,
      symbol: 'A',
      of: 'wireArea',
      units: ['mm²', 'AWG'],
      hard: [0.2, 300],
      usual: [0.35, 150],
      help: words`Copper area.`,
      choice: true,
    },
    volts: {
      type: 'number',
      label: words`Supply voltage`,
      symbol: 'U',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [1, 1000],
      usual: [11, 900],
      help: words`At the source end.`,
    },
    returnPath: {
      type: 'choice',
      label: words`Return`,
      help: words`What carries the current back.`,
      options: { wire: words`a second cable of the same size`, chassis: words`the body` },
      choice: true,
      assume: {
        value: 'wire',
        because: words`counting a return cable is the worse case for the drop`,
      },
    },
    chassis: {
      type: 'number',
      label: words`Resistance of the body`,
      symbol: 'R_body',
      of: 'resistance',
      units: ['mΩ', 'mΩ'],
      hard: [0, 1000],
      usual: [0.5, 20],
      help: words`Earth stud to earth stud, only for a body return; measured with a few amperes.`,
      assume: { value: 5, because: words`two clean bolted joints and some sheet steel` },
    },
    conductor: {
      type: 'choice',
      label: words`Copper`,
      help: words`Flexible cable resists up to 16 % more than its area says.`,
      options: {
        flexible: words`flexible, limits of IEC 60228 class 5`,
        solid: words`solid copper of the full area`,
      },
      choice: true,
      assume: { value: 'flexible', because: words`vehicle cable is fine-stranded` },
    },
    temperature: {
      type: 'number',
      label: words`Conductor temperature`,
      symbol: 'T',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-40, 200],
      usual: [20, 105],
      help: words`In use.`,
      assume: { value: 70, because: words`a loaded cable in a warm place` },
    },
    critical: {
      type: 'choice',
      label: words`Critical circuit`,
      help: words`Lamps, pumps, coils, controllers, traction.`,
      options: { yes: words`yes`, no: words`no` },
      assume: { value: 'yes', because: words`the stricter limit` },
    },
    ampacityFrom: {
      type: 'choice',
      label: words`Rating taken from`,
      help: words`The same cable is printed with half or double, as the conditions are.`,
      options: {
        boat: words`33 CFR 183.425, outside engine spaces`,
        'boat-engine': words`33 CFR 183.425, in engine spaces`,
        aircraft: words`FAA AC 43.13-1B, in bundles`,
        loom: words`loom table, PVC`,
        sheet: words`the cable’s own sheet`,
      },
      choice: true,
      optional: true,
    },
    insulation: {
      type: 'choice',
      label: words`Insulation class`,
      help: words`Column of the table; PVC loom wire is 70 °C.`,
      options: {
        '60C': '60 °C',
        '70C': '70 °C',
        '75C': '75 °C',
        '80C': '80 °C',
        '90C': '90 °C',
        '105C': '105 °C',
        '125C': '125 °C',
        '150C': '150 °C',
        '200C': '200 °C',
      },
      choice: true,
      optional: true,
    },
    sheetRating: {
      type: 'number',
      label: words`Rating from the sheet`,
      symbol: 'I_sheet',
      of: 'current',
      units: ['A', 'A'],
      hard: [0.1, 3000],
      usual: [2, 600],
      help: words`Continuous.`,
      optional: true,
    },
    sheetConditions: {
      type: 'text',
      label: words`Conditions of that rating`,
      help: words`Air temperature, free or bundled, conductor temperature.`,
      optional: true,
    },
    derate: {
      type: 'number',
      label: words`Derating for bundle and heat`,
      symbol: 'k',
      of: 'fraction',
      units: ['%', '%'],
      hard: [20, 100],
      usual: [40, 100],
      help: words`33 CFR for bundles at 50 V and more: 70 % with 3 conductors, 60 % with 4 to 6, 50 % with 7 to 24.`,
      assume: { value: 100, because: words`it runs as its table supposes` },
    },
    fuse: {
      type: 'number',
      label: words`Fuse at the source`,
      symbol: 'I_fuse',
      of: 'current',
      units: ['A', 'A'],
      hard: [0.1, 3000],
      usual: [1, 500],
      help: words`The one this cable hangs on.`,
      choice: true,
      optional: true,
    },
  },
  outputs: {
    drop: {
      type: 'number',
      label: words`Voltage drop`,
      symbol: 'ΔU',
      of: 'voltage',
      units: ['V', 'V'],
    },
    dropShare: {
      type: 'number',
      label: words`Drop of supply`,
      symbol: 'ΔU/U',
      of: 'fraction',
      units: ['%', '%'],
    },
    loss: { type: 'number', label: words`Loss`, symbol: 'P', of: 'power', units: ['W', 'W'] },
    resistance: {
      type: 'number',
      label: words`Resistance there and back`,
      symbol: 'R',
      of: 'resistance',
      units: ['mΩ', 'mΩ'],
    },
    ampacity: {
      type: 'number',
      label: words`The cable carries`,
      symbol: 'I_cable',
      of: 'current',
      units: ['A', 'A'],
    },
    use: {
      type: 'number',
      label: words`Use of its rating`,
      symbol: 'I/I_cable',
      of: 'fraction',
      units: ['%', '%'],
    },
    conditions: { type: 'text', label: words`Conditions of the rating` },
    nextSize: {
      type: 'number',
      label: words`Next size up`,
      symbol: 'A_next',
      of: 'wireArea',
      units: ['mm²', 'AWG'],
      exact: true,
    },
    nextShare: {
      type: 'number',
      label: words`Drop it leaves`,
      symbol: 'ΔU_next/U',
      of: 'fraction',
      units: ['%', '%'],
    },
    sizeForDrop: {
      type: 'number',
      label: words`Smallest size for the drop alone`,
      symbol: 'A_min',
      of: 'wireArea',
      units: ['mm²', 'AWG'],
      exact: true,
    },
  },
  formula: [
    "R = R'_{20}\\,[1 + \\alpha\\,(T - 20\\,°\\text{C})]\\,2L",
    '\\Delta U = I\\,R \\quad P = I^2 R',
  ],
  validity: [
    words`Direct current; joints and fuses are not counted.`,
    words`Flexible cable: class 5 limits of IEC 60228 at 0.5 to 150 mm², between them by interpolation.`,
    words`33 CFR 183.425 is for circuits under 50 V, 18 AWG to 4/0; the aircraft table for 24 AWG to 4/0; the loom table for 0.65 to 3 mm². Between two printed sizes the thinner one counts. For anything else take the cable’s own sheet.`,
    words`The smallest size for the drop may still be too thin for the current: look at the rating as well.`,
  ],
  checks: {
    drop: {
      title: words`Voltage drop`,
      basis:
        'published: ABYC E-11 as marine wire charts quote it, 3 % critical, 10 % others; common practice for 5 %',
    },
    use: { title: words`Current against rating`, basis: 'common practice' },
    source: { title: words`Rating with its conditions`, basis: 'common practice' },
    fuse: { title: words`Fuse protects the cable`, basis: 'common practice' },
    body: {
      title: words`Body as return`,
      basis: 'published: FMVSS 305, S4, 60 V line',
      never: true,
    },
  },
  hazards: ['wiring-fire'],
  sources: [
    { title: 'ASTM B258, standard gauges of wire', trust: 'read' },
    {
      title: 'IEC 60228, conductors of insulated cables',
      at: 'class 5, resistance at 20 °C',
      trust: 'read',
    },
    { title: '33 CFR 183.425, allowable amperage of conductors', at: 'table 5', trust: 'read' },
    { title: 'FAA AC 43.13-1B', edition: 'change 1, 2001', at: 'table 11-9', trust: 'read' },
    { title: 'Cable table of the towing-electrics trade', at: '0.65 to 3 mm²', trust: 'read' },
  ],
  compute(input) {
    const ohms = resistance(input)
    const drop = input.current * ohms
    const from = input.ampacityFrom
    const tooHigh = (from === 'boat' || from === 'boat-engine') && input.volts >= boatLimit
    const rating =
      from === 'sheet'
        ? input.sheetRating
        : from === undefined || input.insulation === undefined || tooHigh
          ? undefined
          : printedAmpacity(tables[from], input.insulation, input.wire)
    const ampacity = rating === undefined ? undefined : rating * input.derate
    const next = nextSize(input.wire)
    const wanted = input.critical === 'yes' ? criticalWatch : ordinaryStop
    return {
      drop,
      dropShare: drop / input.volts,
      loss: input.current * drop,
      resistance: ohms,
      ampacity,
      use: ampacity === undefined ? undefined : input.current / ampacity,
      conditions:
        ampacity === undefined || from === undefined
          ? undefined
          : from === 'sheet'
            ? input.sheetConditions
            : tableConditions[from],
      nextSize: next,
      nextShare:
        next === undefined ? undefined : (input.current * resistance(input, next)) / input.volts,
      sizeForDrop: standardSizes(input.wire).find(
        (size) => input.current * resistance(input, size) <= wanted * input.volts,
      ),
    }
  },
  findings(input, output, say) {
    type Said = Pick<Finding, 'level' | 'text'>
    const { ampacity, use } = output
    const drop = (): Said => {
      const share = output.dropShare ?? 0
      const fact = words`The cable loses ${say(output.drop, 'V')}, ${say(share, '%', 2)} of the supply`
      const better =
        output.sizeForDrop === undefined
          ? words`no standard size is thick enough: shorten the run`
          : words`take ${say(output.sizeForDrop, sizeUnit(input.wire))} or more`
      if (share <= (input.critical === 'yes' ? criticalWatch : ordinaryStop))
        return { level: 'pass', text: `${fact}.` }
      return input.critical === 'yes' && share <= criticalStop
        ? { level: 'watch', text: words`${fact}; for less, ${better}.` }
        : { level: 'stop', text: words`${fact}: too much; ${better}.` }
    }
    const rated = (): Said => {
      if (ampacity === undefined || use === undefined)
        return {
          level: 'unknown',
          text: words`No rating fits this cable, insulation and voltage: name the table and the insulation class, or give the rating of its own sheet.`,
        }
      const fact = words`The current is ${say(use, '%', 2)} of the ${say(ampacity, 'A')} the cable carries`
      if (use <= usePass) return { level: 'pass', text: `${fact}.` }
      return use <= 1
        ? {
            level: 'watch',
            text: words`${fact}: little is left for heat; the next size gives room.`,
          }
        : { level: 'stop', text: words`${fact}: it overheats. Take a thicker one.` }
    }
    const source = (): Said => {
      if (ampacity === undefined) return { level: 'unknown', text: words`There is no rating yet.` }
      return output.conditions === undefined || output.conditions.trim() === ''
        ? {
            level: 'watch',
            text: words`The rating stands without its conditions: the same cable is printed with half or double. Write down air temperature and how it lies.`,
          }
        : { level: 'pass', text: words`The rating holds for: ${output.conditions}.` }
    }
    const fuse = (): Said => {
      if (input.fuse === undefined)
        return {
          level: 'unknown',
          text: words`The fuse at the source is not given: every cable needs one.`,
        }
      if (input.current > input.fuse)
        return {
          level: 'stop',
          text: words`The current is more than the ${say(input.fuse, 'A')} fuse carries: it opens in use.`,
        }
      if (ampacity === undefined)
        return {
          level: 'unknown',
          text: words`The fuse cannot be judged without the cable’s rating.`,
        }
      return input.fuse <= ampacity * (1 + 1e-9)
        ? {
            level: 'pass',
            text: words`The ${say(input.fuse, 'A')} fuse is not above the ${say(ampacity, 'A')} the cable carries.`,
          }
        : {
            level: 'stop',
            text: words`The ${say(input.fuse, 'A')} fuse is above the ${say(ampacity, 'A')} the cable carries: the cable burns first. Fit a smaller fuse or a thicker cable.`,
          }
    }
    const body = (): Said => {
      if (input.returnPath === 'wire')
        return { level: 'pass', text: words`A cable carries the current back.` }
      return input.volts > highVoltage
        ? {
            level: 'stop',
            text: words`The body must never carry traction current: it puts the pack on everything one touches. Run a return cable.`,
          }
        : {
            level: 'pass',
            text: words`The body carries the current back; keep its studs clean and bright.`,
          }
    }
    return [
      {
        check: 'drop',
        ...drop(),
        threshold:
          input.critical === 'yes'
            ? words`at most 3 % of the supply (watch), 5 % (stop)`
            : words`at most 10 % of the supply (stop)`,
      },
      {
        check: 'use',
        ...rated(),
        threshold: words`at most 80 % of the rating (watch), 100 % (stop)`,
      },
      { check: 'source', ...source(), threshold: words`conditions stated (watch without)` },
      {
        check: 'fuse',
        ...fuse(),
        threshold: words`at least the current, at most the cable’s rating (stop)`,
      },
      { check: 'body', ...body(), threshold: words`no body return above 60 V (stop)` },
    ]
  },
  working(input, output, say) {
    const cold =
      input.conductor === 'flexible' ? flexiblePerMetre(input.wire) : solidPerMetre(input.wire)
    const ways = input.returnPath === 'wire' ? '2 × ' : ''
    const body = input.returnPath === 'wire' ? '' : ` + ${say(input.chassis, 'mΩ')}`
    return [
      `R = ${say(cold, 'mΩ/m')} × ${say(heated(input.temperature), '', 4)} × ${ways}${say(input.length, 'm')}${body} = ${say(output.resistance, 'mΩ')}`,
      `ΔU = I R = ${say(input.current, 'A')} × ${say(output.resistance, 'mΩ')} = ${say(output.drop, 'V')}`,
      `ΔU / U = ${say(output.dropShare, '%')}`,
      `P = I² R = ${say(output.loss, 'W')}`,
    ]
  },
  moreHazards: (input) =>
    input.volts > highVoltage
      ? ['high-voltage', 'stored-energy', 'arc-and-short']
      : ['low-voltage-burns'],
  examples: [
    {
      name: '6 mm², 5 m, 30 A at 60 °C',
      from: 'hand: 17.241 mΩ·mm²/m / 6 mm² × 10 m × (1 + 0.00393 × 40) = 33.252 mΩ; × 30 A = 0.99756 V',
      inputs: {
        current: '30 A',
        length: '5 m',
        wire: '6 mm²',
        volts: '12 V',
        conductor: 'solid',
        temperature: '60 °C',
        critical: 'no',
        ampacityFrom: 'sheet',
        sheetRating: '50 A',
        fuse: '40 A',
      },
      outputs: { resistance: '33.252 mΩ', drop: '0.99756 V', nextSize: '10 mm²' },
      tolerance: 1e-4,
      why: 'The hand figure rounds 1/58 Ω·mm²/m to 17.241 mΩ·mm²/m.',
      findings: { drop: 'pass', use: 'pass', source: 'watch', fuse: 'pass', body: 'pass' },
    },
    {
      name: '35 mm², 3 m, 200 A at 80 °C',
      from: 'hand: 17.241 / 35 × 6 m × (1 + 0.00393 × 60) = 3.6525 mΩ; × 200 A = 0.73051 V; × 200 A = 146.1 W',
      inputs: {
        current: '200 A',
        length: '3 m',
        wire: '35 mm²',
        volts: '131 V',
        conductor: 'solid',
        temperature: '80 °C',
        ampacityFrom: 'boat',
        insulation: '105C',
      },
      outputs: { resistance: '3.6525 mΩ', drop: '0.73051 V', loss: '146.1 W', nextSize: '50 mm²' },
      tolerance: 1e-4,
      why: 'The hand figure rounds 1/58 Ω·mm²/m to 17.241 mΩ·mm²/m.',
      findings: { drop: 'pass', use: 'unknown', source: 'unknown', fuse: 'unknown' },
    },
    {
      name: '2.5 mm² at the class 5 limit',
      from: 'IEC 60228 class 5: 7.98 Ω/km; × 8 m × 10 A = 0.6384 V',
      inputs: {
        current: '10 A',
        length: '4 m',
        wire: '2.5 mm²',
        volts: '12 V',
        temperature: '20 °C',
        ampacityFrom: 'loom',
        insulation: '70C',
        fuse: '30 A',
      },
      outputs: { drop: '0.6384 V', ampacity: '21.75 A', nextSize: '3 mm²' },
      findings: { drop: 'stop', use: 'pass', source: 'pass', fuse: 'stop' },
    },
    {
      name: 'smallest size for 3 % of 12 V',
      from: 'hand: 17.241 × 8 m × 10 A / 0.36 V = 3.8313 mm², so 4 mm²',
      inputs: {
        current: '10 A',
        length: '4 m',
        wire: '3 mm²',
        volts: '12 V',
        conductor: 'solid',
        temperature: '20 °C',
      },
      outputs: { sizeForDrop: '4 mm²' },
      findings: { drop: 'watch' },
    },
    {
      name: '10 AWG in and out of an engine space',
      from: '33 CFR 183.425, table 5: 60 A at 105 °C; note 1: × 0.85 = 51 A',
      inputs: {
        current: '45 A',
        length: '1 m',
        wire: '10 AWG',
        volts: '13.5 V',
        ampacityFrom: 'boat-engine',
        insulation: '105C',
        fuse: '50 A',
      },
      outputs: { ampacity: '51 A' },
      findings: { use: 'watch', fuse: 'pass', source: 'pass' },
    },
    {
      name: 'threshold case: traction current through the body',
      from: 'threshold case',
      inputs: {
        current: '100 A',
        length: '2 m',
        wire: '25 mm²',
        volts: '96 V',
        returnPath: 'chassis',
      },
      outputs: {},
      findings: { body: 'stop' },
    },
  ],
})
