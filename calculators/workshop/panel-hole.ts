/**
 * What hole to make in a panel: for a grommet, a cable gland, a bolt or a thread.
 *
 * In: what goes through, and the part in the hole. Out: bundle, hole, the nearest drill. The hole of
 * a grommet is the bottom of its groove, neither its bore nor its outside.
 */
import { defineCalculator, type Finding, type InputValues } from '../define.ts'
import { eitherWay } from '../either-way.ts'
import { bundleRows } from '../tables/bundle-diameters.ts'
import { clearanceHoles } from '../tables/clearance-holes.ts'
import { glandHoles } from '../tables/gland-holes.ts'
import { heeding, wrongWay } from '../wrong-way.ts'
import { words } from '../../src/words/words.ts'

/** Bundle over the grommet's bore; common practice. */
const fillWatch = 0.9
/** Trade estimate for wires of different sizes. */
const mixed = 1.2
/** m; common practice, and EN 50262 for glands. */
const looseness = {
  grommet: [-0.2e-3, 0.5e-3, 1e-3],
  gland: [-0.4e-3, 0.2e-3, 0.5e-3],
  bolt: [0, 0.6e-3, 1.5e-3],
  tapped: [-0.05e-3, 0.15e-3, 0.3e-3],
} as const
/** Thread in the panel, in diameters; common practice. */
const threadDue = { steel: 1, aluminium: 1.5 } as const
const hair = 1 + 1e-9
const inch = 0.0254

const length = (label: string, symbol: string, help: string, most: number) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'length',
    units: ['mm', 'in'],
    hard: [0.1, most],
    usual: [0.5, most / 2],
    help,
  }) as const

const inputs = {
  purpose: {
    type: 'choice',
    label: words`The hole is for`,
    help: words`What sits in it.`,
    options: {
      grommet: words`a rubber grommet`,
      gland: words`a metric cable gland`,
      bolt: words`a bolt to pass through`,
      tapped: words`a thread to be cut`,
    },
    choice: true,
  },
  wires: {
    type: 'list',
    label: words`Wires through it`,
    row: words`wire`,
    help: words`Outside diameters, over the insulation, with any sleeve.`,
    rows: [1, 30],
    optional: true,
    fields: {
      name: { type: 'text', label: words`Wire`, help: words`What it is.` },
      outside: length(words`Outside diameter`, 'd', words`Over the insulation.`, 60),
      count: {
        type: 'number',
        label: words`How many`,
        symbol: 'n',
        of: 'number',
        units: ['', ''],
        hard: [1, 61],
        usual: [1, 30],
        help: words`Alike.`,
        assume: { value: 1, because: words`one` },
      },
    },
  },
  panel: {
    ...length(words`Panel`, 't', words`Thickness where the hole is.`, 20),
    usual: [0.6, 6],
  },
  bore: { ...length(words`Grommet, bore`, 'd_b', words`The hole through it.`, 80), optional: true },
  groove: {
    ...length(words`Grommet, groove`, 'd_g', words`Diameter at the bottom of the groove.`, 100),
    optional: true,
  },
  slot: {
    ...length(words`Grommet, groove width`, 'w', words`Panel thickness it is made for.`, 20),
    usual: [0.6, 6],
    optional: true,
  },
  gland: {
    type: 'choice',
    label: words`Gland`,
    help: words`Metric size; left out, the smallest that usually takes the cable.`,
    options: {
      M12: 'M12',
      M16: 'M16',
      M20: 'M20',
      M25: 'M25',
      M32: 'M32',
      M40: 'M40',
      M50: 'M50',
      M63: 'M63',
    },
    choice: true,
    optional: true,
  },
  least: {
    ...length(words`Gland, thinnest cable`, 'd_1', words`On its sheet.`, 60),
    optional: true,
  },
  most: {
    ...length(words`Gland, thickest cable`, 'd_2', words`On its sheet.`, 60),
    optional: true,
  },
  thread: {
    type: 'choice',
    label: words`Thread`,
    help: words`Of the bolt or to be cut, coarse.`,
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
    },
    choice: true,
    optional: true,
  },
  fit: {
    type: 'choice',
    label: words`Fit`,
    help: words`Coarse where parts do not quite meet.`,
    options: { fine: words`fine`, medium: words`medium`, coarse: words`coarse` },
    assume: { value: 'medium', because: words`general work` },
    choice: true,
  },
  metal: {
    type: 'choice',
    label: words`Panel of`,
    help: words`For a thread cut in it.`,
    options: { steel: words`steel`, aluminium: words`aluminium` },
    assume: { value: 'steel', because: words`bodies mostly are` },
    choice: true,
  },
  tool: {
    type: 'choice',
    label: words`Made with`,
    help: words`Step drills make round holes in thin sheet.`,
    options: {
      'step-metric': words`metric step drill, 4 to 40 mm in steps of 2 mm`,
      'step-inch': words`inch step drill, 3/16 to 1 3/8 in in steps of 1/16 in`,
      twist: words`twist drill or hole saw, to 0.1 mm`,
    },
    choice: true,
  },
} as const

