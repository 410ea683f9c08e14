/**
 * Do the bolts hold the battery box in a crash, the worst bolt and not the average, and does the
 * metal they pull on hold them?
 *
 * kg, m, N, Pa in and out; loads as multiples of g. The box stands on (or hangs under) one level
 * plane and is bolted to it upright. x rearward, y to the left, both from the box's centre of
 * gravity, whose height makes the box tip: that is what the worst bolt feels.
 */
import { gravity } from '../air.ts'
import { boltThreads, nominalDiameter, proofLoad } from '../bolts.ts'
import type { BoltClass } from '../bolts.ts'
import { defineCalculator } from '../define.ts'
import type { InputValues, NumberOutput } from '../define.ts'
import { words } from '../../src/words/words.ts'

/** Common practice: times the load before the bolt stays longer. */
const margin = { pass: 1.5, stop: 1 } as const
/** Starting values, in g; forward was read, the others are recalled. */
const usualLoads = { forward: 20, side: 15, rear: 10, vertical: 10 } as const
/** von Mises: a bolt in shear yields at 1/√3 of its tension. */
const shearWeight = 3

const loadField = (label: string, symbol: string, value: number, because: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'number',
    units: ['', ''],
    hard: [0.5, 60],
    usual: [1, 40],
    help: words`As a multiple of the box’s weight; the local code decides.`,
    assume: { value, because },
  }) as const

const inputs = {
  mass: {
    type: 'number',
    label: words`Mass of the full box`,
    symbol: 'm',
    of: 'mass',
    units: ['kg', 'lb'],
    hard: [1, 1500],
    usual: [5, 500],
    help: words`Cells, box, lid, busbars, cooling.`,
  },
  centreHeight: {
    type: 'number',
    label: words`Centre of gravity off the bolted plane`,
    symbol: 'h',
    of: 'length',
    units: ['mm', 'in'],
    hard: [0, 1500],
    usual: [50, 500],
    help: words`Above it for a box that stands, below it for one that hangs.`,
  },
  mounting: {
    type: 'choice',
    label: words`The box`,
    help: words`Whether the floor carries it or the bolts do.`,
    options: { stands: words`stands on the floor`, hangs: words`hangs under it` },
    choice: true,
  },
  bolts: {
    type: 'list',
    label: words`Bolts`,
    row: words`bolt`,
    help: words`Each bolt’s place from the box’s centre of gravity, seen from above.`,
    rows: [1, 40],
    fields: {
      name: { type: 'text', label: words`Name`, help: words`Such as rear left.` },
      x: {
        type: 'number',
        label: words`Rearward`,
        symbol: 'x_i',
        of: 'length',
        units: ['mm', 'in'],
        hard: [-3000, 3000],
        usual: [-1200, 1200],
        help: words`Ahead of the centre of gravity negative.`,
        choice: true,
      },
      y: {
        type: 'number',
        label: words`To the left`,
        symbol: 'y_i',
        of: 'length',
        units: ['mm', 'in'],
        hard: [-2000, 2000],
        usual: [-900, 900],
        help: words`To the right negative.`,
        choice: true,
      },
    },
  },
  thread: {
    type: 'choice',
    label: words`Bolt size`,
    help: words`Coarse thread.`,
    options: {
      M5: 'M5',
      M6: 'M6',
      M8: 'M8',
      M10: 'M10',
      M12: 'M12',
      M14: 'M14',
      M16: 'M16',
      M20: 'M20',
    },
    choice: true,
  },
  property: {
    type: 'choice',
    label: words`Property class`,
    help: words`Stamped on the head; an unmarked bolt is taken as 4.6.`,
    options: { '4.6': '4.6', '5.8': '5.8', '8.8': '8.8', '10.9': '10.9', '12.9': '12.9' },
    choice: true,
  },
  boltProof: {
    type: 'number',
    label: words`Proof load from the bolt’s sheet`,
    symbol: 'F_sheet',
    of: 'force',
    units: ['kN', 'lbf'],
    hard: [0.5, 500],
    usual: [5, 250],
    help: words`Instead of the table, for inch, stainless or galvanised bolts.`,
    optional: true,
  },
  forward: loadField(
    words`Forward`,
    'n_f',
    usualLoads.forward,
    words`an Australian guideline asks 20 g`,
  ),
  side: loadField(words`Sideways`, 'n_s', usualLoads.side, words`recalled from the same guideline`),
  rear: loadField(words`Rearward`, 'n_r', usualLoads.rear, words`recalled from the same guideline`),
  vertical: loadField(
    words`Up and down`,
    'n_v',
    usualLoads.vertical,
    words`recalled; a roll-over pulls the box up`,
  ),
  sheet: {
    type: 'number',
    label: words`Thickness of the metal pulled on`,
    symbol: 't',
    of: 'length',
    units: ['mm', 'in'],
    hard: [0.4, 25],
    usual: [0.7, 6],
    help: words`Sound metal only: floor, rail or bracket where the bolt goes through.`,
  },
  strength: {
    type: 'number',
    label: words`Tensile strength of that metal`,
    symbol: 'f_u',
    of: 'pressure',
    units: ['MPa', 'psi'],
    hard: [60, 1500],
    usual: [150, 600],
    help: words`Least value of its grade.`,
    assume: {
      value: 270,
      because: words`the softest deep-drawing body steel (recalled: EN 10130, DC01)`,
    },
  },
  spread: {
    type: 'number',
    label: words`Width of the washer or plate behind it`,
    symbol: 'd_m',
    of: 'length',
    units: ['mm', 'in'],
    hard: [8, 300],
    usual: [15, 100],
    help: words`Across; thick enough not to dish. The bolt head’s own width if there is none.`,
    choice: true,
  },
  edge: {
    type: 'number',
    label: words`Hole to the nearest edge`,
    symbol: 'e',
    of: 'length',
    units: ['mm', 'in'],
    hard: [3, 500],
    usual: [10, 100],
    help: words`From the middle of the hole to the edge of the metal it pulls on.`,
    choice: true,
  },
} as const

