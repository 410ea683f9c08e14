/**
 * Steady coolant temperature with a finned radiator behind a grille, case by case, and what a fan adds.
 *
 * W, K, m, m/s, m³/s in and out. Each case (cruise, slow hill, crawl, parked) has its own heat, road
 * speed and fan state. The core's UA is a model until a conductance is measured. A measured one that
 * comes with the road speed only leaves open whether core or air is at fault: the worse is taken.
 */
import { airDensity, airSpecificHeat } from '../air.ts'
import { coolantFields, coolantOf } from '../coolant-fields.ts'
import { propertiesOf } from '../coolant.ts'
import { crossflowEffectiveness, crossflowTransferUnits, mostTransferUnits } from '../crossflow.ts'
import { defineCalculator } from '../define.ts'
import type { InputValues, NumberOutput } from '../define.ts'
import { findRoot } from '../solve.ts'
import { words } from '../../src/words/words.ts'

/** Common practice: kelvin in hand below the part's limit. */
const inHandWanted = 10
/** Common practice: above this share of the road speed a fan stands in the way more than it helps. */
const goodAir = 0.25
/** Below this ratio one conductance is lower than another; above it they are the same. */
const alike = 1 - 1e-9

/** Model: how far an unmeasured core and air path may fall short. */
const doubt = 0.4
/** Model: exponent of the face velocity in UA. */
const exponent = 0.45
/** Model: faster air is taken as no better than this, m/s. */
const fastest = 8
/** The heat a litre carries moves by less than 2 % between 20 and 80 °C, so one temperature will do. */
const propertyTemperature = 323.15

