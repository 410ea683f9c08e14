/**
 * Axle loads, centre of gravity and what is left of the ratings after parts came out and went in.
 *
 * kg and m. x is measured rearward from the front axle (ahead of it negative), z up from level ground.
 * Moments about the front axle; the donor's own weighing is the base, so options and rust that no
 * brochure knows are in it. Static loads on level ground: braking and slopes shift more.
 */
import { defineCalculator } from '../define.ts'
import type { InputValues, ListField, NumberOutput } from '../define.ts'
import { words } from '../../src/words/words.ts'

/** Common practice: shares of an axle's, a tyre's and the vehicle's rating. */
const ratingInHand = 0.95
const tyreInHand = 1.1
/** Common practice: points of front share. */
const shift = { pass: 0.03, watch: 0.06 } as const
/** Regulation (EU) No 1230/2012 asks 20 % of heavier goods vehicles; 30 %: common practice. */
const steering = { pass: 0.3, stop: 0.2 } as const

const items = (label: string, row: string, mark: string, help: string) =>
  ({
    type: 'list',
    label,
    row,
    help,
    rows: [1, 60],
    optional: true,
    fields: {
      name: { type: 'text', label: words`Name`, help: words`Such as rear box.` },
      mass: {
        type: 'number',
        label: words`Mass`,
        symbol: `m_${mark}`,
        of: 'mass',
        units: ['kg', 'lb'],
        hard: [0.01, 5000],
        usual: [0.5, 600],
        help: words`Weighed if at all possible.`,
      },
      x: {
        type: 'number',
        label: words`Behind the front axle`,
        symbol: `x_${mark}`,
        of: 'length',
        units: ['m', 'in'],
        hard: [-3, 10],
        usual: [-1.2, 5],
        help: words`Of its middle; ahead of the axle negative.`,
      },
      z: {
        type: 'number',
        label: words`Height`,
        symbol: `z_${mark}`,
        of: 'length',
        units: ['m', 'in'],
        hard: [-0.5, 4],
        usual: [0.15, 2],
        help: words`Of its middle above the ground; only for the height of the centre of gravity.`,
        optional: true,
      },
    },
  }) as const satisfies ListField

const rating = (label: string, symbol: string, help: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'mass',
    units: ['kg', 'lb'],
    hard: [50, 20_000],
    usual: [200, 5000],
    help,
    optional: true,
  }) as const

const inputs = {
  wheelbase: {
    type: 'number',
    label: words`Wheelbase`,
    symbol: 'L',
    of: 'length',
    units: ['m', 'in'],
    hard: [0.8, 8],
    usual: [1.5, 4.5],
    help: words`Front axle to rear axle.`,
  },
  frontBefore: {
    type: 'number',
    label: words`Front axle before`,
    symbol: 'F_0',
    of: 'mass',
    units: ['kg', 'lb'],
    hard: [20, 10_000],
    usual: [200, 2500],
    help: words`The donor weighed axle by axle, level, empty, before anything came out.`,
  },
  rearBefore: {
    type: 'number',
    label: words`Rear axle before`,
    symbol: 'R_0',
    of: 'mass',
    units: ['kg', 'lb'],
    hard: [20, 10_000],
    usual: [200, 2500],
    help: words`On the same weighbridge, the same day.`,
  },
  heightBefore: {
    type: 'number',
    label: words`Height of the centre of gravity before`,
    symbol: 'h_0',
    of: 'length',
    units: ['m', 'in'],
    hard: [0.1, 2.5],
    usual: [0.35, 1],
    help: words`Only if it was measured; then every item needs its height too.`,
    optional: true,
  },
  removed: items(
    words`Taken out`,
    words`part taken out`,
    'o',
    words`Engine, tank, exhaust and all that came out.`,
  ),
  added: items(
    words`Put in`,
    words`part put in`,
    'i',
    words`Motor, boxes, charger, brackets, coolant, cable.`,
  ),
  load: items(
    words`People and load`,
    words`load`,
    'l',
    words`Each seat taken and the load, where it will ride.`,
  ),
  frontRating: rating(
    words`Front axle rating`,
    'F_max',
    words`On the plate; springs added later do not raise it.`,
  ),
  rearRating: rating(
    words`Rear axle rating`,
    'R_max',
    words`On the plate; springs added later do not raise it.`,
  ),
  grossRating: rating(words`Gross vehicle rating`, 'M_max', words`On the plate.`),
  frontTyre: rating(
    words`Load of one front tyre`,
    'F_t',
    words`From its load index, at the pressure it is run at.`,
  ),
  rearTyre: rating(
    words`Load of one rear tyre`,
    'R_t',
    words`From its load index; for twins the twin rating.`,
  ),
  rearWheels: {
    type: 'choice',
    label: words`Rear wheels`,
    help: words`How many tyres carry the rear axle.`,
    options: { single: words`two`, twin: words`four, twin tyres` },
    assume: { value: 'single', because: words`cars and light pickups have two` },
  },
} as const