type Inputs = InputValues<typeof inputs>
type Purpose = Inputs['purpose']

const cell = (
  rows: readonly (readonly (number | string | null)[])[],
  name: string | undefined,
  column: number,
): number | undefined => {
  const value = rows.find(([first]) => first === name)?.[column]
  return typeof value === 'number' ? value / 1000 : undefined
}

interface Bundle {
  readonly across: number
  readonly count: number
  readonly kind: 'packed' | 'bound' | 'estimate'
}

/** m; undefined without wires or with too many. */
function bundleOf({ wires }: Inputs): Bundle | undefined {
  const all = (wires ?? []).flatMap(({ outside, count }) =>
    Array.from({ length: Math.round(count) }, () => outside),
  )
  const [thickest = 0, second = 0] = [...all].sort((a, b) => b - a)
  const row = bundleRows.find(([most]) => most >= all.length)
  if (all.length === 0 || row === undefined) return undefined
  const [count, ratio] = row
  const bound = thickest * ratio
  if (all.every((outside) => outside === thickest))
    return {
      across: bound,
      count: all.length,
      kind: count === all.length || all.length === 6 ? 'packed' : 'bound',
    }
  const estimate = mixed * Math.sqrt(all.reduce((sum, outside) => sum + outside ** 2, 0))
  return {
    across: Math.min(bound, Math.max(estimate, thickest + second)),
    count: all.length,
    kind: 'estimate',
  }
}

function glandOf(input: Inputs, bundle: number | undefined): string | undefined {
  if (input.gland !== undefined) return input.gland
  if (bundle === undefined) return undefined
  return glandHoles.rows
    .map(([name]) => String(name))
    .find(
      (name) =>
        (cell(glandHoles.rows, name, 2) ?? Infinity) <= bundle * hair &&
        (cell(glandHoles.rows, name, 3) ?? NaN) * hair >= bundle,
    )
}

/** Least and most that may go through, m. */
function room(input: Inputs, gland: string | undefined): readonly (number | undefined)[] {
  if (input.purpose === 'grommet') return [0, input.bore]
  return [
    input.least ?? cell(glandHoles.rows, gland, 2),
    input.most ?? cell(glandHoles.rows, gland, 3),
  ]
}

const fits = { fine: 2, medium: 3, coarse: 4 } as const

function holeOf(input: Inputs, gland: string | undefined): number | undefined {
  switch (input.purpose) {
    case 'grommet':
      return input.groove
    case 'gland':
      return cell(glandHoles.rows, gland, 1)
    case 'bolt':
      return cell(clearanceHoles.rows, input.thread, fits[input.fit])
    case 'tapped':
      return cell(clearanceHoles.rows, input.thread, 5)
  }
}

const sizes = {
  'step-metric': {
    step: 2e-3,
    least: 4e-3,
    most: 40e-3,
  },
  'step-inch': {
    step: inch / 16,
    least: (3 * inch) / 16,
    most: (22 * inch) / 16,
  },
  twist: {
    step: 0.1e-3,
    least: 0.1e-3,
    most: 0.15,
  },
} as const

/** The size of the tool nearest to the hole; a bolt needs the next one up. */
function drillOf(tool: Inputs['tool'], purpose: Purpose, hole: number): number | undefined {
  const { step, least, most } = sizes[tool]
  const steps = purpose === 'bolt' ? Math.ceil(hole / step - 1e-6) : Math.round(hole / step)
  const size = Math.max(steps * step, least)
  return size > most * hair ? undefined : size
}