const inputs = {
  coreWidth: {
    type: 'number',
    label: words`Core width`,
    symbol: 'W',
    of: 'length',
    units: ['mm', 'in'],
    hard: [50, 2000],
    usual: [100, 800],
    help: words`Of the finned face, without tanks.`,
    choice: true,
  },
  coreHeight: {
    type: 'number',
    label: words`Core height`,
    symbol: 'H',
    of: 'length',
    units: ['mm', 'in'],
    hard: [50, 2000],
    usual: [100, 800],
    help: words`Of the finned face, without tanks.`,
    choice: true,
  },
  faceShare: {
    type: 'number',
    label: words`Share of road speed at the face`,
    symbol: 's',
    of: 'fraction',
    units: ['%', '%'],
    hard: [1, 100],
    usual: [3, 40],
    help: words`Sealed duct 25 to 35 %, buried behind slats 8 %.`,
    assume: { value: 15, because: words`10 to 20 % reach the face behind a classic grille` },
  },
  cases: {
    type: 'list',
    label: words`Cases`,
    row: words`case`,
    help: words`At least the slow laden hill on the hottest day, a crawl, and parked if the charger is cooled too.`,
    rows: [1, 20],
    fields: {
      name: { type: 'text', label: words`Name`, help: words`Such as slow hill.` },
      heat: {
        type: 'number',
        label: words`Heat`,
        symbol: 'Q',
        of: 'power',
        units: ['W', 'BTU/h'],
        hard: [0, 100_000],
        usual: [50, 20_000],
        help: words`All heat that goes into the coolant, held for long.`,
      },
      speed: {
        type: 'number',
        label: words`Road speed`,
        symbol: 'v_r',
        of: 'speed',
        units: ['km/h', 'mph'],
        hard: [0, 250],
        usual: [0, 130],
        help: words`Zero for parked.`,
      },
      fan: {
        type: 'choice',
        label: words`Fan`,
        help: words`Whether the fan runs.`,
        options: { on: words`on`, off: words`off` },
        choice: true,
      },
    },
  },
  fanVelocity: {
    type: 'number',
    label: words`Fan’s face velocity`,
    symbol: 'v_f',
    of: 'speed',
    units: ['m/s', 'ft/s'],
    hard: [0.1, 8],
    usual: [0.5, 5],
    help: words`Its air flow through this core over the face area. Left out: no fan.`,
    optional: true,
    choice: true,
  },
  naturalDraught: {
    type: 'number',
    label: words`Natural draught`,
    symbol: 'v_n',
    of: 'speed',
    units: ['m/s', 'ft/s'],
    hard: [0.02, 1],
    usual: [0.05, 0.3],
    help: words`Face velocity at a standstill without fan.`,
    assume: { value: 0.15, because: words`warm air rises slowly through an upright core (model)` },
  },
  ambient: {
    type: 'number',
    label: words`Outside air`,
    symbol: 'T_a',
    of: 'temperature',
    units: ['°C', '°F'],
    hard: [-40, 60],
    usual: [10, 50],
    help: words`The hottest day it has to work on.`,
    assume: { value: 35, because: words`a hot summer day` },
  },
  altitude: {
    type: 'number',
    label: words`Altitude`,
    symbol: 'z',
    of: 'length',
    units: ['m', 'ft'],
    hard: [-430, 6000],
    usual: [0, 3000],
    help: words`Of the highest hill: thin air carries less.`,
    assume: { value: 0, because: words`sea level; 1000 m takes 11 % of the air` },
  },
  density: {
    type: 'number',
    label: words`Air density, if worked out`,
    symbol: 'ρ_a',
    of: 'density',
    units: ['kg/m³', 'lb/ft³'],
    hard: [0.4, 1.7],
    usual: [0.7, 1.45],
    help: words`From the air density page, at the outside temperature above; wins over the altitude.`,
    optional: true,
  },
  recirculation: {
    type: 'number',
    label: words`Hot air drawn back in`,
    symbol: 'ΔT_r',
    of: 'temperatureDifference',
    units: ['K', 'Δ°F'],
    hard: [0, 50],
    usual: [0, 20],
    help: words`How much warmer than outside the air enters the core; a conductance measured against outside air has it in already.`,
    assume: { value: 0, because: words`edges sealed, nothing hot in front` },
  },
  flow: {
    type: 'number',
    label: words`Coolant flow`,
    symbol: 'V̇',
    of: 'flow',
    units: ['L/min', 'gal/min'],
    hard: [0.2, 200],
    usual: [2, 30],
    help: words`In the loop as built: a bucket test beats a box.`,
  },
  ...coolantFields,
  inletLimit: {
    type: 'number',
    label: words`Part’s inlet limit`,
    symbol: 'T_max',
    of: 'temperature',
    units: ['°C', '°F'],
    hard: [20, 120],
    usual: [40, 85],
    help: words`Hottest coolant its sheet allows into the part that comes first behind the radiator.`,
  },
  coreTransfer: {
    type: 'number',
    label: words`Core’s heat transfer`,
    symbol: 'h',
    of: 'heatTransfer',
    units: ['W/(m²·K)', 'BTU/(h·ft²·Δ°F)'],
    hard: [100, 10_000],
    usual: [500, 3000],
    help: words`Per face area, at a face velocity of 1 m/s.`,
    assume: { value: 1500, because: words`a core 25 to 32 mm thick (model, not measured)` },
  },
  measuredConductance: {
    type: 'number',
    label: words`Measured conductance`,
    symbol: 'K_m',
    of: 'thermalConductance',
    units: ['W/K', 'BTU/(h·Δ°F)'],
    hard: [0.5, 5000],
    usual: [5, 500],
    help: words`Heat over the difference between coolant into the radiator and outside air, at this flow.`,
    optional: true,
  },
  measuredSpeed: {
    type: 'number',
    label: words`Road speed of that measurement`,
    symbol: 'v_mr',
    of: 'speed',
    units: ['km/h', 'mph'],
    hard: [5, 250],
    usual: [20, 130],
    help: words`When the air at the face was not measured, fan off.`,
    optional: true,
  },
  measuredFaceVelocity: {
    type: 'number',
    label: words`Face velocity of that measurement`,
    symbol: 'v_m',
    of: 'speed',
    units: ['m/s', 'ft/s'],
    hard: [0.05, 8],
    usual: [0.1, 6],
    help: words`Measured at the face, or the fan’s at a standstill; wins over the road speed.`,
    optional: true,
  },
} as const

type Inputs = InputValues<typeof inputs>

/** One way to explain what is known: which air reaches the face, and how good the core is. */
interface Core {
  readonly share: number
  /** UA against the model's. */
  readonly factor: number
}

interface Setup {
  readonly density: number
  readonly entering: number
  readonly capacity: number
  readonly cores: readonly Core[]
}

type Case = Pick<Inputs['cases'][number], 'heat' | 'speed' | 'fan'>