type Inputs = InputValues<typeof inputs>
type Item = NonNullable<Inputs['added']>[number]

function signed(
  input: Inputs,
): readonly (Item & { readonly sign: number; readonly loaded: boolean })[] {
  const side = (list: readonly Item[] | undefined, sign: number, loaded: boolean) =>
    (list ?? []).map((item) => ({ ...item, sign, loaded }))
  return [
    ...side(input.removed, -1, false),
    ...side(input.added, 1, false),
    ...side(input.load, 1, true),
  ]
}

/** Axle loads and centre of gravity, empty or laden. */
function axles(input: Inputs, laden: boolean) {
  const used = signed(input).filter((item) => laden || !item.loaded)
  const sum = (part: (item: Item) => number) =>
    used.reduce((total, item) => total + item.sign * item.mass * part(item), 0)
  const before = input.frontBefore + input.rearBefore
  const mass = before + sum(() => 1)
  const rear = input.rearBefore + sum(({ x }) => x) / input.wheelbase
  const front = mass - rear
  const known = mass > 0
  const heights = used.every(({ z }) => z !== undefined)
  return {
    mass,
    front,
    rear,
    share: known ? front / mass : undefined,
    position: known ? (input.wheelbase * rear) / mass : undefined,
    height:
      known && heights && input.heightBefore !== undefined
        ? (before * input.heightBefore + sum(({ z }) => z ?? NaN)) / mass
        : undefined,
  }
}

const mass = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'mass',
    units: ['kg', 'lb'],
  }) as const satisfies NumberOutput
const sum = (label: string, symbol: string) => ({ ...mass(label, symbol), least: 3 }) as const
const fraction = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'fraction',
    units: ['%', '%'],
  }) as const satisfies NumberOutput
const length = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'length',
    units: ['m', 'in'],
  }) as const satisfies NumberOutput