type Inputs = InputValues<typeof inputs>

interface Direction {
  readonly name: string
  readonly n: number
  /** Horizontal pull, and how much of it lifts the box off the bolted plane. */
  readonly x: number
  readonly y: number
  readonly off: number
}

function directions(input: Inputs): readonly Direction[] {
  const weight = input.mass * gravity
  const way = (name: string, n: number, x: number, y: number, off: number) => ({
    name,
    n,
    x: x * n * weight,
    y: y * n * weight,
    off: off * n * weight,
  })
  return [
    way(words`forward`, input.forward, -1, 0, 0),
    way(words`rearward`, input.rear, 1, 0, 0),
    way(words`to the left`, input.side, 0, 1, 0),
    way(words`to the right`, input.side, 0, -1, 0),
    input.mounting === 'stands'
      ? way(words`up`, input.vertical, 0, 0, 1)
      : way(words`down`, input.vertical, 0, 0, 1),
  ]
}

interface Group {
  readonly count: number
  readonly x: number
  readonly y: number
  readonly xx: number
  readonly yy: number
  readonly xy: number
}

/** Middle and second moments of the bolts; undefined when they stand in one line or are fewer than three. */
function groupOf(bolts: Inputs['bolts']): Group | undefined {
  const count = bolts.length
  const x = bolts.reduce((total, bolt) => total + bolt.x, 0) / count
  const y = bolts.reduce((total, bolt) => total + bolt.y, 0) / count
  const sum = (part: (dx: number, dy: number) => number) =>
    bolts.reduce((total, bolt) => total + part(bolt.x - x, bolt.y - y), 0)
  const xx = sum((dx) => dx * dx)
  const yy = sum((_, dy) => dy * dy)
  const xy = sum((dx, dy) => dx * dy)
  // Nearer to one line than a hundredth of its length.
  const isLine = !(xx * yy - xy * xy > 1e-4 * (xx + yy) ** 2)
  return count < 3 || isLine ? undefined : { count, x, y, xx, yy, xy }
}