/** Density of what enters the core: hot air drawn back in is thinner than the day's. */
function enteringDensity(input: Inputs): number {
  const entering = input.ambient + input.recirculation
  return input.density === undefined
    ? airDensity(entering, input.altitude)
    : (input.density * input.ambient) / entering
}

function airCapacity(velocity: number, density: number, input: Inputs): number {
  return density * airSpecificHeat * input.coreWidth * input.coreHeight * velocity
}

function modelTransfer(velocity: number, input: Inputs): number {
  return input.coreTransfer * input.coreWidth * input.coreHeight * velocity ** exponent
}

function exchange(velocity: number, factor: number, input: Inputs, setup: Omit<Setup, 'cores'>) {
  const air = airCapacity(velocity, setup.density, input)
  const least = Math.min(air, setup.capacity)
  const transfer = factor * modelTransfer(velocity, input)
  // Beyond that many units more surface changes nothing that matters.
  const units = Math.min(transfer / least, mostTransferUnits)
  const effectiveness = crossflowEffectiveness(units, least / Math.max(air, setup.capacity)) ?? NaN
  return { transfer, effectiveness, conductance: effectiveness * least }
}

/** What holds for all cases, or in a builder's words why nothing can be told. */
function prepare(input: Inputs): Setup | string {
  const coolant = coolantOf(input.coolant, input.concentration, input.basis)
  const properties = coolant && propertiesOf(coolant, propertyTemperature)
  if (properties === undefined) {
    return coolant === undefined
      ? words`The glycol’s share and whether it is by volume or mass are not given: enter both.`
      : words`No properties are known for this coolant: enter a mix of at most 60 %.`
  }
  const entering = input.ambient + input.recirculation
  const setup = {
    density: enteringDensity(input),
    entering,
    capacity: properties.density * properties.specificHeat * input.flow,
  }
  const measured = input.measuredConductance
  const asEntered = { share: input.faceShare, factor: 1 }
  if (measured === undefined) return { ...setup, cores: [asEntered] }

  const road = input.measuredSpeed
  const velocity =
    input.measuredFaceVelocity ??
    (road === undefined ? undefined : airAt(road, input.faceShare, input))
  if (velocity === undefined) {
    return words`A measured conductance says nothing without the air it was measured in: enter the face velocity, or the road speed.`
  }
  const air = airCapacity(velocity, setup.density, input)
  const least = Math.min(air, setup.capacity)
  const ratio = least / Math.max(air, setup.capacity)
  const units = crossflowTransferUnits(measured / least, ratio)
  if (units === undefined) {
    return words`The measured conductance is more than air and coolant can carry at the speed and flow entered: more air reaches the core, or a reading is wrong. Check both.`
  }
  const factor = (units * least) / modelTransfer(velocity, input)
  const core = { share: input.faceShare, factor }
  if (input.measuredFaceVelocity !== undefined || road === undefined) {
    return { ...setup, cores: [core] }
  }
  const miss = (air: number) => exchange(air, 1, input, setup).conductance - measured
  const blamed = findRoot(miss, 1e-3, Math.min(road, fastest))
  return {
    ...setup,
    cores: blamed === undefined ? [core] : [core, { share: blamed / road, factor: 1 }],
  }
}

function airAt(road: number, share: number, input: Inputs, fan = 0): number {
  return Math.min(Math.max(road * share, fan, input.naturalDraught), fastest)
}

/** The least favourable of the cores for one case; undefined when the fan runs but is not described. */
function solve(one: Case, input: Inputs, setup: Setup) {
  const fan = one.fan === 'on' ? input.fanVelocity : 0
  if (fan === undefined) return undefined
  const results = setup.cores.map((core) => {
    const velocity = airAt(one.speed, core.share, input, fan)
    return { velocity, ...exchange(velocity, core.factor, input, setup) }
  })
  // At the speed it was measured at both come to what was measured: the core as entered stands.
  const worst = results.reduce((a, b) => (b.conductance < a.conductance * alike ? b : a))
  if (!(worst.conductance > 0)) return undefined
  const radiatorInlet = setup.entering + one.heat / worst.conductance
  return { ...worst, radiatorInlet, partInlet: radiatorInlet - one.heat / setup.capacity }
}