export const axleBalance = defineCalculator({
  id: 'axle-balance',
  title: words`Mass and axle balance`,
  phase: 'vehicle',
  purpose: words`What each axle carries after the conversion, empty and laden, against its rating, and how far the balance moved.`,
  inputs,
  outputs: {
    kerb: sum(words`Empty, after`, 'M'),
    kerbChange: sum(words`Heavier than before by`, 'ΔM'),
    frontEmpty: sum(words`Front axle, empty`, 'F'),
    rearEmpty: sum(words`Rear axle, empty`, 'R'),
    frontShareBefore: fraction(words`Front share before`, 's_0'),
    frontShare: fraction(words`Front share, empty`, 's'),
    shareShift: fraction(words`Front share moved by`, 'Δs'),
    gross: sum(words`Laden`, 'M_l'),
    frontLaden: sum(words`Front axle, laden`, 'F_l'),
    rearLaden: sum(words`Rear axle, laden`, 'R_l'),
    frontShareLaden: fraction(words`Front share, laden`, 's_l'),
    frontUse: fraction(words`Front rating used`, 'F_l/F_max'),
    rearUse: fraction(words`Rear rating used`, 'R_l/R_max'),
    grossUse: fraction(words`Gross rating used`, 'M_l/M_max'),
    frontInHand: sum(words`Front rating left`, 'ΔF'),
    rearInHand: sum(words`Rear rating left`, 'ΔR'),
    payload: sum(words`People and load the rating leaves`, 'P'),
    position: length(words`Centre of gravity behind the front axle, laden`, 'x'),
    positionEmpty: length(words`Centre of gravity behind the front axle, empty`, 'x_e'),
    height: length(words`Height of the centre of gravity, laden`, 'h'),
    heightEmpty: length(words`Height of the centre of gravity, empty`, 'h_e'),
    table: {
      type: 'table',
      label: words`What each item does`,
      columns: {
        name: { type: 'text', label: words`Item` },
        mass: mass(words`Mass`, 'm'),
        onFront: mass(words`On the front axle`, 'ΔF_i'),
        onRear: mass(words`On the rear axle`, 'ΔR_i'),
      },
    },
  },
  formula: [
    String.raw`R = R_0 + \frac{1}{L}\sum \pm m_i x_i, \qquad F = F_0 + R_0 + \sum \pm m_i - R`,
    String.raw`x = \frac{L R}{M}, \qquad h = \frac{M_0 h_0 + \sum \pm m_i z_i}{M}`,
  ],
  validity: [
    words`At rest on level ground; brakes, hills and a trailer’s nose shift load between the axles.`,
    words`A worked figure is a forecast: weigh both axles again before the inspection.`,
    words`Left and right are not worked; a box on one side needs a weighing by corners.`,
  ],
  checks: {
    sum: { title: words`Sum is possible`, basis: 'model' },
    front: { title: words`Front axle, laden`, basis: 'common practice' },
    rear: { title: words`Rear axle, laden`, basis: 'common practice' },
    gross: { title: words`Gross vehicle rating`, basis: 'common practice' },
    shift: { title: words`Balance moved`, basis: 'common practice' },
    frontTyres: { title: words`Front tyres`, basis: 'common practice' },
    rearTyres: { title: words`Rear tyres`, basis: 'common practice' },
    steering: {
      title: words`Weight on the steered axle`,
      basis:
        'published: Regulation (EU) No 1230/2012, annex I, part C (20 %, goods vehicles above 3.5 t); 30 %: common practice',
    },
  },
  hazards: ['crush', 'brakes', 'not-approval'],
  sources: [
    { title: 'Moments about the front axle', at: 'statics', trust: 'model' },
    {
      title: 'Regulation (EU) No 1230/2012, masses and dimensions of motor vehicles',
      edition: '2012',
      at: 'annex I, part C, mass distribution',
      trust: 'read',
    },
  ],
  compute(input) {
    const empty = axles(input, false)
    const laden = axles(input, true)
    const before = input.frontBefore + input.rearBefore
    const shareBefore = input.frontBefore / before
    const use = (load: number, limit: number | undefined) =>
      limit === undefined ? undefined : load / limit
    const left = (load: number, limit: number | undefined) =>
      limit === undefined ? undefined : limit - load
    return {
      kerb: empty.mass,
      kerbChange: empty.mass - before,
      frontEmpty: empty.front,
      rearEmpty: empty.rear,
      frontShareBefore: shareBefore,
      frontShare: empty.share,
      shareShift: empty.share === undefined ? undefined : empty.share - shareBefore,
      gross: laden.mass,
      frontLaden: laden.front,
      rearLaden: laden.rear,
      frontShareLaden: laden.share,
      frontUse: use(laden.front, input.frontRating),
      rearUse: use(laden.rear, input.rearRating),
      grossUse: use(laden.mass, input.grossRating),
      frontInHand: left(laden.front, input.frontRating),
      rearInHand: left(laden.rear, input.rearRating),
      payload: left(empty.mass, input.grossRating),
      position: laden.position,
      positionEmpty: empty.position,
      height: laden.height,
      heightEmpty: empty.height,
      table: signed(input).map(({ name, mass, sign, x }) => {
        const onRear = (sign * mass * x) / input.wheelbase
        return { name, mass: sign * mass, onFront: sign * mass - onRear, onRear }
      }),
    }
  },
  findings(input, output, say) {
    const { frontEmpty = 0, rearEmpty = 0, frontLaden = 0, rearLaden = 0, gross = 0 } = output
    const loads = [frontEmpty, rearEmpty, frontLaden, rearLaden]
    const possible = loads.every((load) => load > 0)
    const kg = (value: number) => say(value, 'kg', 4)

    const against = (
      fact: string,
      load: number,
      limit: number | undefined,
      use: number | undefined,
    ) => {
      if (!possible)
        return ['unknown', words`${fact} cannot be judged until the sum is put right.`] as const
      if (limit === undefined || use === undefined)
        return [
          'unknown',
          words`${fact} carries ${kg(load)}; its rating is not given. Read it off the plate.`,
        ] as const
      const carries = words`${fact} carries ${kg(load)}, ${say(use, '%')} of ${kg(limit)}`
      return use <= ratingInHand
        ? (['pass', words`${carries}: ${kg(limit - load)} left.`] as const)
        : use <= 1
          ? ([
              'watch',
              words`${carries}: nothing is left for luggage or a scale’s error. Move or save mass.`,
            ] as const)
          : ([
              'stop',
              words`${carries}: ${kg(load - limit)} too much. Move or save mass; helper springs do not raise a rating.`,
            ] as const)
    }
    const tyres = (
      axle: string,
      unrated: string,
      load: number,
      one: number | undefined,
      count: number,
    ) => {
      if (!possible)
        return ['unknown', words`${axle} cannot be judged until the sum is put right.`] as const
      if (one === undefined) return ['unknown', unrated] as const
      const ratio = (one * count) / load
      const carry = words`${axle} carry ${say(ratio, '%')} of ${kg(load)}`
      return ratio >= tyreInHand
        ? (['pass', `${carry}.`] as const)
        : ratio >= 1
          ? ([
              'watch',
              words`${carry}: little is in hand. Fit tyres of a higher load index.`,
            ] as const)
          : ([
              'stop',
              words`${carry}: overloaded. Fit tyres of a higher load index or take load off.`,
            ] as const)
    }
    const front = against(words`The front axle`, frontLaden, input.frontRating, output.frontUse)
    const rear = against(words`The rear axle`, rearLaden, input.rearRating, output.rearUse)
    const whole = against(words`The vehicle`, gross, input.grossRating, output.grossUse)
    const frontTyres = tyres(
      words`The front tyres`,
      words`The load rating of the front tyres is not given. Read the load index on the sidewall.`,
      frontLaden,
      input.frontTyre,
      2,
    )
    const rearTyres = tyres(
      words`The rear tyres`,
      words`The load rating of the rear tyres is not given. Read the load index on the sidewall.`,
      rearLaden,
      input.rearTyre,
      input.rearWheels === 'twin' ? 4 : 2,
    )

    const moved = possible ? output.shareShift : undefined
    const points = Math.abs(moved ?? NaN)
    const toRear = moved !== undefined && moved < 0
    const share = possible ? output.frontShareLaden : undefined
    return [
      {
        check: 'sum',
        level: possible ? 'pass' : 'stop',
        text: possible
          ? words`Before ${kg(input.frontBefore + input.rearBefore)}, after ${kg(output.kerb ?? 0)} empty, ${kg(gross)} laden.`
          : words`An axle comes out at or below zero: a mass or a place is wrong, or the vehicle tips on its other axle. Check the lists.`,
        threshold: words`each axle above ${say(0, 'kg', 1)}, empty and laden`,
      },
      {
        check: 'front',
        level: front[0],
        text: front[1],
        threshold: words`at most 95 % of the rating (watch), 100 % (stop)`,
      },
      {
        check: 'rear',
        level: rear[0],
        text: rear[1],
        threshold: words`at most 95 % of the rating (watch), 100 % (stop)`,
      },
      {
        check: 'gross',
        level: whole[0],
        text: whole[1],
        threshold: words`at most 95 % of the rating (watch), 100 % (stop)`,
      },
      {
        check: 'shift',
        level:
          moved === undefined
            ? 'unknown'
            : points <= shift.pass
              ? 'pass'
              : points <= shift.watch
                ? 'watch'
                : 'stop',
        text:
          moved === undefined
            ? words`The balance cannot be told until the sum is put right.`
            : `${words`The front carries ${say(output.frontShare, '%')} empty, before ${say(output.frontShareBefore, '%')}.`} ${
                points <= shift.pass
                  ? words`It stays near the donor’s.`
                  : toRear
                    ? points <= shift.watch
                      ? words`It moved rearward: handling and brake balance change. Move mass forward, or have brakes and springs set to it.`
                      : words`It moved rearward: handling and brake balance change. Move mass forward, or have the change reviewed by an engineer.`
                    : points <= shift.watch
                      ? words`It moved forward: handling and brake balance change. Move mass rearward, or have brakes and springs set to it.`
                      : words`It moved forward: handling and brake balance change. Move mass rearward, or have the change reviewed by an engineer.`
              }`,
        threshold: words`at most 3 points of the front share (watch), 6 points (stop)`,
      },
      {
        check: 'frontTyres',
        level: frontTyres[0],
        text: frontTyres[1],
        threshold: words`at least 110 % of the axle load (watch), 100 % (stop)`,
      },
      {
        check: 'rearTyres',
        level: rearTyres[0],
        text: rearTyres[1],
        threshold: words`at least 110 % of the axle load (watch), 100 % (stop)`,
      },
      {
        check: 'steering',
        level:
          share === undefined
            ? 'unknown'
            : share >= steering.pass
              ? 'pass'
              : share >= steering.stop
                ? 'watch'
                : 'stop',
        text:
          share === undefined
            ? words`The steered axle cannot be judged until the sum is put right.`
            : share >= steering.pass
              ? words`The front axle keeps ${say(share, '%')} of the laden mass.`
              : words`The front axle keeps only ${say(share, '%')} of the laden mass: it steers and brakes little, above all uphill. Move mass forward.`,
        threshold: words`at least 30 % of the laden mass on the front axle (watch), 20 % (stop)`,
      },
    ]
  },
  working(input, output, say) {
    const kg = (value: number | undefined) => say(value, 'kg', 4)
    /** To the rear axle. */
    const moved = (laden: boolean) =>
      signed(input)
        .filter((item) => laden || !item.loaded)
        .reduce((total, item) => total + item.sign * item.mass * item.x, 0) / input.wheelbase
    return [
      `M_0 = F_0 + R_0 = ${kg(input.frontBefore)} + ${kg(input.rearBefore)} = ${kg(input.frontBefore + input.rearBefore)}`,
      words`R = R_0 + Σ ± m x / L with L = ${say(input.wheelbase, 'm')}: ${kg(input.rearBefore)} + ${kg(moved(false))} = ${kg(output.rearEmpty)}`,
      words`F = M − R = ${kg(output.kerb)} − ${kg(output.rearEmpty)} = ${kg(output.frontEmpty)}, front share ${say(output.frontShare, '%')}`,
      words`laden: R_l = ${kg(input.rearBefore)} + ${kg(moved(true))} = ${kg(output.rearLaden)}`,
      `F_l = M_l − R_l = ${kg(output.gross)} − ${kg(output.rearLaden)} = ${kg(output.frontLaden)}`,
      `x = L R_l / M_l = ${say(output.position, 'm')}`,
      ...(output.height === undefined
        ? []
        : [`h = (M_0 h_0 + Σ ± m z) / M_l = ${say(output.height, 'm')}`]),
    ]
  },
  plot(input, output) {
    const bar = (x: number, y: number | undefined) =>
      [
        [x, 0],
        [x, y],
        [x, undefined],
      ] as const
    const aside = input.wheelbase / 60
    const pair = (shift: number, front: number | undefined, rear: number | undefined) => [
      ...bar(shift, front),
      ...bar(input.wheelbase + shift, rear),
    ]
    return {
      title: words`Loads seen from the side`,
      x: { label: words`Behind the front axle`, of: 'length', units: ['m', 'in'] },
      y: { label: words`Mass`, of: 'mass', units: ['kg', 'lb'], fromZero: true },
      series: [
        {
          name: words`before`,
          line: 'dotted',
          points: pair(-aside, input.frontBefore, input.rearBefore),
        },
        {
          name: words`empty`,
          line: 'dashed',
          points: pair(0, output.frontEmpty, output.rearEmpty),
        },
        {
          name: words`laden`,
          line: 'solid',
          points: pair(aside, output.frontLaden, output.rearLaden),
        },
        {
          name: words`items`,
          line: 'solid',
          points: signed(input).flatMap(({ x, sign, mass }) => bar(x, sign * mass)),
        },
      ],
      marks: [
        ...(input.frontRating === undefined
          ? []
          : [{ x: 0, y: input.frontRating, label: words`front rating`, kind: 'point' as const }]),
        ...(input.rearRating === undefined
          ? []
          : [
              {
                x: input.wheelbase,
                y: input.rearRating,
                label: words`rear rating`,
                kind: 'point' as const,
              },
            ]),
        ...(output.position === undefined
          ? []
          : [
              { x: output.position, y: 0, label: words`centre of gravity`, kind: 'point' as const },
            ]),
      ],
      caption: words`Bars at both axles before, empty and laden; each item stands where it sits, what came out hangs down. Front is to the left.`,
    }
  },
  examples: [
    {
      // M 950 − 160 + 90 + 220 + 80 = 1180; moments 430 × 2.3 − 16 + 13.5 + 440 + 24 = 1450.5 kg·m;
      // x 1450.5 / 1180 = 1.229237; R 1450.5 / 2.3 = 630.652; z (950 × 0.52 − 88 + 40.5 + 99 + 48) / 1180.
      name: 'Roadster: engine out, motor and two boxes in',
      from: 'hand: moments about the front axle and about the ground',
      inputs: {
        wheelbase: '2.300 m',
        frontBefore: '520 kg',
        rearBefore: '430 kg',
        heightBefore: '0.52 m',
        removed: [{ name: 'engine', mass: '160 kg', x: '0.10 m', z: '0.55 m' }],
        added: [
          { name: 'motor', mass: '90 kg', x: '0.15 m', z: '0.45 m' },
          { name: 'rear box', mass: '220 kg', x: '2.00 m', z: '0.45 m' },
          { name: 'front box', mass: '80 kg', x: '0.30 m', z: '0.60 m' },
        ],
      },
      outputs: {
        kerb: '1180 kg',
        frontEmpty: '549.348 kg',
        rearEmpty: '630.652 kg',
        positionEmpty: '1.229237 m',
        heightEmpty: '0.502966 m',
        frontShareBefore: '54.737 %',
      },
      findings: {
        sum: 'pass',
        front: 'unknown',
        gross: 'unknown',
        shift: 'stop',
        frontTyres: 'unknown',
        steering: 'pass',
      },
    },
    {
      // Removed 386 kg, 158.0 kg·m; added 429.4 kg, 415.8 kg·m; R 678 + 257.8 / 2.92 = 766.3.
      // Laden R + (160 × 1.25 + 400 × 2.75) / 2.92 = 1211.5 kg.
      name: 'Farm pickup, two people and 400 kg in the bed',
      from: 'hand: moments about the front axle',
      inputs: {
        wheelbase: '2.92 m',
        frontBefore: '862 kg',
        rearBefore: '678 kg',
        removed: [
          { name: 'engine', mass: '262 kg', x: '0.15 m' },
          { name: 'radiator', mass: '22 kg', x: '-0.45 m' },
          { name: 'exhaust', mass: '20 kg', x: '1.30 m' },
          { name: 'tank and fuel', mass: '64 kg', x: '1.55 m' },
          { name: 'battery', mass: '18 kg', x: '-0.25 m' },
        ],
        added: [
          { name: 'motor', mass: '72 kg', x: '0.45 m' },
          { name: 'adapter and mounts', mass: '24 kg', x: '0.62 m' },
          { name: 'controller', mass: '19 kg', x: '0.05 m' },
          { name: 'front box', mass: '80.8 kg', x: '-0.10 m' },
          { name: 'box under the bed', mass: '163.6 kg', x: '2.10 m' },
          { name: 'charger', mass: '14 kg', x: '0.05 m' },
          { name: 'cable and contactors', mass: '21 kg', x: '1.20 m' },
          { name: 'coolant loop', mass: '9 kg', x: '-0.35 m' },
          { name: '12 V battery', mass: '8 kg', x: '-0.25 m' },
          { name: 'discs and servo', mass: '18 kg', x: '0.20 m' },
        ],
        load: [
          { name: 'two people', mass: '160 kg', x: '1.25 m' },
          { name: 'bed', mass: '400 kg', x: '2.75 m' },
        ],
        frontRating: '1180 kg',
        rearRating: '1540 kg',
        grossRating: '2268 kg',
        frontTyre: '630 kg',
        rearTyre: '800 kg',
      },
      outputs: {
        kerb: '1583.4 kg',
        frontEmpty: '817.1 kg',
        rearEmpty: '766.3 kg',
        gross: '2143.4 kg',
        frontLaden: '931.9 kg',
        rearLaden: '1211.5 kg',
        payload: '685 kg',
      },
      findings: {
        front: 'pass',
        rear: 'pass',
        gross: 'pass',
        shift: 'watch',
        frontTyres: 'pass',
        rearTyres: 'pass',
        steering: 'pass',
      },
    },
    {
      name: 'Everything behind the rear axle',
      from: 'threshold case',
      inputs: {
        wheelbase: '2.0 m',
        frontBefore: '400 kg',
        rearBefore: '400 kg',
        removed: [{ name: 'engine', mass: '150 kg', x: '0 m' }],
        added: [{ name: 'box', mass: '250 kg', x: '2.6 m' }],
        frontRating: '180 kg',
        rearRating: '700 kg',
        grossRating: '920 kg',
        frontTyre: '90 kg',
        rearTyre: '375 kg',
      },
      outputs: {},
      findings: {
        front: 'watch',
        rear: 'stop',
        gross: 'watch',
        shift: 'stop',
        frontTyres: 'watch',
        rearTyres: 'watch',
        steering: 'stop',
      },
    },
    {
      name: 'Mass put back where it came from, on small tyres',
      from: 'threshold case',
      inputs: {
        wheelbase: '2.4 m',
        frontBefore: '500 kg',
        rearBefore: '450 kg',
        removed: [{ name: 'engine', mass: '150 kg', x: '0 m' }],
        added: [
          { name: 'motor', mass: '70 kg', x: '0 m' },
          { name: 'front box', mass: '110 kg', x: '0.1 m' },
        ],
        load: [{ name: 'driver', mass: '80 kg', x: '1.3 m' }],
        frontRating: '540 kg',
        rearRating: '600 kg',
        grossRating: '1000 kg',
        frontTyre: '270 kg',
        rearTyre: '300 kg',
      },
      outputs: {},
      findings: {
        front: 'stop',
        gross: 'stop',
        shift: 'pass',
        frontTyres: 'stop',
        rearTyres: 'pass',
      },
    },
    {
      name: 'More taken out than there was',
      from: 'threshold case',
      inputs: {
        wheelbase: '2.0 m',
        frontBefore: '400 kg',
        rearBefore: '400 kg',
        removed: [{ name: 'slip of the pen', mass: '1600 kg', x: '0.1 m' }],
      },
      outputs: {},
      findings: { sum: 'stop', shift: 'unknown', steering: 'unknown' },
    },
  ],
})
