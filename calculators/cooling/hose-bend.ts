/**
 * A hose round a corner: does it kink, how long must it be, which clamp goes on.
 *
 * Metres and radians. The radius is that of the inside of the bend, where a hose kinks and which
 * makers state; the length runs along its middle. A clamp is sized on the hose as it sits stretched
 * over the spigot.
 */
import { defineCalculator, type InputValues, type Level } from '../define.ts'
import { hoseBendRadii } from '../tables/hose-bend-radii.ts'
import { hoseClamps } from '../tables/hose-clamps.ts'
import { words } from '../../src/words/words.ts'

const inch = 0.0254
/** Inside radius over outside diameter: SAE J20 bends cold hose round ten diameters. */
const plainPass = 5
/** Common practice. */
const plainStop = 3
/** Of the way along the middle; naval training manual. */
const slackFrom = 0.05
const slackTo = 0.08
/** Spigot over bore; common practice. */
const stretchMost = 0.1
/** m between supports; naval training manual, 24 in. */
const supportEvery = 24 * inch
/** Of a clamp's range, at either end; common practice. */
const clampReserve = 0.1
/** A metric bore counts as the inch size it is sold as. */
const nearly = 1.02

const inputs = {
  kind: {
    type: 'choice',
    label: words`Hose`,
    help: words`Decides how tight it may be bent when its sheet is missing.`,
    options: {
      plain: words`coolant hose, textile-reinforced`,
      braid: words`rubber hose with one wire braid`,
    },
    choice: true,
  },
  outside: {
    type: 'number',
    label: words`Outside diameter`,
    symbol: 'D',
    of: 'length',
    units: ['mm', 'in'],
    hard: [4, 150],
    usual: [10, 60],
    help: words`Of the hose, measured.`,
    choice: true,
  },
  bore: {
    type: 'number',
    label: words`Bore`,
    symbol: 'd',
    of: 'length',
    units: ['mm', 'in'],
    hard: [2, 100],
    usual: [6, 45],
    help: words`Inside diameter.`,
    choice: true,
  },
  radius: {
    type: 'number',
    label: words`Radius at the inside of the bend`,
    symbol: 'R',
    of: 'length',
    units: ['mm', 'in'],
    hard: [5, 5000],
    usual: [30, 1000],
    help: words`As it lies; half the diameter of the round thing that fits in the corner.`,
    choice: true,
  },
  angle: {
    type: 'number',
    label: words`Bend`,
    symbol: 'α',
    of: 'angle',
    units: ['°', '°'],
    hard: [0, 720],
    usual: [15, 270],
    help: words`All bends of this radius together.`,
    choice: true,
  },
  straight: {
    type: 'number',
    label: words`Straight parts`,
    symbol: 'L_s',
    of: 'length',
    units: ['mm', 'in'],
    hard: [0, 20_000],
    usual: [0, 5000],
    help: words`With what sits on the spigots.`,
  },
  cut: {
    type: 'number',
    label: words`Hose is cut to`,
    symbol: 'L',
    of: 'length',
    units: ['mm', 'in'],
    hard: [10, 30_000],
    usual: [100, 6000],
    help: words`Its length on the bench.`,
    choice: true,
    optional: true,
  },
  sheetRadius: {
    type: 'number',
    label: words`Least radius from its sheet`,
    symbol: 'R_s',
    of: 'length',
    units: ['mm', 'in'],
    hard: [5, 5000],
    usual: [20, 500],
    help: words`Wins over any table.`,
    optional: true,
  },
  spigot: {
    type: 'number',
    label: words`Spigot`,
    symbol: 'd_s',
    of: 'length',
    units: ['mm', 'in'],
    hard: [2, 110],
    usual: [6, 50],
    help: words`Outside diameter behind the bead, where the clamp sits.`,
    choice: true,
    optional: true,
  },
} as const

type Inputs = InputValues<typeof inputs>

/** Least inside radius and who says so. */
function least({ kind, bore, outside, sheetRadius }: Inputs) {
  if (sheetRadius !== undefined) return { radius: sheetRadius, by: words`its sheet` }
  if (kind === 'plain') return { radius: plainPass * outside, by: words`five diameters, SAE J20` }
  const row = hoseBendRadii.rows.find(([, listed]) => bore <= listed * inch * nearly)
  return row && { radius: row[3] * inch, by: words`AC 43.13-1B for size ${row[0]}` }
}

function overSpigot({ outside, bore, spigot }: Inputs): number | undefined {
  if (spigot === undefined || bore >= outside) return undefined
  // Rubber keeps its volume: the wall thins as the hose is stretched.
  return Math.sqrt(outside ** 2 - bore ** 2 + Math.max(spigot, bore) ** 2)
}