/** Face velocity at which this heat keeps the wanted kelvins in hand. */
function velocityFor(heat: number, input: Inputs, setup: Setup): number | undefined {
  const room = input.inletLimit - inHandWanted - setup.entering + heat / setup.capacity
  if (!(room > 0)) return undefined
  const spare = (velocity: number) =>
    Math.min(
      ...setup.cores.map((core) => exchange(velocity, core.factor, input, setup).conductance),
    ) -
    heat / room
  return spare(input.naturalDraught) >= 0
    ? input.naturalDraught
    : findRoot(spare, input.naturalDraught, fastest)
}

function hottest<R extends { readonly partInlet: number | undefined }>(
  rows: readonly R[],
): (R & { readonly partInlet: number }) | undefined {
  let worst: (R & { readonly partInlet: number }) | undefined
  for (const row of rows) {
    const { partInlet } = row
    if (partInlet === undefined) return undefined
    if (worst === undefined || partInlet > worst.partInlet) worst = { ...row, partInlet }
  }
  return worst
}

/** Which case is the worst, by its figure: two cases may bear one name. */
function worstOf(output: {
  readonly table: readonly { readonly partInlet: number | undefined }[]
  readonly worstInlet: number | undefined
}): number {
  return output.table.findIndex(
    ({ partInlet }) => partInlet !== undefined && partInlet === output.worstInlet,
  )
}

const temperature = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'temperature',
    units: ['°C', '°F'],
  }) as const satisfies NumberOutput
const conductance = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'thermalConductance',
    units: ['W/K', 'BTU/(h·Δ°F)'],
  }) as const satisfies NumberOutput
const fraction = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'fraction',
    units: ['%', '%'],
  }) as const satisfies NumberOutput
const velocity = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'speed',
    units: ['m/s', 'ft/s'],
  }) as const satisfies NumberOutput

