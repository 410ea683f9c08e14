/**
 * Fuse, wire and switching of a small motor: pump, fan, vacuum pump.
 *
 * In: what it draws running and starting, the wire, how it is switched. Out: the fuse, the wire's
 * rating, what is in hand, the drop. The fuse protects the wire: it is found between what the motor
 * draws and what the wire carries, and never made larger for the start.
 */
import * as elementary from '../elementary.ts'
import { defineCalculator } from '../define.ts'
import type { Finding, Say } from '../define.ts'
import {
  bladeRatings,
  bladeSource,
  longestOpening,
  ratingsBetween,
  shortestOpening,
} from '../fuses.ts'
import { boatEngineTable, flexiblePerMetre, heated, loomTable, printedAmpacity } from '../wire.ts'
import { words } from '../../src/words/words.ts'

/** The shortest opening time must be this many times the start; common practice. */
const startMargin = 2
/** Of its contact rating, for a motor; common practice. */
const relayShare = 0.7
/** A, added to an old ignition switch; common practice. */
const switchWatch = 1
const switchStop = 3
/** Of the supply, for a pump, fan or coil; published in 12 V wiring tables. */
const dropWatch = 0.03
const dropStop = 0.05

/** A standard rating as it is stamped: no figure more. */
const stamped = (say: Say, rating: number) =>
  say(rating, 'A', String(rating).replace('.', '').length)

const noneBetween = {
  mini: words`no mini blade fuse fits between.`,
  medium: words`no medium blade fuse fits between.`,
  maxi: words`no maxi blade fuse fits between.`,
} as const