const clampsFor = (diameter: number) =>
  hoseClamps.rows
    .map(([size, closes, opens]) => ({
      size,
      closed: diameter - closes / 1000,
      opens: opens / 1000 - diameter,
    }))
    .filter(({ closed, opens }) => closed >= 0 && opens >= 0)

/** The smallest with a reserve at both ends; else, at the ends of the table, the one that reaches. */
function bestClamp(diameter: number) {
  const share = ({ closed, opens }: { closed: number; opens: number }) =>
    Math.min(closed, opens) / (closed + opens)
  const fitting = clampsFor(diameter)
  const best = fitting.find((clamp) => share(clamp) >= clampReserve) ?? fitting[0]
  return best && { ...best, share: share(best) }
}

const millimetres = (label: string, symbol: string) =>
  ({ type: 'number', label, symbol, of: 'length', units: ['mm', 'in'] }) as const

export const hoseBend = defineCalculator({
  id: 'hose-bend',
  title: words`Hose bend, length and clamp`,
  phase: 'cooling',
  purpose: words`Whether a hose can follow its route without kinking, how long to cut it, how often to support it, and which clamp fits.`,
  inputs,
  outputs: {
    leastRadius: millimetres(words`Least radius`, 'R_min'),
    radiusInHand: millimetres(words`Radius in hand`, 'R − R_min'),
    arc: millimetres(words`Along the bend`, 'L_b'),
    way: millimetres(words`Way along the middle`, 'L_w'),
    cutFrom: millimetres(words`Cut to at least`, 'L_1'),
    cutTo: millimetres(words`and at most`, 'L_2'),
    slack: { type: 'number', label: words`Slack`, symbol: 's', of: 'fraction', units: ['%', '%'] },
    supports: {
      type: 'number',
      label: words`Supports between the ends`,
      symbol: 'n',
      of: 'number',
      units: ['', ''],
      exact: true,
    },
    stretch: {
      type: 'number',
      label: words`Stretched onto the spigot`,
      symbol: 'd_s/d − 1',
      of: 'fraction',
      units: ['%', '%'],
    },
    clamped: millimetres(words`Diameter under the clamp`, 'D_c'),
    clamp: { type: 'text', label: words`Clamp, SAE size` },
    clampCloses: millimetres(words`It still closes by`, 'Δ_1'),
    clampOpens: millimetres(words`It still opens by`, 'Δ_2'),
    clamps: { type: 'text', label: words`All sizes that reach` },
  },
  formula: [
    String.raw`L_b = \left(R + \tfrac{D}{2}\right)\alpha, \qquad L_w = L_b + L_s, \qquad L_{1,2} = L_w\,(1.05,\ 1.08)`,
    String.raw`D_c = \sqrt{D^2 - d^2 + d_s^2}`,
  ],
  validity: [
    words`For plain coolant hose nobody publishes one radius for all: its sheet comes first. Five diameters is what SAE J20 bends it to when cold, as summarised publicly.`,
    words`The table for wire braid is read as the radius at the inside of the bend.`,
    words`A hose kinks sooner hot, under suction, twisted, or where a bend starts right at a spigot: leave it two diameters of straight.`,
    words`Moulded bends are not bent further and need none of this.`,
  ],
  checks: {
    bend: {
      title: words`Bend radius`,
      basis:
        'the hose’s own sheet; published: AC 43.13-1B, table 9-3 (wire braid), SAE J20 cold flexing (plain); common practice (3 diameters)',
    },
    slack: {
      title: words`Slack`,
      basis: 'published: US Navy training manual (14105), 5 to 8 % of the length',
    },
    fit: { title: words`Hose on the spigot`, basis: 'common practice' },
    clamp: { title: words`Clamp`, basis: 'published: SAE J1508; common practice (reserve)' },
  },
  hazards: ['hot-coolant', 'leak-onto-high-voltage'],
  sources: [
    {
      title: 'FAA AC 43.13-1B, Aircraft Inspection and Repair',
      at: 'table 9-3 (MIL-H-8794) and figure 9-9',
      trust: 'read',
    },
    { title: 'SAE J1508, hose clamps', at: 'type F sizes, as reproduced', trust: 'read' },
    { title: 'US Navy training manual 14105', at: 'installation of flexible hose', trust: 'read' },
    { title: 'SAE J20, cold flexibility test, as summarised publicly', trust: 'read' },
  ],
  compute(input) {
    const { radius, outside, angle, straight, cut, spigot, bore } = input
    const limit = least(input)?.radius
    const arc = (radius + outside / 2) * angle
    const way = arc + straight
    const clamped = overSpigot(input)
    const best = clamped === undefined ? undefined : bestClamp(clamped)
    const sizes = clamped === undefined ? [] : clampsFor(clamped)
    return {
      leastRadius: limit,
      radiusInHand: limit === undefined ? undefined : radius - limit,
      arc,
      way,
      cutFrom: way * (1 + slackFrom),
      cutTo: way * (1 + slackTo),
      slack: cut === undefined || way === 0 ? undefined : cut / way - 1,
      supports: Math.max(0, Math.ceil((cut ?? way * (1 + slackFrom)) / supportEvery - 1e-9) - 1),
      stretch: spigot === undefined ? undefined : spigot / bore - 1,
      clamped,
      clamp: best?.size,
      clampCloses: best?.closed,
      clampOpens: best?.opens,
      clamps:
        clamped === undefined ? undefined : sizes.map(({ size }) => size).join(', ') || words`none`,
    }
  },
  findings(input, { leastRadius, slack, stretch, clamped, clamp, cutFrom, cutTo }, say) {
    const { kind, radius, outside, bore, sheetRadius } = input
    const mm = (value: number | undefined) => say(value, 'mm')
    const ratio = radius / outside
    const solid = bore < outside
    const known = least(input)
    const bendLevel: Level =
      known === undefined || !solid
        ? 'unknown'
        : radius >= known.radius * (1 - 1e-9)
          ? 'pass'
          : sheetRadius === undefined && kind === 'plain' && ratio >= plainStop
            ? 'watch'
            : 'stop'
    const slackLevel: Level =
      slack === undefined
        ? 'unknown'
        : slack < 0
          ? 'stop'
          : slack < slackFrom || slack > slackTo
            ? 'watch'
            : 'pass'
    const fitLevel: Level =
      stretch === undefined || !solid
        ? 'unknown'
        : stretch < 0
          ? 'stop'
          : stretch > stretchMost
            ? 'watch'
            : 'pass'
    const best = clamped === undefined ? undefined : bestClamp(clamped)
    const clampLevel: Level =
      clamped === undefined
        ? 'unknown'
        : best === undefined || best.share < clampReserve
          ? 'watch'
          : 'pass'
    const thin = words`The bore is not less than the outside diameter: measure both again.`
    const noSpigot = words`The spigot’s diameter is not given.`
    return [
      {
        check: 'bend',
        level: bendLevel,
        text: !solid
          ? thin
          : known === undefined
            ? words`The table ends below this bore: take the radius from the hose’s sheet.`
            : bendLevel === 'pass'
              ? words`${mm(radius)} is ${say(ratio, '', 2)} diameters; the least is ${mm(leastRadius)} (${known.by}).`
              : bendLevel === 'stop'
                ? words`${mm(radius)} is ${say(ratio, '', 2)} diameters, less than ${mm(leastRadius)} (${known.by}): it kinks and flattens. A wider sweep, a moulded bend or an elbow fitting.`
                : words`${mm(radius)} is ${say(ratio, '', 2)} diameters, less than ${mm(leastRadius)} (${known.by}): it may kink when hot. A wider sweep, a moulded bend or an elbow fitting, or its sheet.`,
        threshold:
          sheetRadius !== undefined || kind === 'braid'
            ? words`at least ${mm(leastRadius)} (stop)`
            : words`at least ${mm(leastRadius)}, 5 diameters (watch), 3 diameters (stop)`,
      },
      {
        check: 'slack',
        level: slackLevel,
        text:
          slack === undefined
            ? words`Cut it to between ${mm(cutFrom)} and ${mm(cutTo)}, then enter the length.`
            : slackLevel === 'pass'
              ? words`It has ${say(slack, '%', 2)} of slack.`
              : slack < 0
                ? words`It has ${say(slack, '%', 2)} of slack and does not reach. Cut one of at least ${mm(cutFrom)}.`
                : slack < slackFrom
                  ? words`It has ${say(slack, '%', 2)} of slack: it pulls at the spigots when it shrinks under pressure or the motor rocks. Cut one of at least ${mm(cutFrom)}.`
                  : words`It has ${say(slack, '%', 2)} of slack: it hangs or humps and rubs. Shorten it to ${mm(cutTo)} or clip it up.`,
        threshold: words`5 to 8 % (watch), not below 0 (stop)`,
      },
      {
        check: 'fit',
        level: fitLevel,
        text: !solid
          ? thin
          : stretch === undefined
            ? noSpigot
            : stretch < 0
              ? words`The spigot is ${say(-stretch, '%', 2)} smaller than the bore: a clamp only folds the hose. Take the size smaller or another spigot.`
              : fitLevel === 'watch'
                ? words`The hose is stretched by ${say(stretch, '%', 2)}: it thins and splits at its end. Take the size larger.`
                : words`The hose is stretched by ${say(stretch, '%', 2)} onto the spigot.`,
        threshold: words`spigot not smaller than the bore (stop), at most 10 % larger (watch)`,
      },
      {
        check: 'clamp',
        level: clampLevel,
        text:
          clamped === undefined
            ? solid
              ? noSpigot
              : thin
            : best === undefined
              ? words`No worm-drive size of the table reaches ${mm(clamped)}: use a spring or ear clamp of that size.`
              : clampLevel === 'pass'
                ? words`Size ${clamp ?? ''} fits ${mm(clamped)} and still closes by ${mm(best.closed)}.`
                : words`Size ${clamp ?? ''} reaches ${mm(clamped)} only at the end of its range: use a spring clamp.`,
        threshold: words`a tenth of its range in hand at both ends`,
      },
    ]
  },
  working(input, { arc, way, cutFrom, cutTo, clamped }, say) {
    const mm = (value: number | undefined) => say(value, 'mm', 4)
    return [
      `L_b = (${mm(input.radius)} + ${mm(input.outside)} / 2) × ${say(input.angle, '°')} × π/180° = ${mm(arc)}`,
      words`L_w = ${mm(arc)} + ${mm(input.straight)} = ${mm(way)}; with 5 to 8 % slack ${mm(cutFrom)} to ${mm(cutTo)}`,
      ...(clamped === undefined
        ? []
        : [
            `D_c = √((${mm(input.outside)})² − (${mm(input.bore)})² + (${mm(input.spigot)})²) = ${mm(clamped)}`,
          ]),
    ]
  },
  examples: [
    {
      name: 'Large hose round 90°',
      from: 'technical notes of an industrial hose maker: 90°, radius 450 mm, hose of 70 mm outside: 762 mm',
      inputs: {
        kind: 'plain',
        outside: '70 mm',
        bore: '50 mm',
        radius: '450 mm',
        angle: '90 °',
        straight: '0 mm',
        cut: '810 mm',
        sheetRadius: '450 mm',
        spigot: '51 mm',
      },
      outputs: { arc: '762 mm' },
      findings: { bend: 'pass', slack: 'pass', fit: 'pass', clamp: 'pass' },
    },
    {
      // 34 mm: sizes 16 (20.6 to 38.1), 20 (to 44.4), 24 (26.9 to 50.8), 28 (33.3 to 57.1).
      name: 'Wire braid of 5/8 in bore, and the clamps for 34 mm',
      from: 'AC 43.13-1B, table 9-3, size -12: 6.50 in; SAE J1508 type F table',
      inputs: {
        kind: 'braid',
        outside: '34 mm',
        bore: '5/8 in',
        radius: '150 mm',
        angle: '180 °',
        straight: '300 mm',
        cut: '700 mm',
        spigot: '5/8 in',
      },
      outputs: {
        leastRadius: '6.50 in',
        clamped: '34 mm',
        clamps: '16, 20, 24, 28',
        clamp: '16',
        clampCloses: '13.4 mm',
        clampOpens: '4.1 mm',
      },
      findings: { bend: 'stop', slack: 'stop', clamp: 'pass' },
    },
    {
      name: 'Wire braid of size 16',
      from: 'AC 43.13-1B, table 9-3, size -16: 7/8 in bore, 7.38 in',
      inputs: {
        kind: 'braid',
        outside: '1.23 in',
        bore: '7/8 in',
        radius: '8 in',
        angle: '90 °',
        straight: '10 in',
      },
      outputs: { leastRadius: '7.38 in', radiusInHand: '0.62 in' },
      findings: { bend: 'pass', slack: 'unknown', fit: 'unknown', clamp: 'unknown' },
    },
    {
      name: 'Tight, stretched, short, small',
      from: 'threshold case',
      inputs: {
        kind: 'plain',
        outside: '10 mm',
        bore: '6 mm',
        radius: '40 mm',
        angle: '90 °',
        straight: '100 mm',
        cut: '175 mm',
        spigot: '6.8 mm',
      },
      outputs: {},
      findings: { bend: 'watch', slack: 'watch', fit: 'watch', clamp: 'watch' },
    },
    {
      name: 'Loose on its spigot',
      from: 'threshold case',
      inputs: {
        kind: 'plain',
        outside: '24 mm',
        bore: '16 mm',
        radius: '60 mm',
        angle: '90 °',
        straight: '100 mm',
        spigot: '15 mm',
      },
      outputs: {},
      findings: { bend: 'stop', fit: 'stop' },
    },
  ],
})