export const radiatorAndFan = defineCalculator({
  id: 'radiator-and-fan',
  title: words`Radiator, and whether it needs a fan`,
  phase: 'cooling',
  purpose: words`How hot the coolant gets that reaches the part behind the radiator, on each kind of road, and whether a fan is needed.`,
  inputs,
  outputs: {
    table: {
      type: 'table',
      label: words`Case by case`,
      columns: {
        name: { type: 'text', label: words`Case` },
        faceVelocity: velocity(words`Face velocity`, 'v'),
        transfer: conductance(words`Core’s UA`, 'UA'),
        effectiveness: fraction(words`Effectiveness`, 'ε'),
        conductance: conductance(words`Conductance`, 'K'),
        radiatorInlet: temperature(words`Into radiator`, 'T_r'),
        partInlet: temperature(words`Into part`, 'T_p'),
      },
    },
    worstCase: { type: 'text', label: words`Worst case` },
    worstInlet: temperature(words`Coolant into the part, worst case`, 'T_p'),
    worstRadiatorInlet: temperature(words`Coolant into the radiator, worst case`, 'T_r'),
    worstConductance: conductance(words`Conductance, worst case`, 'K'),
    worstTransfer: conductance(words`Core’s UA, worst case`, 'UA'),
    worstEffectiveness: fraction(words`Effectiveness, worst case`, 'ε'),
    inHand: {
      type: 'number',
      label: words`In hand below the limit`,
      symbol: 'ΔT',
      of: 'temperatureDifference',
      units: ['K', 'Δ°F'],
    },
    fanNeeded: { type: 'text', label: words`Fan needed` },
    faceVelocityNeeded: velocity(words`Face velocity that keeps 10 K in hand`, 'v_req'),
    coolantCapacity: conductance(words`Coolant’s capacity rate`, 'C_c'),
    airDensity: {
      type: 'number',
      label: words`Density of the entering air`,
      symbol: 'ρ',
      of: 'density',
      units: ['kg/m³', 'lb/ft³'],
    },
  },
  formula: [
    String.raw`v = \max(s\,v_r,\; v_f,\; v_n), \qquad C_a = \rho\,c_p W H v, \qquad C_c = \rho_c c_c \dot V`,
    String.raw`UA = h\,W H \left(v / 1\,\mathrm{m/s}\right)^{0.45}, \qquad NTU = UA / C_{min}, \qquad C_r = C_{min} / C_{max}`,
    String.raw`\varepsilon = \frac{1}{C_r NTU}\sum_{n=0}^{\infty}\left[1 - e^{-NTU}\sum_{m=0}^{n}\frac{NTU^m}{m!}\right]\left[1 - e^{-C_r NTU}\sum_{m=0}^{n}\frac{(C_r NTU)^m}{m!}\right]`,
    String.raw`K = \varepsilon\,C_{min}, \qquad T_r = T_a + \Delta T_r + \frac{Q}{K}, \qquad T_p = T_r - \frac{Q}{C_c}`,
  ],
  validity: [
    words`Steady state: every case is held until nothing changes any more. Heat stored by a hill and felt in the crawl after it is not in.`,
    words`The part comes straight behind the radiator; each part in between warms the coolant further.`,
    words`UA is a model until measured; a measured one is scaled with face velocity by the same exponent.`,
    words`A conductance measured at a road speed may mean a poorer core or less air: each case takes the worse.`,
    words`Fan and road air do not add, the stronger counts; a fan that stands still holds air back, which is not in.`,
    words`Face velocities above 8 m/s are taken as 8 m/s; coolant properties are those at 50 °C.`,
  ],
  checks: {
    inlet: {
      title: words`Coolant into the part`,
      basis: 'the part’s own sheet; 10 K in hand: common practice',
    },
    fan: { title: words`Fan in air that is good already`, basis: 'common practice' },
    conductance: { title: words`Measured or model`, basis: 'model' },
    validity: { title: words`Within the model`, basis: 'model' },
  },
  hazards: ['hot-coolant', 'fan-starts'],
  sources: [
    {
      title:
        'Mason, Heat transfer in crossflow, Proc. 2nd US National Congress of Applied Mechanics',
      edition: '1955',
      at: 'series for both fluids unmixed',
      trust: 'recalled',
    },
    {
      title: 'Incropera, DeWitt, Bergman and Lavine, Fundamentals of Heat and Mass Transfer',
      at: 'chapter 11, effectiveness-NTU method',
      trust: 'read',
    },
    { title: 'UA = h A v^0.45, share of road speed, natural draught', trust: 'model' },
  ],
  compute(input) {
    const prepared = prepare(input)
    const setup = typeof prepared === 'string' ? undefined : prepared
    const solved = input.cases.map((one) => ({
      ...one,
      result: setup && solve(one, input, setup),
      still: setup && solve({ ...one, fan: 'off' }, input, setup),
    }))
    const table = solved.map(({ name, result }) => ({
      name,
      faceVelocity: result?.velocity,
      transfer: result?.transfer,
      effectiveness: result?.effectiveness,
      conductance: result?.conductance,
      radiatorInlet: result?.radiatorInlet,
      partInlet: result?.partInlet,
    }))
    const worst = hottest(table)
    const still = solved.map(({ still, ...one }) => ({ ...one, partInlet: still?.partInlet }))
    const stillest = hottest(still)
    const wanting = still.filter(
      ({ partInlet }) => partInlet !== undefined && partInlet > input.inletLimit - inHandWanted,
    )
    const heat = stillest && Math.max(stillest.heat, ...wanting.map((one) => one.heat))
    const needed =
      setup === undefined || heat === undefined ? undefined : velocityFor(heat, input, setup)
    return {
      table,
      worstCase: worst?.name,
      worstInlet: worst?.partInlet,
      worstRadiatorInlet: worst?.radiatorInlet,
      worstConductance: worst?.conductance,
      worstTransfer: worst?.transfer,
      worstEffectiveness: worst?.effectiveness,
      inHand: worst && input.inletLimit - worst.partInlet,
      fanNeeded:
        stillest === undefined
          ? undefined
          : wanting.length === 0
            ? words`no`
            : needed === undefined
              ? words`yes, but no face velocity up to 8 m/s is enough for ${stillest.name}: more core or coolant flow`
              : stillest.partInlet < input.inletLimit
                ? words`measure first, or fit one for ${stillest.name}`
                : words`yes, for ${stillest.name}`,
      faceVelocityNeeded: needed,
      coolantCapacity: setup?.capacity,
      airDensity: enteringDensity(input),
    }
  },
  findings(input, output, say) {
    const prepared = prepare(input)
    const fanUnknown =
      input.fanVelocity === undefined && input.cases.some((one) => one.fan === 'on')
    const trouble =
      typeof prepared === 'string'
        ? prepared
        : fanUnknown
          ? words`A case runs the fan, whose face velocity is not given: enter it or switch the fan off there.`
          : undefined
    const { inHand, worstInlet, worstConductance: k, worstCase = '', faceVelocityNeeded } = output
    const limit = say(input.inletLimit, '°C')
    const inletLevel =
      inHand === undefined
        ? 'unknown'
        : inHand >= inHandWanted
          ? 'pass'
          : inHand > 0
            ? 'watch'
            : 'stop'
    const reached = words`In the case “${worstCase}” the coolant reaches the part at ${say(worstInlet, '°C')}, limit ${limit}`
    const remedy =
      faceVelocityNeeded === undefined
        ? words`No face velocity up to ${say(fastest, 'm/s', 1)} is enough: take a larger core or more coolant flow.`
        : words`A face velocity of ${say(faceVelocityNeeded, 'm/s')} would keep ${say(inHandWanted, 'K', 2)} in hand.`

    const worst = input.cases[worstOf(output)]
    const doubted =
      worst && k !== undefined && worstInlet !== undefined
        ? worstInlet + worst.heat * (1 / ((1 - doubt) * k) - 1 / k)
        : undefined
    const [core, air] = typeof prepared === 'string' ? [] : prepared.cores
    const explained =
      air === undefined
        ? words`the core has ${say(core?.factor, '')} of the model’s UA`
        : words`either the core has ${say(core?.factor, '')} of the model’s UA or ${say(air.share, '%')} of the road speed reach it; each case takes the worse`
    const inGoodAir = input.fanVelocity !== undefined && input.faceShare > goodAir
    return [
      {
        check: 'inlet',
        level: inletLevel,
        text:
          inletLevel === 'unknown'
            ? words`The inlet temperature cannot be told until the inputs below are put right.`
            : inletLevel === 'pass'
              ? words`${reached}: ${say(inHand, 'K')} in hand.`
              : inletLevel === 'watch'
                ? `${words`${reached}: only ${say(inHand, 'K')} in hand. Measure on the worst hill, or fit a fan.`} ${remedy}`
                : `${words`${reached}: too hot.`} ${remedy}`,
        threshold: words`at most ${say(input.inletLimit - inHandWanted, '°C')}, ${say(inHandWanted, 'K', 2)} below the limit (watch); below ${limit} (stop)`,
      },
      {
        check: 'fan',
        level: fanUnknown ? 'unknown' : inGoodAir ? 'watch' : 'pass',
        text: fanUnknown
          ? words`A case runs a fan that is not described: enter its face velocity.`
          : input.fanVelocity === undefined
            ? words`No fan is fitted.`
            : inGoodAir
              ? words`${say(input.faceShare, '%')} of the road speed reach the face already: a fan in the way may make it worse at speed. Prove it with yarn tufts.`
              : words`${say(input.faceShare, '%')} of the road speed reach the face: the fan takes little away.`,
        threshold: words`with a fan at most 25 % of the road speed (watch)`,
      },
      {
        check: 'conductance',
        level:
          doubted === undefined
            ? 'unknown'
            : input.measuredConductance !== undefined || doubted < input.inletLimit
              ? 'pass'
              : 'watch',
        text:
          doubted === undefined
            ? words`There is no conductance to judge.`
            : input.measuredConductance !== undefined
              ? words`The conductance is measured: ${explained}.`
              : doubted < input.inletLimit
                ? words`UA is a model; with 40 % less conductance the part would still get ${say(doubted, '°C')}.`
                : words`UA is a model; with 40 % less conductance the part would get ${say(doubted, '°C')}. Measure heat and temperatures on the road and enter the conductance.`,
        threshold: words`unmeasured: with 40 % less conductance below ${limit} (watch)`,
      },
      {
        check: 'validity',
        level: trouble === undefined ? 'pass' : 'unknown',
        text: trouble ?? words`All that the model needs is given.`,
        threshold: words`coolant, fan and measurement fully described`,
      },
    ]
  },
  working(input, output, say) {
    const row = output.table[worstOf(output)]
    const heat = input.cases[worstOf(output)]?.heat
    if (row === undefined || heat === undefined) return [words`Cannot tell: see the checks.`]
    const area = input.coreWidth * input.coreHeight
    const air = airCapacity(row.faceVelocity ?? 0, output.airDensity ?? 0, input)
    const least = Math.min(air, output.coolantCapacity ?? 0)
    const entering = input.ambient + input.recirculation
    return [
      words`Worst case: ${row.name ?? ''}`,
      `C_a = ρ c_p W H v = ${say(output.airDensity, 'kg/m³', 4)} × ${say(airSpecificHeat, 'J/(kg·K)', 4)} × ${say(area, 'm²')} × ${say(row.faceVelocity, 'm/s')} = ${say(air, 'W/K')}`,
      words`C_c = ρ_c c_c V̇ = ${say(output.coolantCapacity, 'W/K')} at ${say(input.flow, 'L/min')}`,
      input.measuredConductance === undefined
        ? `UA = h W H v^0.45 = ${say(input.coreTransfer, 'W/(m²·K)')} × ${say(area, 'm²')} × ${say((row.faceVelocity ?? 0) ** exponent, '')} = ${say(row.transfer, 'W/K')}`
        : words`UA from the measured ${say(input.measuredConductance, 'W/K')}, scaled to ${say(row.faceVelocity, 'm/s')}: ${say(row.transfer, 'W/K')}`,
      `NTU = UA / C_min = ${say(row.transfer, 'W/K')} / ${say(least, 'W/K')} = ${say((row.transfer ?? 0) / least, '')}`,
      `K = ε C_min = ${say(row.effectiveness, '')} × ${say(least, 'W/K')} = ${say(row.conductance, 'W/K')}`,
      `T_r = T_a + ΔT_r + Q / K = ${say(entering, '°C')} + ${say(heat, 'W')} / ${say(row.conductance, 'W/K')} = ${say(row.radiatorInlet, '°C')}`,
      `T_p = T_r − Q / C_c = ${say(row.radiatorInlet, '°C')} − ${say(heat, 'W')} / ${say(output.coolantCapacity, 'W/K')} = ${say(row.partInlet, '°C')}`,
    ]
  },
  moreHazards: (_, output) => ((output.inHand ?? 0) < inHandWanted ? ['loss-of-drive'] : []),
  plot(input, output) {
    const prepared = prepare(input)
    const named = input.cases[worstOf(output)] ?? input.cases[0]
    const heat = named?.heat ?? 0
    // Slow air with much heat runs off the page.
    const top = Math.max(input.inletLimit, output.worstInlet ?? 0) + 40
    const line = (fan: 'on' | 'off') =>
      Array.from({ length: 33 }, (_, step) => {
        const speed = step * (4 / 3.6)
        const result =
          typeof prepared === 'string' ? undefined : solve({ heat, speed, fan }, input, prepared)
        return [speed, result && result.partInlet < top ? result.partInlet : undefined] as const
      })
    return {
      title: words`Coolant into the part, with the worst case’s heat`,
      x: { label: words`Road speed`, of: 'speed', units: ['km/h', 'mph'] },
      y: { label: words`Coolant into the part`, of: 'temperature', units: ['°C', '°F'] },
      series: [
        { name: words`no fan`, points: line('off'), line: 'solid' },
        ...(input.fanVelocity === undefined
          ? []
          : [{ name: words`fan on`, points: line('on'), line: 'dashed' as const }]),
      ],
      marks: [
        { x: 0, y: input.inletLimit, label: words`part’s limit`, kind: 'limit-y' },
        ...(named === undefined || output.worstInlet === undefined
          ? []
          : [{ x: named.speed, y: output.worstInlet, label: named.name, kind: 'point' as const }]),
      ],
      caption: words`The slower the road, the hotter the coolant; a fan holds it down from standstill on.`,
    }
  },
  examples: [
    {
      // Air 62 925 W / 20 K = 3146.25 W/K: at 1.204106 kg/m³ × 1006 J/(kg·K) × 0.5 m² that is 5.1947 m/s.
      // K = 62 925 W / 70 K = 898.93 W/K. Water 62 925 / 25 = 2517 W/K; U_i A_i = 3347 × 40 π × 5 mm × 0.65 m.
      name: 'Car radiator of 40 tubes, 62.9 kW',
      from: 'Cengel, Heat Transfer, example 11-6: water 90 to 65 °C, air 20 to 40 °C, U_i 3347 W/(m²·K) on 0.4084 m²',
      inputs: {
        coreWidth: '1000 mm',
        coreHeight: '500 mm',
        faceShare: '15 %',
        cases: [{ name: 'bench', heat: '62925 W', speed: '0 km/h', fan: 'on' }],
        fanVelocity: '5.1947 m/s',
        ambient: '20 °C',
        flow: '36.57 L/min',
        coolant: 'water',
        inletLimit: '80 °C',
        measuredConductance: '898.93 W/K',
        measuredFaceVelocity: '5.1947 m/s',
      },
      outputs: {
        worstTransfer: '1367 W/K',
        worstInlet: '65 °C',
        worstRadiatorInlet: '90 °C',
        inHand: '15 K',
      },
      tolerance: 0.001,
      why: 'The book reads its correction factor 0.97 off a chart.',
      findings: { inlet: 'pass', fan: 'pass', conductance: 'pass', validity: 'pass' },
    },
    {
      // UA = 227 × 9.29 = 2108.83 W/K = h × 0.5 m² × 4.72^0.45: h = 2098. Air 2.36 m³/s over 0.5 m².
      name: 'Air heated by hot water, 40.3 kW',
      from: 'Holman, Heat Transfer, example 10.11: water 82.22 °C in, air from 15.55 °C, UA 227 × 9.29 W/K',
      inputs: {
        coreWidth: '1000 mm',
        coreHeight: '500 mm',
        faceShare: '15 %',
        cases: [{ name: 'bench', heat: '40330 W', speed: '0 km/h', fan: 'on' }],
        fanVelocity: '4.72 m/s',
        ambient: '15.55 °C',
        flow: '9.744 L/min',
        coolant: 'water',
        inletLimit: '30 °C',
        coreTransfer: '2098 W/(m²·K)',
      },
      outputs: { worstRadiatorInlet: '82.22 °C', worstTransfer: '2108.8 W/K' },
      tolerance: 0.001,
      why: 'The book takes the air’s gas constant as 287 and finds the water’s capacity by trial.',
      findings: { inlet: 'watch', conductance: 'watch' },
    },
    {
      name: 'Slow hill without a fan, thin air, hot air drawn back in',
      from: 'threshold case',
      inputs: {
        coreWidth: '300 mm',
        coreHeight: '200 mm',
        faceShare: '30 %',
        cases: [
          { name: 'slow hill', heat: '1100 W', speed: '10 km/h', fan: 'off' },
          { name: 'cruise', heat: '600 W', speed: '80 km/h', fan: 'off' },
        ],
        fanVelocity: '1 m/s',
        ambient: '40 °C',
        altitude: '1500 m',
        recirculation: '5 K',
        flow: '8 L/min',
        coolant: 'ethylene-glycol',
        concentration: '50 %',
        basis: 'volume',
        inletLimit: '65 °C',
      },
      outputs: {},
      findings: { inlet: 'stop', fan: 'watch', conductance: 'watch', validity: 'pass' },
    },
    {
      name: 'A fan that is not described',
      from: 'threshold case',
      inputs: {
        coreWidth: '300 mm',
        coreHeight: '200 mm',
        cases: [{ name: 'crawl', heat: '400 W', speed: '5 km/h', fan: 'on' }],
        flow: '8 L/min',
        coolant: 'ethylene-glycol',
        concentration: '50 %',
        basis: 'volume',
        inletLimit: '65 °C',
      },
      outputs: {},
      findings: { inlet: 'unknown', fan: 'unknown', conductance: 'unknown', validity: 'unknown' },
    },
    {
      name: 'A measured conductance without the air it was measured in',
      from: 'threshold case',
      inputs: {
        coreWidth: '300 mm',
        coreHeight: '200 mm',
        cases: [{ name: 'cruise', heat: '600 W', speed: '80 km/h', fan: 'off' }],
        flow: '8 L/min',
        coolant: 'ethylene-glycol',
        concentration: '50 %',
        basis: 'volume',
        inletLimit: '65 °C',
        measuredConductance: '70 W/K',
      },
      outputs: {},
      findings: { inlet: 'unknown', validity: 'unknown' },
    },
  ],
})