export const panelHole = defineCalculator({
  id: 'panel-hole',
  title: words`Holes in panels`,
  phase: 'workshop',
  purpose: words`The hole for a grommet, a gland, a bolt or a thread, the drill for it, and whether the wires go through.`,
  inputs,
  outputs: {
    bundle: {
      type: 'number',
      label: words`Wires together`,
      symbol: 'D_w',
      of: 'length',
      units: ['mm', 'in'],
    },
    gland: { type: 'text', label: words`Gland` },
    hole: {
      type: 'number',
      label: words`Hole due`,
      symbol: 'D',
      of: 'length',
      units: ['mm', 'in'],
    },
    drill: {
      type: 'number',
      label: words`Nearest size of the tool`,
      symbol: 'D_d',
      of: 'length',
      units: ['mm', 'in'],
    },
    over: {
      type: 'number',
      label: words`Larger than due`,
      symbol: 'D_d − D',
      of: 'length',
      units: ['mm', 'in'],
    },
    fill: {
      type: 'number',
      label: words`Of the opening taken`,
      symbol: 'D_w/d_b',
      of: 'fraction',
      units: ['%', '%'],
    },
  },
  formula: [
    String.raw`D_w = k_n\,d, \qquad k_2 = 2,\; k_3 = 1 + \tfrac{2}{\sqrt3},\; k_4 = 1 + \sqrt2,\; k_7 = 3,\; k_{19} = 5`,
    String.raw`D_w \approx 1.2 \sqrt{\textstyle\sum d^2} \text{ for different wires}`,
  ],
  validity: [
    words`Equal wires: exact for 1 to 13, and for full rings of 19, 37 and 61; between those the next row, which they certainly fit.`,
    words`Different wires: the trade estimate, never less than the two thickest side by side, never more than as many of the thickest.`,
    words`Ties, tape and a bend at the hole need room as well.`,
    words`Which cable a gland grips is on its sheet only.`,
  ],
  checks: {
    through: { title: words`Wires go through`, basis: 'common practice; the gland’s own sheet' },
    drill: {
      title: words`The tool makes that hole`,
      basis: 'published: EN 50262, table 1, for glands; common practice',
    },
    panel: { title: words`Fits the panel`, basis: 'common practice' },
  },
  hazards: ['wiring-fire', 'welding-near-fuel'],
  sources: [
    { title: 'ISO 273, clearance holes for bolts and screws', edition: '1979', trust: 'read' },
    { title: 'EN 50262, metric cable glands', at: 'table 1, mounting holes', trust: 'read' },
    {
      title: 'Packing of equal circles in a circle (Graham, Pirl, Melissen)',
      at: 'best arrangements up to 11',
      trust: 'read',
    },
  ],
  compute(input) {
    const bundle = bundleOf(input)?.across
    const gland = input.purpose === 'gland' ? glandOf(input, bundle) : undefined
    const hole = holeOf(input, gland)
    const drill = hole === undefined ? undefined : drillOf(input.tool, input.purpose, hole)
    const passes = input.purpose === 'grommet' || input.purpose === 'gland'
    const most = passes ? room(input, gland)[1] : undefined
    return {
      bundle,
      gland: input.purpose === 'gland' ? gland : undefined,
      hole,
      drill,
      over: hole === undefined || drill === undefined ? undefined : drill - hole,
      fill: bundle === undefined || most === undefined ? undefined : bundle / most,
    }
  },
  findings(input, output, say) {
    type Said = Pick<Finding, 'level' | 'text'>
    const { purpose } = input
    const { bundle, hole, drill, over = 0 } = output
    const kind = bundleOf(input)?.kind
    const mm = (value: number | undefined) => eitherWay(say(value, 'mm'), say(value, 'in'))
    const through = (): Said => {
      if (purpose === 'bolt' || purpose === 'tapped')
        return { level: 'pass', text: words`No wires go through this hole.` }
      if (bundle === undefined)
        return {
          level: 'unknown',
          text:
            (input.wires ?? []).length === 0
              ? words`Enter the wires.`
              : words`More than 61 wires: split the loom.`,
        }
      const [least = 0, most] = room(input, output.gland)
      const fact =
        kind === 'packed'
          ? words`The wires are ${mm(bundle)} across`
          : kind === 'bound'
            ? words`The wires are at most ${mm(bundle)} across`
            : words`The wires are about ${mm(bundle)} across`
      if (most === undefined)
        return {
          level: 'unknown',
          text:
            purpose === 'grommet'
              ? words`${fact}: enter the grommet’s bore.`
              : words`${fact}: no gland of the list takes that. Split them, or enter the range on the gland’s sheet.`,
        }
      if (bundle > most * hair)
        return {
          level: 'stop',
          text: words`${fact}; ${say(most, 'mm')} is the most that goes through. Take a larger one.`,
        }
      if (bundle < least / hair)
        return {
          level: 'stop',
          text: words`${fact}; the gland grips nothing under ${say(least, 'mm')}. Take a smaller one.`,
        }
      if (purpose === 'gland' && bundleOf(input)?.count !== 1)
        return {
          level: 'watch',
          text: words`${fact} and fit, but a gland seals one round cable: water runs in between single wires. Use an insert with one hole each.`,
        }
      return purpose === 'grommet' && bundle > fillWatch * most * hair
        ? {
            level: 'watch',
            text: words`${fact}, ${say(output.fill, '%')} of the bore: they jam and chafe. Take a larger one.`,
          }
        : { level: 'pass', text: words`${fact} and go through ${say(most, 'mm')}.` }
    }
    const groove =
      purpose === 'grommet'
        ? wrongWay(
            say,
            'mm',
            [words`grommet’s bore`, input.bore],
            [words`diameter in its groove`, input.groove],
          )
        : undefined
    const range =
      purpose === 'gland'
        ? wrongWay(
            say,
            'mm',
            [words`thinnest cable of the gland`, input.least],
            [words`thickest`, input.most],
          )
        : groove
    const [low, high, stop] = looseness[purpose]
    const made = (): Said => {
      if (hole === undefined)
        return {
          level: 'unknown',
          text:
            purpose === 'grommet'
              ? words`Measure the grommet at the bottom of its groove: that is the hole.`
              : purpose === 'gland'
                ? words`Choose a gland.`
                : words`Choose the thread.`,
        }
      if (drill === undefined)
        return {
          level: 'stop',
          text: words`The hole is ${mm(hole)}, larger than that drill goes: use a punch or a hole saw.`,
        }
      const fact =
        over < 0
          ? words`The hole is ${mm(hole)}; the nearest size is ${mm(drill)}, ${say(-over, 'mm')} smaller`
          : words`The hole is ${mm(hole)}; the nearest size is ${mm(drill)}, ${say(over, 'mm')} larger`
      const bad = over < low - 1e-9 || over > high + 1e-9
      if (!bad) return { level: 'pass', text: `${fact}.` }
      if (over < 0)
        return {
          level: 'watch',
          text: words`${fact}: open it with a file or a reamer, or use another tool.`,
        }
      return over > stop + 1e-9
        ? {
            level: 'stop',
            text: words`${fact}: too loose. Stop a step earlier and open it up, or use another tool.`,
          }
        : {
            level: 'watch',
            text: words`${fact}: a little loose. Stop a step earlier and open it up if it matters.`,
          }
    }
    const panel = (): Said => {
      if (purpose === 'grommet') {
        if (input.slot === undefined)
          return {
            level: 'unknown',
            text: words`Measure the width of the groove: it must match the panel.`,
          }
        const fact = words`The groove is ${say(input.slot, 'mm')} wide and the panel ${say(input.panel, 'mm')}`
        const ratio = input.panel / input.slot
        if (ratio > 1.2 * hair)
          return {
            level: 'stop',
            text: words`${fact}: it will not stay in. Take one for that panel.`,
          }
        return ratio * hair >= 0.7 && ratio <= 1.05 * hair
          ? { level: 'pass', text: `${fact}.` }
          : {
              level: 'watch',
              text:
                ratio < 1
                  ? words`${fact}: it sits loose. Take one for that panel.`
                  : words`${fact}: it sits tight. Take one for that panel.`,
            }
      }
      if (purpose === 'tapped') {
        const diameter = Number((input.thread ?? 'M0').slice(1)) / 1000
        if (diameter === 0) return { level: 'unknown', text: words`Choose the thread.` }
        const due = threadDue[input.metal] * diameter
        const fact = words`The panel gives ${say(input.panel, 'mm')} of thread; ${say(due, 'mm')} should hold`
        return input.panel * hair >= due
          ? { level: 'pass', text: `${fact}.` }
          : {
              level: input.panel * hair >= 0.8 * due ? 'watch' : 'stop',
              text: words`${fact}: use a threaded insert, a weld nut or a bolt with a nut behind.`,
            }
      }
      return {
        level: 'pass',
        text: words`The panel is ${say(input.panel, 'mm')}: anything does here.`,
      }
    }
    return [
      {
        check: 'through',
        ...heeding(through(), range),
        threshold:
          purpose === 'grommet'
            ? words`at most 90 % of the bore across (watch), all of it (stop)`
            : words`within the range of the gland (stop), one round cable (watch)`,
      },
      {
        check: 'drill',
        ...heeding(made(), groove),
        threshold: words`${say(low, 'mm')} to ${say(high, 'mm')} over the hole due (watch), ${say(stop, 'mm')} (stop)`,
      },
      {
        check: 'panel',
        ...panel(),
        threshold:
          purpose === 'tapped'
            ? words`at least 1.0 diameters of thread in steel, 1.5 in aluminium (watch), four fifths (stop)`
            : words`panel 0.7 to 1.05 of the groove (watch), at most 1.2 (stop)`,
      },
    ]
  },
  working(input, output, say) {
    const bundle = bundleOf(input)
    return [
      ...(bundle === undefined
        ? []
        : [
            `n = ${bundle.count}: D_w ${bundle.kind === 'packed' ? '=' : bundle.kind === 'bound' ? '≤' : '≈'} ${say(bundle.across, 'mm')}`,
          ]),
      `D = ${say(output.hole, 'mm')}; D_d − D = ${say(output.drill, 'mm')} − ${say(output.hole, 'mm')} = ${say(output.over, 'mm')}`,
    ]
  },
  examples: [
    {
      name: 'M8, medium, through 3 mm',
      from: 'ISO 273 (1979), medium series: 9.0 mm',
      inputs: { purpose: 'bolt', thread: 'M8', panel: '3 mm', tool: 'step-metric' },
      outputs: { hole: '9.0 mm', drill: '10 mm' },
      findings: { through: 'pass', drill: 'watch', panel: 'pass' },
    },
    {
      name: 'M20 gland, one cable of 9 mm',
      from: 'EN 50262, table 1: 20.5 mm, +0.2/−0.4 mm',
      inputs: {
        purpose: 'gland',
        wires: [{ name: 'cable', outside: '9 mm' }],
        gland: 'M20',
        panel: '2 mm',
        tool: 'twist',
      },
      outputs: { hole: '20.5 mm', gland: 'M20' },
      findings: { through: 'pass', drill: 'pass' },
    },
    {
      name: 'Ten wires of 2 mm in a grommet',
      from: 'U. Pirl 1969 (also OEIS A281115): ten unit circles need a radius of 3.81302563',
      inputs: {
        purpose: 'grommet',
        wires: [{ name: 'loom', outside: '2 mm', count: '10' }],
        bore: '8 mm',
        groove: '11 mm',
        slot: '1.6 mm',
        panel: '1 mm',
        tool: 'step-metric',
      },
      outputs: { bundle: '7.626 mm', hole: '11 mm' },
      findings: { through: 'watch', drill: 'watch', panel: 'watch' },
    },
    {
      name: 'Seven wires of 2.4 mm',
      from: 'geometry: six round one, 3 × 2.4 mm = 7.2 mm',
      inputs: {
        purpose: 'grommet',
        wires: [{ name: 'loom', outside: '2.4 mm', count: '7' }],
        bore: '10 mm',
        groove: '14 mm',
        slot: '1.5 mm',
        panel: '1.5 mm',
        tool: 'step-metric',
      },
      outputs: { bundle: '7.2 mm', drill: '14 mm', fill: '72 %' },
      findings: { through: 'pass', drill: 'pass', panel: 'pass' },
    },
    {
      name: 'M6 thread in 2 mm aluminium',
      from: 'two workshop charts: tap drill 5.0 mm',
      inputs: { purpose: 'tapped', thread: 'M6', panel: '2 mm', metal: 'aluminium', tool: 'twist' },
      outputs: { hole: '5.0 mm' },
      findings: { drill: 'pass', panel: 'stop' },
    },
    {
      name: 'threshold case: wires thicker than the bore, hole larger than the drill',
      from: 'threshold case',
      inputs: {
        purpose: 'grommet',
        wires: [
          { name: 'traction', outside: '14 mm', count: '2' },
          { name: 'sense', outside: '3 mm' },
        ],
        bore: '25 mm',
        groove: '45 mm',
        panel: '1 mm',
        tool: 'step-metric',
      },
      outputs: { bundle: '28 mm' },
      findings: { through: 'stop', drill: 'stop', panel: 'unknown' },
    },
  ],
})