export const motorCircuit = defineCalculator({
  id: 'motor-circuit',
  title: words`Fuse and wire of a small motor`,
  phase: 'auxiliary',
  purpose: words`Finds the fuse between what a pump or fan draws and what its wire carries; checks start, relay and voltage drop.`,
  inputs: {
    running: {
      type: 'number',
      label: words`Running current`,
      symbol: 'I_run',
      of: 'current',
      units: ['A', 'A'],
      hard: [0.1, 40],
      usual: [0.3, 30],
      help: words`Measured on charge, pump full and warm.`,
    },
    starting: {
      type: 'number',
      label: words`Start current`,
      symbol: 'I_start',
      of: 'current',
      units: ['A', 'A'],
      hard: [0.1, 300],
      usual: [0.3, 200],
      help: words`The highest reading as it starts; often two to six times the running current.`,
      optional: true,
    },
    startingTime: {
      type: 'number',
      label: words`Start lasts`,
      symbol: 't_start',
      of: 'time',
      units: ['s', 's'],
      hard: [0.01, 30],
      usual: [0.05, 10],
      help: words`Until the current is back near the running one.`,
      assume: {
        value: 0.5,
        because: words`small motors are up to speed by then`,
      },
    },
    wire: {
      type: 'number',
      label: words`Wire`,
      symbol: 'A',
      of: 'wireArea',
      units: ['mm²', 'AWG'],
      hard: [0.3, 35],
      usual: [0.35, 16],
      help: words`The thinnest behind the fuse.`,
      choice: true,
    },
    insulation: {
      type: 'choice',
      label: words`Insulation`,
      help: words`Printed on the wire.`,
      options: {
        '70C': words`PVC, 70 °C, in the loom table`,
        '90C': words`90 °C, in an engine space`,
        '105C': words`105 °C, in an engine space`,
        '125C': words`125 °C, in an engine space`,
      },
      choice: true,
      assume: {
        value: '70C',
        because: words`unmarked wire is taken as plain PVC, the lowest class`,
      },
    },
    wireRating: {
      type: 'number',
      label: words`Wire rating from its sheet`,
      symbol: 'I_sheet',
      of: 'current',
      units: ['A', 'A'],
      hard: [0.5, 300],
      usual: [2, 150],
      help: words`Instead of the table; needed outside it.`,
      optional: true,
    },
    derate: {
      type: 'number',
      label: words`Derating for bundle and heat`,
      symbol: 'k',
      of: 'fraction',
      units: ['%', '%'],
      hard: [30, 100],
      usual: [50, 100],
      help: words`What a tight bundle or a hotter place leaves of the rating.`,
      assume: { value: 100, because: words`it runs as its table supposes` },
    },
    loading: {
      type: 'number',
      label: words`Continuous share of a fuse rating`,
      symbol: 'f',
      of: 'fraction',
      units: ['%', '%'],
      hard: [50, 100],
      usual: [60, 80],
      help: words`Less in a hot engine bay.`,
      assume: { value: 80, because: words`common practice near room temperature` },
    },
    style: {
      type: 'choice',
      label: words`Fuse style`,
      help: words`Decides which ratings there are.`,
      options: { mini: words`blade, mini`, medium: words`blade, medium`, maxi: words`blade, maxi` },
      choice: true,
      assume: { value: 'medium', because: words`the common blade fuse` },
    },
    volts: {
      type: 'number',
      label: words`Supply voltage`,
      symbol: 'U',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [5, 32],
      usual: [11, 29],
      help: words`With the converter charging.`,
      assume: { value: 13.5, because: words`a 12 V system on charge` },
    },
    length: {
      type: 'number',
      label: words`Wire length, one way`,
      symbol: 'L',
      of: 'length',
      units: ['m', 'ft'],
      hard: [0.05, 50],
      usual: [0.2, 10],
      help: words`The return is taken as the same wire.`,
      optional: true,
    },
    wireTemperature: {
      type: 'number',
      label: words`Wire temperature`,
      symbol: 'T',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-40, 150],
      usual: [0, 105],
      help: words`Hot copper resists more.`,
      assume: { value: 70, because: words`a warm engine bay` },
    },
    switching: {
      type: 'choice',
      label: words`Switched by`,
      help: words`What carries the motor current.`,
      options: {
        relay: words`a relay`,
        ignition: words`the ignition switch itself`,
        own: words`a switch or output of its own`,
        unknown: words`not known yet`,
      },
      choice: true,
      optional: true,
    },
    contactRating: {
      type: 'number',
      label: words`Contact rating`,
      symbol: 'I_contact',
      of: 'current',
      units: ['A', 'A'],
      hard: [0.5, 200],
      usual: [5, 70],
      help: words`Printed on the relay or switch, for DC.`,
      optional: true,
    },
    coil: {
      type: 'number',
      label: words`Load on the ignition switch`,
      symbol: 'I_coil',
      of: 'current',
      units: ['A', 'A'],
      hard: [0, 40],
      usual: [0, 3],
      help: words`Relay coils.`,
      assume: { value: 0.15, because: words`one relay coil` },
    },
  },
  outputs: {
    fuse: {
      type: 'number',
      label: words`Fuse`,
      symbol: 'I_fuse',
      of: 'current',
      units: ['A', 'A'],
      exact: true,
    },
    ampacity: {
      type: 'number',
      label: words`The wire carries`,
      symbol: 'I_wire',
      of: 'current',
      units: ['A', 'A'],
    },
    largestFuse: {
      type: 'number',
      label: words`Largest fuse for this wire`,
      symbol: 'I_max',
      of: 'current',
      units: ['A', 'A'],
      exact: true,
    },
    startRatio: {
      type: 'number',
      label: words`Start current over fuse rating`,
      symbol: 'I_start/I_fuse',
      of: 'fraction',
      units: ['%', '%'],
    },
    shortestTime: {
      type: 'number',
      label: words`Fuse may open at the start current after`,
      symbol: 't_min',
      of: 'time',
      units: ['s', 's'],
    },
    inHand: {
      type: 'number',
      label: words`Running current in hand`,
      symbol: 'ΔI',
      of: 'current',
      units: ['A', 'A'],
    },
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
    reason: { type: 'text', label: words`What decides the fuse` },
  },
  formula: [
    'I_\\text{run}/f \\le I_\\text{fuse} \\le k\\,I_\\text{wire}',
    't_\\text{min}(I_\\text{start}/I_\\text{fuse}) \\ge 2\\,t_\\text{start}',
    "\\Delta U = I_\\text{run}\\,2L\\,R'(T)",
  ],
  validity: [
    words`Wire ratings: loom table for PVC of 0.65 to 3 mm² (the thickest listed counts beyond); 33 CFR 183.425 in an engine space for 18 AWG and thicker at 90 to 125 °C. Between two sizes the thinner counts.`,
    words`Blade fuses break about 1000 A at 32 V DC: never use one on a traction pack.`,
    words`Between 110 and 135 % of a fuse nothing is listed: the shortest time there is a model, one heated element that keeps both points. Above 600 % it opens at once.`,
    words`A stalled motor is not covered.`,
  ],
  checks: {
    fit: { title: words`Fuse between motor and wire`, basis: 'common practice' },
    start: { title: words`Start surge`, basis: 'recalled: ISO 8820-3, shortest times' },
    choice: { title: words`Sizes to choose from`, basis: 'common practice' },
    relay: { title: words`Relay or switch contact`, basis: 'common practice' },
    ignition: { title: words`Load on the ignition switch`, basis: 'common practice' },
    drop: {
      title: words`Voltage drop`,
      basis:
        'published: ABYC E-11 as marine wire charts quote it, 3 %; common practice for which circuits, and for 5 %',
    },
  },
  hazards: ['wiring-fire', 'low-voltage-burns'],
  sources: [
    bladeSource,
    {
      title: 'Cable table of the towing-electrics trade',
      at: '0.65 to 3 mm²',
      trust: 'read',
    },
    {
      title: '33 CFR 183.425, allowable amperage of conductors',
      at: 'table 5 and note 1',
      trust: 'read',
    },
    {
      title: 'IEC 60228, conductors of insulated cables',
      at: 'class 5, resistance at 20 °C',
      trust: 'read',
    },
  ],
  compute(input) {
    const printed =
      input.insulation === '70C'
        ? printedAmpacity(loomTable, '70C', input.wire)
        : printedAmpacity(boatEngineTable, input.insulation, input.wire)
    const rating = input.wireRating ?? printed
    const ampacity = rating === undefined ? undefined : rating * input.derate
    const need = input.running / input.loading
    const surge =
      input.starting === undefined || input.starting < input.running ? undefined : input.starting
    const sizes = ampacity === undefined ? [] : ratingsBetween(input.style, need, ampacity)
    const rides = (size: number, margin: number) =>
      surge === undefined || shortestOpening(surge / size) >= margin * input.startingTime
    const fuse =
      sizes.find((size) => rides(size, startMargin)) ?? sizes.find((size) => rides(size, 1))
    const drop =
      input.length === undefined
        ? undefined
        : input.running *
          2 *
          input.length *
          flexiblePerMetre(input.wire) *
          heated(input.wireTemperature)
    const startRatio = fuse === undefined || surge === undefined ? undefined : surge / fuse
    const shortestTime = startRatio === undefined ? Infinity : shortestOpening(startRatio)
    return {
      fuse,
      ampacity,
      largestFuse:
        ampacity === undefined
          ? undefined
          : ratingsBetween(input.style, -Infinity, ampacity).at(-1),
      startRatio,
      shortestTime: Number.isFinite(shortestTime) ? shortestTime : undefined,
      inHand: fuse === undefined ? undefined : fuse * input.loading - input.running,
      drop,
      dropShare: drop === undefined ? undefined : drop / input.volts,
      reason:
        ampacity === undefined
          ? words`The rating of the wire is not known, so no fuse can be named.`
          : sizes.length === 0
            ? words`No rating lies between what the motor draws and what the wire carries.`
            : fuse === undefined
              ? words`Every rating the wire allows may open on the start.`
              : surge === undefined
                ? words`The running current decides; the start is not known.`
                : fuse === sizes[0]
                  ? words`The running current decides.`
                  : words`The start decides: a smaller rating may open before the motor is up to speed.`,
    }
  },
  findings(input, output, say) {
    const { fuse, ampacity } = output
    const need = input.running / input.loading
    const sizes = ampacity === undefined ? [] : ratingsBetween(input.style, need, ampacity)
    const surge = input.starting
    const riding = bladeRatings[input.style].find(
      (size) =>
        size >= need * (1 - 1e-9) &&
        (surge === undefined || shortestOpening(surge / size) >= startMargin * input.startingTime),
    )
    const instead =
      riding === undefined
        ? words`A larger fuse style is needed.`
        : words`It takes a ${stamped(say, riding)} fuse and a wire that carries as much.`

    const fit = (): Pick<Finding, 'level' | 'text'> => {
      if (ampacity === undefined)
        return {
          level: 'unknown',
          text: words`The tables have no rating for this wire and insulation: enter the one from its sheet.`,
        }
      const carries = say(ampacity, 'A')
      if (sizes.length === 0)
        return {
          level: 'stop',
          text: words`The motor asks for a fuse of at least ${say(need, 'A')}, but the wire carries ${carries}: ${noneBetween[input.style]} ${instead}`,
        }
      if (fuse === undefined)
        return {
          level: 'pass',
          text: words`A fuse of at least ${say(need, 'A')} would fit the wire, which carries ${carries}, but for the start.`,
        }
      return {
        level: 'pass',
        text: words`The ${stamped(say, fuse)} fuse is above ${say(need, 'A')} and the wire carries ${carries}.`,
      }
    }
    const start = (): Pick<Finding, 'level' | 'text'> => {
      if (surge === undefined)
        return {
          level: 'unknown',
          text: words`The start current is not known: read it with a meter that holds the peak.`,
        }
      if (surge < input.running)
        return {
          level: 'unknown',
          text: words`The start current of ${say(surge, 'A')} is below the running one: check which is which.`,
        }
      if (fuse === undefined)
        return ampacity === undefined
          ? {
              level: 'unknown',
              text: words`Without a fuse the start cannot be judged.`,
            }
          : {
              level: 'stop',
              text: words`No fuse for this wire rides the start of ${say(surge, 'A')}. ${instead}`,
            }
      const time = shortestOpening(surge / fuse)
      const [current, lasts] = [say(surge, 'A'), say(input.startingTime, 's', 2)]
      const share = say(surge / fuse, '%', 2)
      if (time < startMargin * input.startingTime)
        return {
          level: 'watch',
          text: words`The start of ${current} for ${lasts} is ${share} of the fuse, which may open after ${say(time, 's', 2)}: marginal. ${instead}`,
        }
      return {
        level: 'pass',
        text: Number.isFinite(time)
          ? words`The start of ${current} for ${lasts} is ${share} of the fuse, which opens after ${say(time, 's', 2)} at the soonest.`
          : words`The start of ${current} for ${lasts} is ${share} of the fuse, which carries that for hours.`,
      }
    }
    const choice = (): Pick<Finding, 'level' | 'text'> => {
      const list = sizes.map((size) => stamped(say, size)).join(', ')
      if (ampacity === undefined)
        return { level: 'unknown', text: words`Which sizes fit depends on the wire’s rating.` }
      if (sizes.length === 0) return { level: 'stop', text: words`There is none to choose.` }
      return sizes.length === 1
        ? {
            level: 'watch',
            text: words`Only ${list} fits between motor and wire: a thicker wire gives room.`,
          }
        : { level: 'pass', text: words`Between motor and wire there are ${list}.` }
    }
    const relay = (): Pick<Finding, 'level' | 'text'> => {
      if (input.switching === 'ignition')
        return {
          level: 'pass',
          text: words`There is no relay; see the ignition switch.`,
        }
      if (input.contactRating === undefined)
        return {
          level: 'unknown',
          text: words`The contact rating is not known: read it from the relay’s case.`,
        }
      const share = input.running / input.contactRating
      const fact = words`The motor takes ${say(share, '%', 2)} of the contact’s ${say(input.contactRating, 'A', 2)}`
      if (share <= relayShare) return { level: 'pass', text: `${fact}.` }
      return share <= 1
        ? {
            level: 'watch',
            text: words`${fact}: take a larger relay.`,
          }
        : { level: 'stop', text: words`${fact}: fit a relay rated for it.` }
    }
    const ignition = (): Pick<Finding, 'level' | 'text'> => {
      if (input.switching === undefined || input.switching === 'unknown')
        return {
          level: 'unknown',
          text: words`It is not said what switches the motor: trace the feed.`,
        }
      const load = input.switching === 'ignition' ? input.running : input.coil
      const fact = words`This puts ${say(load, 'A', 2)} on the ignition switch`
      if (load <= switchWatch) return { level: 'pass', text: `${fact}.` }
      return load <= switchStop
        ? { level: 'watch', text: words`${fact}; an old one is worn: use a relay.` }
        : { level: 'stop', text: words`${fact}: fit a relay.` }
    }
    const drop = (): Pick<Finding, 'level' | 'text'> => {
      if (output.drop === undefined || output.dropShare === undefined)
        return {
          level: 'unknown',
          text: words`The drop is not known: give the length of the wire.`,
        }
      const fact = words`The wire loses ${say(output.drop, 'V', 2)}, ${say(output.dropShare, '%', 2)} of the supply`
      if (output.dropShare <= dropWatch) return { level: 'pass', text: `${fact}.` }
      return output.dropShare <= dropStop
        ? { level: 'watch', text: words`${fact}: take a thicker wire.` }
        : { level: 'stop', text: words`${fact}: take a thicker or shorter wire.` }
    }
    const share = say(input.loading, '%', 2)
    return [
      {
        check: 'fit',
        ...fit(),
        threshold: words`running current at most ${share} of the fuse, the fuse at most what the wire carries (stop)`,
      },
      {
        check: 'start',
        ...start(),
        threshold: words`shortest opening time at least ${startMargin} times the start (watch), at least the start (stop)`,
      },
      {
        check: 'choice',
        ...choice(),
        threshold: words`two or more standard sizes (watch with one)`,
      },
      {
        check: 'relay',
        ...relay(),
        threshold: words`at most 70 % of the contact rating (watch), 100 % (stop)`,
      },
      { check: 'ignition', ...ignition(), threshold: words`at most 1 A added (watch), 3 A (stop)` },
      { check: 'drop', ...drop(), threshold: words`at most 3 % of the supply (watch), 5 % (stop)` },
    ]
  },
  working(input, output, say) {
    const need = input.running / input.loading
    const lines = [
      words`fuse ≥ I_run / f = ${say(input.running, 'A')} / ${say(input.loading, '%', 2)} = ${say(need, 'A')}`,
      words`fuse ≤ k I_wire = ${say(output.ampacity, 'A')}`,
    ]
    if (output.fuse !== undefined) lines.push(words`fuse = ${stamped(say, output.fuse)}`)
    if (output.fuse !== undefined && output.startRatio !== undefined)
      lines.push(
        `I_start / I_fuse = ${say(input.starting, 'A')} / ${stamped(say, output.fuse)} = ${say(output.startRatio, '%')}`,
      )
    if (input.length !== undefined)
      lines.push(
        `ΔU = I_run × 2 L × R′(T) = ${say(input.running, 'A')} × 2 × ${say(input.length, 'm')} × ${say(
          flexiblePerMetre(input.wire) * heated(input.wireTemperature),
          'mΩ/m',
        )} = ${say(output.drop, 'V')}`,
      )
    return lines
  },
  plot(input, output) {
    const size =
      output.fuse ??
      output.largestFuse ??
      ratingsBetween(input.style, input.running / input.loading, Infinity)[0] ??
      bladeRatings[input.style][0]
    const low = elementary.log(1.11)
    const high = elementary.log(6)
    const multiples = Array.from({ length: 41 }, (_, i) =>
      elementary.exp(low + ((high - low) * i) / 40),
    )
    return {
      title: words`Start surge against the fuse`,
      x: { label: words`Current`, of: 'current', units: ['A', 'A'], scale: 'log' },
      y: { label: words`Time`, of: 'time', units: ['s', 's'], scale: 'log' },
      series: [
        {
          name: words`may open from here`,
          line: 'solid',
          points: multiples.map((m) => [m * size, shortestOpening(m)] as const),
        },
        {
          name: words`open by here`,
          line: 'dashed',
          points: multiples.map((m) => [m * size, longestOpening(input.style, m)] as const),
        },
      ],
      marks: [
        ...(input.starting === undefined
          ? []
          : [
              {
                x: input.starting,
                y: input.startingTime,
                label: words`start`,
                kind: 'point',
              } as const,
            ]),
        ...(output.ampacity === undefined
          ? []
          : [
              {
                x: output.ampacity,
                y: input.startingTime,
                label: words`wire`,
                kind: 'limit-x',
              } as const,
            ]),
      ],
      caption: words`The start must lie below and left of the solid line.`,
    }
  },
  examples: [
    {
      name: '12 A at 80 % needs 15 A exactly',
      from: 'hand: 12 A / 0.80 = 15.0 A, a standard rating',
      inputs: {
        running: '12 A',
        starting: '14 A',
        wire: '2.0 mm²',
        switching: 'relay',
        contactRating: '30 A',
      },
      outputs: { fuse: '15 A', ampacity: '17.5 A' },
      findings: {
        fit: 'pass',
        start: 'pass',
        choice: 'watch',
        relay: 'pass',
        ignition: 'pass',
        drop: 'unknown',
      },
    },
    {
      name: '16 AWG at 105 °C in an engine space',
      from: '33 CFR 183.425, table 5: 25 A, and note 1: × 0.85, printed as 21 A in marine wire charts',
      inputs: { running: '8 A', wire: '16 AWG', insulation: '105C' },
      outputs: { ampacity: '21 A', largestFuse: '20 A' },
      tolerance: 0.012,
      why: 'The chart rounds 21.25 A down to 21 A.',
    },
    {
      name: 'coolant pump, 3.5 m each way',
      from: 'hand: 1.875 A; 2.6 A is 1.3 × 2 A, too near, so 3 A; 1.5 A × 7 m × 19.5 mΩ/m × 1.1965 = 0.245 V',
      inputs: {
        running: '1.5 A',
        starting: '2.6 A',
        wire: '1.0 mm²',
        length: '3.5 m',
        switching: 'relay',
        contactRating: '30 A',
      },
      outputs: { fuse: '3 A', ampacity: '8.75 A', drop: '0.245 V' },
      findings: {
        fit: 'pass',
        start: 'pass',
        choice: 'pass',
        relay: 'pass',
        ignition: 'pass',
        drop: 'pass',
      },
    },
    {
      name: 'radiator fan: 10 A is too small for its start',
      from: 'hand: 9.375 A; 18 A is 1.8 × 10 A, which may open in 0.19 s; 1.2 × 15 A lasts over 1 s',
      inputs: {
        running: '7.5 A',
        starting: '18 A',
        wire: '2.0 mm²',
        switching: 'ignition',
        length: '8 m',
      },
      outputs: { fuse: '15 A' },
      findings: { fit: 'pass', start: 'pass', relay: 'pass', ignition: 'stop', drop: 'stop' },
    },
    {
      name: 'threshold case: no fuse between motor and wire',
      from: 'threshold case',
      inputs: {
        running: '8 A',
        starting: '9 A',
        wire: '1.0 mm²',
        switching: 'relay',
        contactRating: '10 A',
      },
      outputs: {},
      findings: { fit: 'stop', start: 'stop', choice: 'stop', relay: 'watch' },
    },
    {
      name: 'threshold case: marginal start, worn switch, some drop',
      from: 'threshold case',
      inputs: {
        running: '3 A',
        starting: '6.6 A',
        wire: '0.65 mm²',
        switching: 'ignition',
        length: '2.5 m',
      },
      outputs: {},
      findings: { start: 'watch', ignition: 'watch', drop: 'watch' },
    },
  ],
})