/** Pull and shear of one bolt: a stiff box on springs of one kind; where a bolt is pressed the floor bears it. */
function forces(bolt: Inputs['bolts'][number], way: Direction, group: Group, height: number) {
  const { count, xx, yy, xy } = group
  const u = bolt.x - group.x
  const w = bolt.y - group.y
  const overX = -way.off * group.x - way.x * height
  const overY = -way.off * group.y - way.y * height
  const det = xx * yy - xy * xy
  const slopeX = (overX * yy - overY * xy) / det
  const slopeY = (overY * xx - overX * xy) / det
  const tension = Math.max(way.off / count + slopeX * u + slopeY * w, 0)
  const twist = (way.x * group.y - way.y * group.x) / (xx + yy)
  const shear = Math.hypot(way.x / count - twist * w, way.y / count + twist * u)
  return { tension, shear, equivalent: Math.hypot(tension, Math.sqrt(shearWeight) * shear) }
}

interface Hit {
  readonly way: Direction
  readonly bolt: string
  readonly tension: number
  readonly shear: number
  readonly equivalent: number
}

/** Worst bolt of each direction. */
function worstHits(
  input: Inputs,
): readonly (Hit & { readonly most: { tension: number; shear: number } })[] {
  const group = groupOf(input.bolts)
  if (group === undefined) return []
  return directions(input).map((way) => {
    const hits = input.bolts.map((bolt) => ({
      way,
      bolt: bolt.name,
      ...forces(bolt, way, group, input.centreHeight),
    }))
    const worst = hits.reduce((a, b) => (b.equivalent > a.equivalent ? b : a))
    return {
      ...worst,
      most: {
        tension: Math.max(...hits.map(({ tension }) => tension)),
        shear: Math.max(...hits.map(({ shear }) => shear)),
      },
    }
  })
}

const force = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'force',
    units: ['kN', 'lbf'],
  }) as const satisfies NumberOutput
const number = (label: string, symbol: string) =>
  ({ type: 'number', label, symbol, of: 'number', units: ['', ''] }) as const satisfies NumberOutput

