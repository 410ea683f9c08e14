/**
 * How tight a bolt may be, whether its thread holds, and whether the wrench reads the right unit.
 *
 * In: thread, class, surface, what it goes into, the lengths, the torque meant and the sheet's. Out:
 * torque, clamp, engagement. On a battery terminal the cell's sheet is the only torque there is: the
 * bolt would take five times what the thread in the aluminium does.
 */
import { defineCalculator, type Finding, type InputValues } from '../define.ts'
import { eitherWay } from '../either-way.ts'
import { nutFactorRows } from '../tables/nut-factors.ts'
import { boltClasses, threadDiameter, threadProofLoad } from '../threads.ts'
import { words } from '../../src/words/words.ts'

/** Clamp either way at one torque; trade note on nut factors. */
const scatter = 0.3
/** Of the proof load; common practice. */
const shareWatch = 0.8
/** Either way from the torque due; common practice. */
const torqueWatch = 0.1
/** Diameters in full thread; common practice. */
const needed = { nut: 0.8, steel: 1, aluminium: 1.5 } as const
const engagementStop = 0.8
/** lb·ft read as lb·in is 12 times; kgf·m read as N·m is 9.8 times. */
const slip = [9, 14] as const
const swapped = [1.28, 1.43] as const
const hair = 1 + 1e-9

const inputs = {
  thread: {
    type: 'choice',
    label: words`Thread`,
    help: words`Coarse thread.`,
    options: {
      M3: 'M3',
      M4: 'M4',
      M5: 'M5',
      M6: 'M6',
      M8: 'M8',
      M10: 'M10',
      M12: 'M12',
      M14: 'M14',
      M16: 'M16',
      M20: 'M20',
      '1/4-20': '1/4-20 UNC',
      '5/16-18': '5/16-18 UNC',
      '3/8-16': '3/8-16 UNC',
      '7/16-14': '7/16-14 UNC',
      '1/2-13': '1/2-13 UNC',
      '5/8-11': '5/8-11 UNC',
      '3/4-10': '3/4-10 UNC',
    },
    choice: true,
  },
  strength: {
    type: 'choice',
    label: words`Class or grade`,
    help: words`Stamped on the head; an unmarked metric bolt is taken as 4.6.`,
    options: boltClasses,
    choice: true,
  },
  surface: {
    type: 'choice',
    label: words`Surface`,
    help: words`Of the thread as it goes in.`,
    options: {
      dry: words`plain steel, dry`,
      zinc: words`zinc plated, dry`,
      oiled: words`oiled`,
      phosphate: words`phosphated and oiled`,
      grease: words`grease or anti-seize`,
      stainless: words`stainless, dry`,
    },
    choice: true,
  },
  factor: {
    type: 'number',
    label: words`Nut factor`,
    symbol: 'K',
    of: 'number',
    units: ['', ''],
    hard: [0.05, 0.6],
    usual: [0.1, 0.35],
    help: words`From the lubricant’s or coating’s sheet; else that of the surface.`,
    optional: true,
  },
  share: {
    type: 'number',
    label: words`Share of the proof load`,
    symbol: 's',
    of: 'fraction',
    units: ['%', '%'],
    hard: [10, 100],
    usual: [50, 90],
    help: words`75 % for a bolt that will come out again, 90 % for one that stays.`,
    assume: { value: 75, because: words`a bolt that will come out again` },
  },
  place: {
    type: 'choice',
    label: words`What it holds`,
    help: words`On a terminal of a cell or a part only that part’s sheet counts.`,
    options: { structure: words`steel or aluminium parts`, terminal: words`a lug on a terminal` },
    choice: true,
  },
  into: {
    type: 'choice',
    label: words`It goes into`,
    help: words`What the thread is cut in.`,
    options: {
      nut: words`a full nut of its class`,
      steel: words`a thread in steel`,
      aluminium: words`a thread in aluminium`,
    },
    choice: true,
  },
  sheet: {
    type: 'number',
    label: words`Torque on the part’s sheet`,
    symbol: 'T_sheet',
    of: 'torque',
    units: ['N·m', 'lb·ft'],
    hard: [0.1, 1000],
    usual: [2, 400],
    help: words`Wins over everything worked here.`,
    optional: true,
  },
  meant: {
    type: 'number',
    label: words`Torque you mean to use`,
    symbol: 'T_you',
    of: 'torque',
    units: ['N·m', 'lb·ft'],
    hard: [0.1, 20000],
    usual: [2, 400],
    help: words`As set on the wrench, with its unit.`,
    optional: true,
  },
  length: {
    type: 'number',
    label: words`Bolt length`,
    symbol: 'L',
    of: 'length',
    units: ['mm', 'in'],
    hard: [4, 500],
    usual: [8, 150],
    help: words`Under the head.`,
    choice: true,
    optional: true,
  },
  stack: {
    type: 'number',
    label: words`Stack`,
    symbol: 't',
    of: 'length',
    units: ['mm', 'in'],
    hard: [0, 400],
    usual: [1, 100],
    help: words`All lugs, plates and washers between head and thread.`,
    optional: true,
  },
  depth: {
    type: 'number',
    label: words`Thread there is`,
    symbol: 'h',
    of: 'length',
    units: ['mm', 'in'],
    hard: [1, 300],
    usual: [4, 60],
    help: words`Full thread in the hole, or the height of the nut.`,
    optional: true,
  },
} as const

type Inputs = InputValues<typeof inputs>

/** Table of surfaces: used, lowest, highest. */
function nutFactor(input: Inputs): number {
  return input.factor ?? nutFactorRows.find(([name]) => name === input.surface)?.[1] ?? NaN
}

function engagementOf({ length, stack, depth, into }: Inputs): number | undefined {
  if (length === undefined || stack === undefined) return undefined
  if (depth === undefined && into !== 'nut') return undefined
  return Math.max(0, Math.min(length - stack, depth ?? Infinity))
}

export const fastenerTorque = defineCalculator({
  id: 'fastener-torque',
  title: words`Fastener torque and engagement`,
  phase: 'workshop',
  purpose: words`How tight to make a bolt, whether enough thread holds it, and whether a torque is in the wrong unit.`,
  inputs,
  outputs: {
    torque: {
      type: 'number',
      label: words`Torque`,
      symbol: 'T',
      of: 'torque',
      units: ['N·m', 'lb·ft'],
    },
    inchPounds: {
      type: 'number',
      label: words`The same in inch-pounds`,
      symbol: 'T_in',
      of: 'torque',
      units: ['lb·in', 'lb·in'],
    },
    clamp: {
      type: 'number',
      label: words`Clamp at that torque`,
      symbol: 'F',
      of: 'force',
      units: ['kN', 'lbf'],
    },
    clampLow: {
      type: 'number',
      label: words`Clamp, at least`,
      symbol: 'F_min',
      of: 'force',
      units: ['kN', 'lbf'],
    },
    clampHigh: {
      type: 'number',
      label: words`Clamp, at most`,
      symbol: 'F_max',
      of: 'force',
      units: ['kN', 'lbf'],
    },
    proof: {
      type: 'number',
      label: words`Proof load of the bolt`,
      symbol: 'F_p',
      of: 'force',
      units: ['kN', 'lbf'],
    },
    proofShare: {
      type: 'number',
      label: words`Of the proof load`,
      symbol: 'F/F_p',
      of: 'fraction',
      units: ['%', '%'],
    },
    engagement: {
      type: 'number',
      label: words`Thread that holds`,
      symbol: 'e',
      of: 'length',
      units: ['mm', 'in'],
    },
    due: {
      type: 'number',
      label: words`Thread that should hold`,
      symbol: 'e_min',
      of: 'length',
      units: ['mm', 'in'],
    },
    shortest: {
      type: 'number',
      label: words`Shortest bolt for this stack`,
      symbol: 'L_min',
      of: 'length',
      units: ['mm', 'in'],
    },
    longest: {
      type: 'number',
      label: words`Longest bolt before it bottoms`,
      symbol: 'L_max',
      of: 'length',
      units: ['mm', 'in'],
    },
  },
  formula: [
    String.raw`T = K\,F\,d, \qquad F = s\,F_p`,
    String.raw`e = \min(L - t,\; h) \ge 1.0\,d \text{ in steel},\; 1.5\,d \text{ in aluminium}`,
  ],
  validity: [
    words`Coarse threads, new clean bolts, tightened once at the nut or the head with a wrench in order.`,
    words`The same torque gives a clamp 30 % either way; where that matters, measure the stretch or the turn.`,
    words`Joints with a gasket, a plastic or a soft part have their own torque on a sheet.`,
    words`Stainless is worked from the 0.2 % proof stress of class 70; dry stainless on stainless can seize.`,
    words`A bolt bottoms in a blind hole only; for a through hole give the thickness as the thread there is.`,
  ],
  checks: {
    sheet: { title: words`The part’s own sheet`, basis: 'the part’s own sheet' },
    unit: { title: words`Unit of the torque`, basis: 'common practice' },
    meant: { title: words`Torque meant`, basis: 'common practice' },
    preload: {
      title: words`Stress of the bolt`,
      basis: 'published: ISO 898-1 and SAE J429, proof loads; common practice for the share',
    },
    engagement: { title: words`Thread engagement`, basis: 'common practice' },
  },
  hazards: ['not-approval'],
  sources: [
    {
      title: 'ISO 898-1, mechanical properties of fasteners',
      at: 'proof loads, coarse pitch thread',
      trust: 'read',
    },
    { title: 'SAE J429, inch fasteners', at: 'proof loads of grades 2, 5 and 8', trust: 'read' },
    {
      title:
        'Nut factors by finish, a fastener supplier’s engineering data; trade note on their scatter',
      at: 'ranges of K; ±30 %',
      trust: 'read',
    },
    { title: 'ISO 3506-1, stainless fasteners', at: 'class 70: 450 MPa', trust: 'recalled' },
  ],
  compute(input) {
    const diameter = threadDiameter(input.thread)
    const factor = nutFactor(input)
    const proof = threadProofLoad(input.thread, input.strength)
    const worked =
      input.place === 'terminal' || proof === undefined
        ? undefined
        : factor * input.share * proof * diameter
    const torque = input.sheet ?? worked
    const clamp = torque === undefined ? undefined : torque / (factor * diameter)
    const due = needed[input.into] * diameter
    const { stack, depth } = input
    return {
      torque,
      inchPounds: torque,
      clamp,
      clampLow: clamp === undefined ? undefined : clamp * (1 - scatter),
      clampHigh: clamp === undefined ? undefined : clamp * (1 + scatter),
      proof,
      proofShare: clamp === undefined || proof === undefined ? undefined : clamp / proof,
      engagement: engagementOf(input),
      due,
      shortest: stack === undefined ? undefined : stack + due,
      longest:
        input.into === 'nut' || stack === undefined || depth === undefined
          ? undefined
          : stack + depth,
    }
  },
  findings(input, output, say) {
    type Said = Pick<Finding, 'level' | 'text'>
    const both = (torque: number | undefined) =>
      eitherWay(say(torque, 'N·m'), say(torque, 'lb·ft'), say(torque, 'lb·in'))
    const { torque: target, proofShare, engagement, due = 0 } = output
    const ratio =
      target === undefined || input.meant === undefined ? undefined : input.meant / target
    const within = ([low, high]: readonly [number, number], of: number) =>
      (of >= low && of <= high) || (1 / of >= low && 1 / of <= high)

    const sheet = (): Said =>
      input.place === 'terminal'
        ? input.sheet === undefined
          ? {
              level: 'unknown',
              text: words`A terminal takes the torque on its own sheet and no other: look it up. A bolt chart strips it.`,
            }
          : { level: 'pass', text: words`The sheet’s ${both(input.sheet)} is used.` }
        : {
            level: 'pass',
            text:
              input.sheet === undefined
                ? words`Not a terminal, and no sheet says otherwise: worked from the bolt.`
                : words`The sheet’s ${both(input.sheet)} is used, not the bolt’s.`,
          }
    const unit = (): Said => {
      if (target === undefined)
        return {
          level: 'unknown',
          text: words`There is no torque to hold one against: see the sheet.`,
        }
      if (ratio === undefined)
        return {
          level: 'pass',
          text: words`Set the wrench to ${both(target)}, and read its scale twice.`,
        }
      const fact = words`You mean ${both(input.meant)} where ${both(target)} is due`
      if (within(slip, ratio))
        return {
          level: 'stop',
          text: words`${fact}: about twelve times off. That looks like pound-inches and pound-feet mixed up (or kgf·m and N·m).`,
        }
      if (within(swapped, ratio))
        return {
          level: 'watch',
          text: words`${fact}: 1.36 times off. That looks like N·m and lb·ft mixed up; read the scale again.`,
        }
      return { level: 'pass', text: words`${fact}: no slip of units.` }
    }
    const meant = (): Said => {
      if (target === undefined)
        return {
          level: 'unknown',
          text: words`There is no torque to hold one against: see the sheet.`,
        }
      if (ratio === undefined)
        return { level: 'pass', text: words`No torque of yours is given; ${both(target)} is due.` }
      const off = ratio - 1
      const fact = words`You mean ${say(ratio, '%')} of the torque due`
      if (Math.abs(off) <= torqueWatch * hair) return { level: 'pass', text: `${fact}.` }
      const over = off > 0
      const stop = over && (input.sheet !== undefined || ratio * (proofShare ?? Infinity) > 1)
      return {
        level: stop ? 'stop' : 'watch',
        text: over
          ? stop
            ? words`${fact}: the thread or the bolt gives way. Set the wrench to ${both(target)}.`
            : words`${fact}: more than is due. Set the wrench to ${both(target)}.`
          : words`${fact}: it works loose. Set the wrench to ${both(target)}.`,
      }
    }
    const preload = (): Said => {
      if (output.proof === undefined)
        return {
          level: 'unknown',
          text: words`Metric threads have classes like 8.8 and inch threads have SAE grades: look at the head again.`,
        }
      if (proofShare === undefined)
        return {
          level: 'unknown',
          text: words`Without a torque there is no clamp to judge: see the sheet.`,
        }
      const fact = words`The clamp is ${say(output.clamp, 'kN')} (${say(output.clampLow, 'kN')} to ${say(output.clampHigh, 'kN')}), ${say(proofShare, '%')} of the proof load`
      if (proofShare <= shareWatch * hair) return { level: 'pass', text: `${fact}.` }
      return proofShare <= hair
        ? {
            level: 'watch',
            text: words`${fact}: a slippery thread takes it past proof. Use it once, or go back to 75 %.`,
          }
        : {
            level: 'stop',
            text: words`${fact}: the bolt stretches. Use a stronger bolt or less torque.`,
          }
    }
    const hold = (): Said => {
      if (engagement === undefined)
        return {
          level: 'unknown',
          text: words`Enter bolt length, stack and the depth of thread: ${say(due, 'mm')} of thread should hold.`,
        }
      const fact = words`${say(engagement, 'mm')} of thread holds; ${say(due, 'mm')} should`
      if (output.longest !== undefined && (input.length ?? -Infinity) > output.longest * hair)
        return {
          level: 'stop',
          text: words`The bolt is longer than the ${say(output.longest, 'mm')} there are: it bottoms, reads tight and clamps nothing. Use a shorter bolt.`,
        }
      if (engagement * hair >= due) return { level: 'pass', text: `${fact}.` }
      const cure =
        (input.depth ?? Infinity) * hair >= due
          ? words`Use a bolt of ${say(output.shortest, 'mm')} or longer.`
          : words`The hole has too little thread: use an insert, a nut behind, or more material.`
      return engagement * hair >= engagementStop * due
        ? { level: 'watch', text: `${fact}. ${cure}` }
        : { level: 'stop', text: `${words`${fact}: it strips.`} ${cure}` }
    }
    return [
      { check: 'sheet', ...sheet(), threshold: words`a terminal needs its own sheet` },
      {
        check: 'unit',
        ...unit(),
        threshold: words`not 9 to 14 times off either way (stop), 1.28 to 1.43 times (watch)`,
      },
      {
        check: 'meant',
        ...meant(),
        threshold: words`within 10 % of the torque due (watch); above it by more on a sheet, or past proof (stop)`,
      },
      {
        check: 'preload',
        ...preload(),
        threshold: words`at most 80 % of the proof load (watch), 100 % (stop)`,
      },
      {
        check: 'engagement',
        ...hold(),
        threshold: words`at least ${say(due, 'mm')} (watch), four fifths of it (stop), and not bottomed (stop)`,
      },
    ]
  },
  working(input, output, say) {
    const factor = nutFactor(input)
    const diameter = threadDiameter(input.thread)
    return [
      input.sheet === undefined
        ? input.place === 'terminal'
          ? words`T = the sheet’s; none given`
          : `F = s F_p = ${say(input.share, '%')} × ${say(output.proof, 'kN')} = ${say(output.clamp, 'kN')}`
        : `T = T_sheet = ${say(input.sheet, 'N·m')}; F = T / (K d) = ${say(output.clamp, 'kN')}`,
      `T = K F d = ${say(factor, '', 2)} × ${say(output.clamp, 'kN')} × ${say(diameter, 'mm')} = ${say(output.torque, 'N·m')}`,
      `e_min = ${say(needed[input.into], '', 2)} × ${say(diameter, 'mm')} = ${say(output.due, 'mm')}`,
      `e = min(L − t, h) = ${say(output.engagement, 'mm')}`,
    ]
  },
  moreHazards: (input) => (input.place === 'terminal' ? ['arc-and-short', 'high-voltage'] : []),
  examples: [
    {
      name: 'M10 of 10.9, dry, 75 % of proof',
      from: 'grounds-machine service manual, standard torque for dry, zinc plated and steel fasteners, metric: 73 ± 8 N·m, based on 75 % of the minimum proof load',
      inputs: {
        thread: 'M10',
        strength: '10.9',
        surface: 'zinc',
        place: 'structure',
        into: 'nut',
        meant: '73 N·m',
        length: '40 mm',
        stack: '25 mm',
      },
      outputs: { torque: '73 N·m', proof: '48.1 kN', due: '8.0 mm', shortest: '33.0 mm' },
      tolerance: 0.015,
      why: 'the manual rounds from inch units and allows 10 %',
      findings: { sheet: 'pass', unit: 'pass', meant: 'pass', preload: 'pass', engagement: 'pass' },
    },
    {
      name: '3/4-10, grade 5, 85 % of proof',
      from: 'Wentzell, machine design, example 6.1, p. 120: 24 131.5 lbf, 3619.7 lb·in',
      inputs: {
        thread: '3/4-10',
        strength: 'grade-5',
        surface: 'dry',
        share: '85 %',
        place: 'structure',
        into: 'nut',
        meant: '3619.7 lb·ft',
      },
      outputs: { clamp: '24131.5 lbf', torque: '3619.7 lb·in', inchPounds: '408.97 N·m' },
      tolerance: 0.0005,
      why: 'the standard rounds the proof load to 28 400 lbf; the book multiplies 85 ksi by 0.334 in²',
      findings: { unit: 'stop', preload: 'watch', engagement: 'unknown' },
    },
    {
      name: '1/2-13, grade 2, dry',
      from: 'hardware supplier’s torque chart, SAE J429 grade 2: 48.8 lb·ft, clamping force 5853 lbf (75 % of 55 000 psi)',
      inputs: {
        thread: '1/2-13',
        strength: 'grade-2',
        surface: 'dry',
        place: 'structure',
        into: 'steel',
        meant: '36 lb·ft',
        length: '2 in',
        stack: '1 in',
        depth: '3/4 in',
      },
      outputs: { torque: '48.8 lb·ft', clamp: '5853 lbf' },
      tolerance: 0.0015,
      why: 'the standard rounds the proof load to 7800 lbf',
      findings: { unit: 'watch', meant: 'watch', engagement: 'stop' },
    },
    {
      name: 'threshold case: 18 lb·ft from a bolt chart on a cell terminal of 85 lb·in',
      from: 'threshold case; M8 into aluminium: 6 mm of the 12 mm that should hold',
      inputs: {
        thread: 'M8',
        strength: '8.8',
        surface: 'oiled',
        place: 'terminal',
        into: 'aluminium',
        sheet: '85 lb·in',
        meant: '18 lb·ft',
        length: '16 mm',
        stack: '10 mm',
        depth: '12 mm',
      },
      outputs: { due: '12.0 mm', engagement: '6.0 mm' },
      findings: { sheet: 'pass', meant: 'stop', preload: 'pass', engagement: 'stop' },
    },
    {
      name: 'threshold case: a terminal without its sheet, and a metric class on an inch bolt',
      from: 'threshold case',
      inputs: {
        thread: '3/8-16',
        strength: '8.8',
        surface: 'grease',
        place: 'terminal',
        into: 'aluminium',
        meant: '9 N·m',
        length: '25 mm',
        stack: '12 mm',
        depth: '14 mm',
      },
      outputs: { torque: 'cannot tell' },
      findings: {
        sheet: 'unknown',
        unit: 'unknown',
        meant: 'unknown',
        preload: 'unknown',
        engagement: 'watch',
      },
    },
  ],
})