export const batteryRestraint = defineCalculator({
  id: 'battery-restraint',
  title: words`Battery restraint, bolts only`,
  phase: 'vehicle',
  purpose: words`What the worst bolt of a battery box takes in a crash, and whether the metal it pulls on holds. Box, frame, straps and welds are not worked.`,
  inputs,
  outputs: {
    worstDirection: { type: 'text', label: words`Worst direction` },
    worstBolt: { type: 'text', label: words`Worst bolt` },
    worstTension: force(words`Its pull`, 'N'),
    worstShear: force(words`Its shear`, 'V'),
    worstEquivalent: force(words`Both together`, 'F_e'),
    averageShare: force(words`If all bolts shared alike`, 'F/n'),
    boltCapacity: force(words`Proof load of the bolt`, 'F_p'),
    boltMargin: number(words`Bolt holds times the load`, 'S_b'),
    sizeNeeded: { type: 'text', label: words`Bolt of this class that holds 1.5 times` },
    sizeMargin: number(words`That bolt holds times the load`, 'S_n'),
    mostTension: force(words`Strongest pull on the metal`, 'N_max'),
    pullThrough: force(words`Metal lets the washer through at`, 'B_p'),
    pullMargin: number(words`Metal holds the pull times`, 'S_p'),
    spreadNeeded: {
      type: 'number',
      label: words`Washer or plate needed`,
      symbol: 'd_n',
      of: 'length',
      units: ['mm', 'in'],
    },
    mostShear: force(words`Strongest shear on the metal`, 'V_max'),
    bearing: force(words`Hole tears at`, 'F_b'),
    bearingMargin: number(words`Metal holds the shear times`, 'S_h'),
    table: {
      type: 'table',
      label: words`Direction by direction`,
      columns: {
        name: { type: 'text', label: words`Direction` },
        load: number('g', 'n_i'),
        total: force(words`Load on the box`, 'F_i'),
        bolt: { type: 'text', label: words`Worst bolt` },
        tension: force(words`Pull`, 'N_i'),
        shear: force(words`Shear`, 'V_i'),
        equivalent: force(words`Together`, 'F_ei'),
        margin: number(words`Holds times`, 'S_i'),
      },
    },
  },
  formula: [
    String.raw`F = n\,m\,g, \qquad N_i = \max\left(0,\; \frac{P}{n_b} + a\,u_i + b\,w_i\right), \quad \sum N_i u_i = M_x,\; \sum N_i w_i = M_y`,
    String.raw`\vec V_i = \frac{\vec F}{n_b} + \frac{T}{\sum r^2}\,\vec k \times \vec r_i, \qquad F_e = \sqrt{N^2 + 3V^2}, \qquad S = \frac{F_p}{F_e}`,
    String.raw`B_p = 0.6\,\pi\,d_m\,t\,f_u, \qquad F_b = 2.5\,\min\left(1, \frac{e}{3.3\,d}\right) f_u\,d\,t`,
  ],
  validity: [
    words`Upright bolts in one level plane, a stiff box; friction, tightening and straps are left out. Bolts through side walls are not covered.`,
    words`Shear is taken through the thread; all bolts share it, which needs close holes.`,
    words`Only bolts and the metal at the hole: box walls, brackets, welds, spot welds and rails can fail first.`,
    words`Quasi-static loads. An engineer signs a restraint, not this page.`,
  ],
  checks: {
    loads: {
      title: words`Loads designed for`,
      basis:
        'published: Australian electric-drive guideline NCOP14, 20 g as builders’ groups summarise it; 15, 10 and 10 g recalled; the local code decides',
    },
    pattern: { title: words`Bolts hold against tipping`, basis: 'model' },
    bolt: { title: words`Worst bolt`, basis: 'ISO 898-1 proof loads; factor 1.5: common practice' },
    pull: {
      title: words`Pull through the metal`,
      basis: 'recalled: EN 1993-1-8, table 3.4; factor 1.5: common practice',
    },
    bearing: {
      title: words`Tear at the hole`,
      basis: 'recalled: EN 1993-1-8, table 3.4; factor 1.5: common practice',
    },
  },
  hazards: ['crush', 'not-approval'],
  sources: [
    {
      title: 'ISO 898-1, mechanical properties of bolts',
      at: 'proof loads, coarse pitch thread',
      trust: 'read',
    },
    {
      title: 'National Code of Practice, Guidelines for Installation of Electric Drives (NCOP14)',
      at: 'battery restraint, 20 g; other directions from memory',
      trust: 'recalled',
    },
    {
      title: 'EN 1993-1-8, design of joints',
      at: 'table 3.4, punching and bearing, without its partial factor 1.25',
      trust: 'recalled',
    },
    {
      title: 'Bhandari, Design of Machine Elements',
      at: 'chapter 7, eccentric load on a bolt group in shear',
      trust: 'read',
    },
  ],
  compute(input) {
    const property: BoltClass = input.property
    const capacity = input.boltProof ?? proofLoad(input.thread, property)
    const hits = worstHits(input)
    const worst = hits.toSorted((a, b) => b.equivalent - a.equivalent)[0]
    const ratio = (holds: number | undefined, load: number | undefined) =>
      holds === undefined || !load ? undefined : holds / load
    const need = worst && margin.pass * worst.equivalent
    const size =
      need === undefined || input.boltProof !== undefined
        ? undefined
        : boltThreads
            .filter((thread) => nominalDiameter(thread) >= 0.005)
            .find((thread) => (proofLoad(thread, property) ?? NaN) >= need)
    const mostTension = worst && Math.max(...hits.map(({ most }) => most.tension))
    const mostShear = worst && Math.max(...hits.map(({ most }) => most.shear))
    const perWidth = 0.6 * Math.PI * input.sheet * input.strength
    const diameter = nominalDiameter(input.thread)
    const tear =
      2.5 * Math.min(1, input.edge / (3.3 * diameter)) * input.strength * diameter * input.sheet
    return {
      worstDirection: worst?.way.name,
      worstBolt: worst?.bolt,
      worstTension: worst?.tension,
      worstShear: worst?.shear,
      worstEquivalent: worst?.equivalent,
      averageShare:
        worst && Math.hypot(worst.way.x, worst.way.y, worst.way.off) / input.bolts.length,
      boltCapacity: capacity,
      boltMargin: ratio(capacity, worst?.equivalent),
      sizeNeeded:
        worst === undefined || input.boltProof !== undefined
          ? undefined
          : (size ?? words`none up to M20: more bolts, wider apart`),
      sizeMargin: ratio(
        size === undefined ? undefined : proofLoad(size, property),
        worst?.equivalent,
      ),
      mostTension,
      pullThrough: perWidth * input.spread,
      pullMargin: ratio(perWidth * input.spread, mostTension),
      spreadNeeded: mostTension && (margin.pass * mostTension) / perWidth,
      mostShear,
      bearing: tear,
      bearingMargin: ratio(tear, mostShear),
      table: hits.map((hit) => ({
        name: hit.way.name,
        load: hit.way.n,
        total: Math.hypot(hit.way.x, hit.way.y, hit.way.off),
        bolt: hit.bolt,
        tension: hit.tension,
        shear: hit.shear,
        equivalent: hit.equivalent,
        margin: ratio(capacity, hit.equivalent),
      })),
    }
  },
  findings(input, output, say) {
    const stands = output.worstDirection !== undefined
    const low = [
      ...(input.forward < usualLoads.forward ? [words`forward`] : []),
      ...(input.side < usualLoads.side ? [words`sideways`] : []),
      ...(input.rear < usualLoads.rear ? [words`rearward`] : []),
      ...(input.vertical < usualLoads.vertical ? [words`up and down`] : []),
    ]
    const level = (held: number | undefined) =>
      !stands
        ? 'unknown'
        : held === undefined || held >= margin.pass
          ? 'pass'
          : held >= margin.stop
            ? 'watch'
            : 'stop'
    const where = `“${output.worstBolt ?? ''}”, ${output.worstDirection ?? ''}`
    const bolt = level(output.boltMargin)
    const pull = level(output.pullMargin)
    const bearing = level(output.bearingMargin)
    const remedy =
      output.sizeNeeded === undefined
        ? words`A proof load of ${say(margin.pass * (output.worstEquivalent ?? 0), 'kN')} is needed.`
        : words`Needed in class ${input.property}: ${output.sizeNeeded}.`
    const noGroup = words`It cannot be told while the bolts do not hold against tipping.`
    return [
      {
        check: 'loads',
        level: input.forward < usualLoads.forward ? 'stop' : low.length > 0 ? 'watch' : 'pass',
        text:
          low.length === 0
            ? words`Designed for ${say(input.forward, '', 2)} g forward, ${say(input.side, '', 2)} g sideways, ${say(input.rear, '', 2)} g rearward, ${say(input.vertical, '', 2)} g up and down. Hold it against the local code.`
            : words`Designed for less than the usual load: ${low.join(', ')}. Enter the load the local code names, with its clause, or design for the usual one.`,
        threshold: words`20 g forward (stop); 15 g sideways, 10 g rearward, 10 g up and down (watch)`,
      },
      {
        check: 'pattern',
        level: stands ? 'pass' : 'unknown',
        text: stands
          ? words`${input.bolts.length} bolts hold the box against tipping both ways.`
          : words`Fewer than three bolts, or all in one line: nothing holds the box against tipping. Spread them out.`,
        threshold: words`three bolts or more, not in one line`,
      },
      {
        check: 'bolt',
        level: bolt,
        text: !stands
          ? noGroup
          : words`The worst bolt (${where}) takes ${say(output.worstTension, 'kN')} pull and ${say(output.worstShear, 'kN')} shear, together ${say(output.worstEquivalent, 'kN')}; its proof load is ${say(output.boltCapacity, 'kN')}, ${say(output.boltMargin, '')} times that.${bolt === 'pass' ? '' : ` ${remedy}`}`,
        threshold: words`proof load at least 1.5 times the load (watch), 1 times (stop)`,
      },
      {
        check: 'pull',
        level: pull,
        text: !stands
          ? noGroup
          : output.pullMargin === undefined
            ? words`No bolt is pulled.`
            : words`The metal lets the washer through at ${say(output.pullThrough, 'kN')}, ${say(output.pullMargin, '')} times the strongest pull of ${say(output.mostTension, 'kN')}.${pull === 'pass' ? '' : ` ${words`Put a plate of ${say(output.spreadNeeded, 'mm')} or wider behind it, or bolt to thicker metal.`}`}`,
        threshold: words`at least 1.5 times the pull (watch), 1 times (stop)`,
      },
      {
        check: 'bearing',
        level: bearing,
        text: !stands
          ? noGroup
          : output.bearingMargin === undefined
            ? words`No bolt is sheared.`
            : words`The hole tears at ${say(output.bearing, 'kN')}, ${say(output.bearingMargin, '')} times the strongest shear of ${say(output.mostShear, 'kN')}.${bearing === 'pass' ? '' : ` ${words`Use thicker metal, a doubler welded or bolted on, or more bolts.`}`}`,
        threshold: words`at least 1.5 times the shear (watch), 1 times (stop)`,
      },
    ]
  },
  working(input, output, say) {
    const row = output.table.find(({ name }) => name === output.worstDirection)
    if (row === undefined)
      return [words`Cannot tell: the bolts do not hold the box against tipping.`]
    return [
      `F = n m g = ${say(row.load, '')} × ${say(input.mass, 'kg')} × ${say(gravity, 'm/s²', 4)} = ${say(row.total, 'kN')} ${row.name ?? ''}`,
      words`shared alike: F / n_b = ${say(row.total, 'kN')} / ${input.bolts.length} = ${say(output.averageShare, 'kN')}`,
      words`tipping moment F h = ${say(row.total, 'kN')} × ${say(input.centreHeight, 'mm')} = ${say((row.total ?? 0) * input.centreHeight, 'N·m')}`,
      words`worst bolt “${row.bolt ?? ''}”: N = ${say(row.tension, 'kN')}, V = ${say(row.shear, 'kN')}`,
      `F_e = √(N² + 3 V²) = ${say(row.equivalent, 'kN')}`,
      `S_b = F_p / F_e = ${say(output.boltCapacity, 'kN')} / ${say(row.equivalent, 'kN')} = ${say(output.boltMargin, '')}`,
      `B_p = 0.6 π d_m t f_u = 0.6 π × ${say(input.spread, 'mm')} × ${say(input.sheet, 'mm')} × ${say(input.strength, 'MPa')} = ${say(output.pullThrough, 'kN')}`,
      `F_b = 2.5 min(1, e / 3.3 d) f_u d t = ${say(output.bearing, 'kN')}`,
    ]
  },
  plot(input, output) {
    return {
      title: words`The bolts from above`,
      x: { label: words`Behind the box’s centre of gravity`, of: 'length', units: ['mm', 'in'] },
      y: { label: words`To the left`, of: 'length', units: ['mm', 'in'] },
      series: [
        {
          name: words`bolts`,
          line: 'none',
          points: input.bolts.map(({ x, y }) => [x, y] as const),
        },
      ],
      marks: [
        { x: 0, y: 0, label: words`centre of gravity`, kind: 'point' },
        ...input.bolts.map(({ x, y, name }) => ({
          x,
          y,
          label: name === output.worstBolt ? words`${name} (worst)` : name,
          kind: 'point' as const,
        })),
      ],
      caption: words`The wider the bolts stand around the centre of gravity, the less the worst one takes. The front is to the left.`,
      sideView: true,
    }
  },
  examples: [
    {
      // Bolts 200 × 150 mm, r 125 mm, load 10 kN at 500 mm: 2.5 kN each and 10 000 × 500 / (4 × 125) = 10 kN
      // at 0.8 and 0.6: √((8 + 2.5)² + 6²) = 12.093 kN. n = 10 000 / (50 × 9.80665) = 20.3943.
      name: 'Four bolts, 10 kN at 500 mm from their middle, shear only',
      from: 'Bhandari, Design of Machine Elements, example 7.3: forces of the bolts by its formula',
      inputs: {
        mass: '50 kg',
        centreHeight: '0 mm',
        mounting: 'stands',
        bolts: [
          { name: '1', x: '-600 mm', y: '75 mm' },
          { name: '2', x: '-400 mm', y: '75 mm' },
          { name: '3', x: '-600 mm', y: '-75 mm' },
          { name: '4', x: '-400 mm', y: '-75 mm' },
        ],
        thread: 'M20',
        property: '8.8',
        forward: '1',
        side: '20.3943',
        rear: '1',
        vertical: '0.5',
        sheet: '6 mm',
        spread: '40 mm',
        edge: '70 mm',
      },
      outputs: { worstShear: '12.093 kN', averageShare: '2.500 kN' },
      findings: { loads: 'stop', pattern: 'pass', bolt: 'pass', bearing: 'pass' },
    },
    {
      // 250 × 20 × 9.80665 = 49 033 N over six bolts: 8172.2 N each; 33 700 / 8172.2 = 4.124.
      name: '250 kg hung on six M10 8.8, 20 g down, shared alike',
      from: 'hand: m n g / 6 against the proof load 33 700 N of ISO 898-1',
      inputs: {
        mass: '250 kg',
        centreHeight: '0 mm',
        mounting: 'hangs',
        bolts: [
          { name: 'front left', x: '-400 mm', y: '250 mm' },
          { name: 'middle left', x: '0 mm', y: '250 mm' },
          { name: 'rear left', x: '400 mm', y: '250 mm' },
          { name: 'front right', x: '-400 mm', y: '-250 mm' },
          { name: 'middle right', x: '0 mm', y: '-250 mm' },
          { name: 'rear right', x: '400 mm', y: '-250 mm' },
        ],
        thread: 'M10',
        property: '8.8',
        forward: '1',
        side: '1',
        rear: '1',
        vertical: '20',
        sheet: '3 mm',
        spread: '40 mm',
        edge: '40 mm',
      },
      outputs: {
        worstTension: '8172.2 N',
        boltMargin: '4.124',
        worstDirection: words`down`,
        sizeNeeded: 'M8',
      },
      findings: { bolt: 'pass', pull: 'pass', bearing: 'pass' },
    },
    {
      // Forward 20 g: 80.8 × 20 × 9.80665 = 15 848 N. Tipping 15 848 × 0.2 = 3169.5 N·m over Σx² = 4 × 0.15² = 0.09 m²:
      // rear bolts 3169.5 × 0.15 / 0.09 = 5282.5 N; shear 3962 N; √(5282.5² + 3 × 3961.9²) = 8660 N.
      name: 'Front box of 80.8 kg on four bolts, 20 g forward',
      from: 'hand: F h x / Σ x² and F / 4',
      inputs: {
        mass: '80.8 kg',
        centreHeight: '200 mm',
        mounting: 'stands',
        bolts: [
          { name: 'front left', x: '-150 mm', y: '250 mm' },
          { name: 'rear left', x: '150 mm', y: '250 mm' },
          { name: 'front right', x: '-150 mm', y: '-250 mm' },
          { name: 'rear right', x: '150 mm', y: '-250 mm' },
        ],
        thread: 'M8',
        property: '8.8',
        sheet: '1 mm',
        spread: '15 mm',
        edge: '12 mm',
      },
      outputs: { worstTension: '5282.5 N', worstShear: '3962 N', worstEquivalent: '8660 N' },
      findings: { loads: 'pass', pattern: 'pass', bolt: 'pass', pull: 'watch', bearing: 'stop' },
    },
    {
      name: 'Too few, too thin',
      from: 'threshold case',
      inputs: {
        mass: '160 kg',
        centreHeight: '300 mm',
        mounting: 'stands',
        bolts: [
          { name: 'left', x: '0 mm', y: '200 mm' },
          { name: 'right', x: '0 mm', y: '-200 mm' },
        ],
        thread: 'M6',
        property: '4.6',
        side: '8',
        sheet: '1 mm',
        spread: '12 mm',
        edge: '20 mm',
      },
      outputs: { worstTension: 'cannot tell' },
      findings: { loads: 'watch', pattern: 'unknown', bolt: 'unknown', pull: 'unknown' },
    },
    {
      name: 'A tall box on weak bolts in thin metal',
      from: 'threshold case',
      inputs: {
        mass: '160 kg',
        centreHeight: '300 mm',
        mounting: 'stands',
        bolts: [
          { name: 'front left', x: '-150 mm', y: '250 mm' },
          { name: 'rear left', x: '150 mm', y: '250 mm' },
          { name: 'front right', x: '-150 mm', y: '-250 mm' },
          { name: 'rear right', x: '150 mm', y: '-250 mm' },
        ],
        thread: 'M8',
        property: '4.6',
        sheet: '1 mm',
        spread: '16 mm',
        edge: '20 mm',
      },
      outputs: {},
      findings: { bolt: 'stop', pull: 'stop', bearing: 'stop' },
    },
  ],
})
