/**
 * Whether a hose, its clamp and its route suit a coolant loop: temperature, pressure left when hot,
 * joint, and what it could drip on.
 *
 * K, Pa, m in and out. The cap's pressure is above the air's (gauge), as stamped on it. A rating
 * counts only when it is known to be a working or a burst pressure. The PVC table is for rigid pipe.
 */
import { gravity } from '../air.ts'
import { defineCalculator } from '../define.ts'
import type { Level } from '../define.ts'
import { words } from '../../src/words/words.ts'

const kelvin = (celsius: number): number => celsius + 273.15
const fahrenheit = (degrees: number): number => kelvin((degrees - 32) / 1.8)

/** A clamp's place behind the bead, m; common practice. */
const behindBead = [3e-3, 6e-3] as const

/** Kelvin. PVC and silicone pass: common practice. EPDM 125 °C and silicone 175 °C: SAE J20, classes D and A. */
const bands = {
  pvc: [kelvin(40), kelvin(50)],
  epdm: [kelvin(110), kelvin(125)],
  silicone: [kelvin(150), kelvin(175)],
  metal: [kelvin(150), kelvin(150)],
  polyurethane: undefined,
  nylon: undefined,
} as const

/** Rigid PVC pipe, schedule 40 and 80: share of the 73 °F rating that is left; not recommended at 150 °F. */
const rigidPvc = [
  [fahrenheit(73), 1],
  [fahrenheit(80), 0.88],
  [fahrenheit(90), 0.75],
  [fahrenheit(100), 0.62],
  [fahrenheit(110), 0.5],
  [fahrenheit(120), 0.4],
  [fahrenheit(130), 0.3],
  [fahrenheit(140), 0.22],
  [fahrenheit(150), 0],
] as const

/** Common practice: usable pressure over what the loop can reach. */
const marginWanted = { pass: 3, stop: 2 } as const
/** Heaviest usual mix, 60 % glycol when cold, kg/m³. */
const coolantDensity = 1090

function rigidPvcDerate(temperature: number): number {
  let [before, left]: readonly [number, number] = rigidPvc[0]
  if (temperature <= before) return left
  for (const [at, share] of rigidPvc) {
    if (temperature <= at) return left + ((share - left) * (temperature - before)) / (at - before)
    before = at
    left = share
  }
  return 0
}

type Material = keyof typeof bands

/** Share of the rating left when hot; undefined where nobody publishes it and the sheet is missing. */
function derating(
  material: Material,
  temperature: number,
  sheet: number | undefined,
): number | undefined {
  if (sheet !== undefined) return sheet
  if (material === 'pvc') return rigidPvcDerate(temperature)
  const band = bands[material]
  return band !== undefined && temperature <= band[0] ? 1 : undefined
}

export const hoseSuitability = defineCalculator({
  id: 'hose-suitability',
  title: words`Tube, hose and clamp`,
  phase: 'cooling',
  purpose: words`Whether a hose stands the heat and pressure of the loop, its clamp suits it, and its drips can do no harm.`,
  inputs: {
    material: {
      type: 'choice',
      label: words`Material`,
      help: words`As printed on the hose or its sheet.`,
      options: {
        pvc: words`clear flexible PVC`,
        epdm: words`EPDM rubber, reinforced`,
        silicone: words`silicone, reinforced`,
        polyurethane: words`polyurethane`,
        nylon: words`nylon air line`,
        metal: words`aluminium or copper line`,
      },
      choice: true,
    },
    ratedPressure: {
      type: 'number',
      label: words`Rated pressure`,
      symbol: 'p_r',
      of: 'pressure',
      units: ['kPa', 'psi'],
      hard: [10, 20_000],
      usual: [50, 2000],
      help: words`At room temperature, from the hose or its sheet.`,
      optional: true,
    },
    rating: {
      type: 'choice',
      label: words`The rating is`,
      help: words`A burst pressure is three to four times a working pressure.`,
      options: {
        working: words`a working pressure`,
        burst: words`a burst pressure`,
        unknown: words`not stated`,
      },
      optional: true,
    },
    burstFactor: {
      type: 'number',
      label: words`Burst over working pressure`,
      symbol: 'n',
      of: 'number',
      units: ['', ''],
      hard: [1, 10],
      usual: [3, 4],
      help: words`Used for a burst pressure only.`,
      assume: { value: 4, because: words`hose notes give 3 to 4; the careful end` },
    },
    sheetDerate: {
      type: 'number',
      label: words`Rating left when hot, from its sheet`,
      symbol: 'k_s',
      of: 'fraction',
      units: ['%', '%'],
      hard: [1, 100],
      usual: [10, 100],
      help: words`At the hotter of coolant and bay. Better than any table.`,
      optional: true,
    },
    sheetTemperature: {
      type: 'number',
      label: words`Hottest its sheet allows`,
      symbol: 'T_max',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [0, 260],
      usual: [40, 180],
      help: words`For hot water and glycol, not for air. Wins over the material’s usual limit.`,
      optional: true,
    },
    coolantTemperature: {
      type: 'number',
      label: words`Hottest coolant`,
      symbol: 'T_c',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-40, 150],
      usual: [20, 110],
      help: words`On the worst day and hill.`,
    },
    bayTemperature: {
      type: 'number',
      label: words`Hottest air round the hose`,
      symbol: 'T_b',
      of: 'temperature',
      units: ['°C', '°F'],
      hard: [-40, 150],
      usual: [20, 110],
      help: words`Under the bonnet, beside the charger or heater.`,
    },
    capPressure: {
      type: 'number',
      label: words`Cap opens at`,
      symbol: 'p_cap',
      of: 'gaugePressure',
      units: ['kPa gauge', 'psi gauge'],
      hard: [0, 300],
      usual: [0, 150],
      help: words`Stamped on it; zero for an open tank.`,
    },
    pumpPressure: {
      type: 'number',
      label: words`Pump’s shut-off pressure`,
      symbol: 'p_p',
      of: 'pressure',
      units: ['kPa', 'psi'],
      hard: [0, 1000],
      usual: [5, 100],
      help: words`What it reaches against a blocked hose.`,
    },
    staticHeight: {
      type: 'number',
      label: words`Height of coolant above the hose`,
      symbol: 'h',
      of: 'length',
      units: ['m', 'ft'],
      hard: [0, 10],
      usual: [0, 2],
      help: words`From the hose’s lowest place to the tank’s full mark.`,
    },
    clamp: {
      type: 'choice',
      label: words`Clamp`,
      help: words`What holds it on the barb.`,
      options: {
        spring: words`constant-tension spring`,
        lined: words`lined worm-drive`,
        worm: words`plain perforated worm-drive`,
        ear: words`crimped ear`,
        none: words`cable tie, wire or none`,
        fitting: words`threaded or brazed fitting`,
      },
      choice: true,
    },
    bead: {
      type: 'choice',
      label: words`Bead or barb on the spigot`,
      help: words`A ridge that the hose has to climb.`,
      options: { yes: words`yes`, no: words`no` },
    },
    drip: {
      type: 'choice',
      label: words`Drips onto high voltage`,
      help: words`Follow a drop from every joint and along the hose, also on a slope.`,
      options: {
        none: words`cannot reach it`,
        shielded: words`only past a tray or shield`,
        open: words`can reach it`,
        unknown: words`not looked at`,
      },
    },
  },
  outputs: {
    worstTemperature: {
      type: 'number',
      label: words`Hottest at the hose`,
      symbol: 'T',
      of: 'temperature',
      units: ['°C', '°F'],
    },
    derate: {
      type: 'number',
      label: words`Rating left when hot`,
      symbol: 'k',
      of: 'fraction',
      units: ['%', '%'],
    },
    usablePressure: {
      type: 'number',
      label: words`Usable pressure`,
      symbol: 'p_u',
      of: 'pressure',
      units: ['kPa', 'psi'],
    },
    loopPressure: {
      type: 'number',
      label: words`Pressure the loop can reach`,
      symbol: 'p',
      of: 'pressure',
      units: ['kPa', 'psi'],
    },
    margin: { type: 'number', label: words`Margin`, symbol: 'M', of: 'number', units: ['', ''] },
  },
  formula: [
    String.raw`T = \max(T_c, T_b), \qquad p_u = \frac{p_r}{n}\,k(T) \quad (n = 1 \text{ for a working pressure})`,
    String.raw`p = p_{cap} + p_p + \rho g h, \qquad M = \frac{p_u}{p}`,
  ],
  validity: [
    words`The table for PVC is published for rigid pipe as far as is known; flexible tube is softer. The hose’s own sheet is better.`,
    words`For rubber no loss of rating is published: within its usual temperature the rating is taken whole, above it as unknown.`,
    words`A hose on the suction side can also collapse, and cold barbs shrink and weep; neither is worked here.`,
  ],
  checks: {
    temperature: {
      title: words`Temperature`,
      basis:
        'published: SAE J20 (FEB2022), classes A and D, for the upper limits of rubber; otherwise common practice',
    },
    derating: { title: words`Where the derating comes from`, basis: 'the hose’s own sheet' },
    pressure: { title: words`Pressure in hand`, basis: 'common practice' },
    joint: { title: words`Clamp and spigot`, basis: 'common practice' },
    drip: { title: words`Drips onto high voltage`, basis: 'common practice' },
  },
  hazards: ['hot-coolant', 'leak-onto-high-voltage'],
  sources: [
    {
      title:
        'Temperature derating of rigid PVC pipe, schedule 40 and 80, as published by pipe makers',
      at: '73 to 150 °F',
      trust: 'read',
    },
    {
      title: 'SAE J20, Coolant System Hoses',
      edition: 'FEB2022',
      at: 'table 1, as summarised publicly: class D EPDM to 125 °C, class A silicone to 175 °C',
      trust: 'read',
    },
    { title: 'EPDM to 110 °C without a watch: trade magazine', trust: 'recalled' },
  ],
  compute(input) {
    const worst = Math.max(input.coolantTemperature, input.bayTemperature)
    const derate = derating(input.material, worst, input.sheetDerate)
    const divisor =
      input.rating === 'working' ? 1 : input.rating === 'burst' ? input.burstFactor : undefined
    const usable =
      input.ratedPressure === undefined || divisor === undefined || derate === undefined
        ? undefined
        : (input.ratedPressure / divisor) * derate
    const loop =
      input.capPressure + input.pumpPressure + coolantDensity * gravity * input.staticHeight
    return {
      worstTemperature: worst,
      derate,
      usablePressure: usable,
      loopPressure: loop,
      margin: usable === undefined || loop === 0 ? undefined : usable / loop,
    }
  },
  findings(input, output, say) {
    const worst = output.worstTemperature ?? Infinity
    const { material, sheetTemperature: sheet } = input
    const band = bands[material]
    const [passes, stops] = sheet === undefined ? (band ?? []) : [sheet, sheet]
    const hot = say(worst, '°C')
    const replace =
      material === 'pvc'
        ? ` ${words`It yellows, stiffens and creeps off barbs: for bench and first fill.`}`
        : ''
    const temperatureLevel: Level =
      passes === undefined || stops === undefined
        ? 'unknown'
        : worst <= passes
          ? 'pass'
          : worst <= stops
            ? 'watch'
            : 'stop'
    const limits =
      sheet === undefined
        ? words`at most ${say(passes, '°C')} (watch), ${say(stops, '°C')} (stop)`
        : words`at most ${say(sheet, '°C')}, by its sheet (stop)`

    const { derate, margin, usablePressure: usable } = output
    // A temperature typed in °F is not the table's to the last bit.
    const weaker = derate !== undefined && derate < 1 - 1e-9
    const fromTable = material === 'pvc' && input.sheetDerate === undefined && weaker
    const deratingLevel: Level = derate === undefined ? 'unknown' : fromTable ? 'watch' : 'pass'

    const loop = say(output.loopPressure, 'kPa')
    const idle = output.loopPressure === 0
    const pressureLevel: Level =
      margin === undefined
        ? 'unknown'
        : margin >= marginWanted.pass
          ? 'pass'
          : margin >= marginWanted.stop
            ? 'watch'
            : 'stop'

    const { clamp } = input
    const soft = material === 'silicone' || material === 'pvc'
    const bites = clamp === 'worm' && soft
    const creeps = input.bead === 'no' && clamp !== 'fitting'
    const jointLevel: Level =
      clamp === 'none' ? 'stop' : clamp === 'worm' || creeps ? 'watch' : 'pass'
    const jointText =
      clamp === 'none'
        ? words`Nothing holds the hose that keeps its grip when hot: fit a constant-tension spring or lined worm clamp.`
        : bites
          ? words`A plain worm clamp bites into this soft hose and squeezes it out: fit a lined or constant-tension one.`
          : clamp === 'worm'
            ? words`A plain worm clamp comes loose as the hose flows cold: fit a lined or constant-tension one, or nip it up after the first heat and again later.`
            : creeps
              ? words`Without a bead the hose creeps off: have a bead rolled, or fit beaded spigots.`
              : clamp === 'fitting'
                ? words`A fitting holds it: use the one its sheet names.`
                : words`This kind of clamp keeps its grip; set it ${say(behindBead[0], 'mm', 1)} to ${say(behindBead[1], 'mm', 1)} behind the bead.`
    const dripLevel = (
      { none: 'pass', shielded: 'watch', open: 'stop', unknown: 'unknown' } as const
    )[input.drip]
    const dripText = {
      none: words`No drop can reach a high-voltage joint.`,
      shielded: words`Only a tray or shield keeps drops from a high-voltage joint: prove it with water on a slope, or re-route.`,
      open: words`A drop can reach a high-voltage joint: re-route the hose.`,
      unknown: words`Nobody has followed the drops yet: do so from every joint before filling.`,
    }[input.drip]
    return [
      {
        check: 'temperature',
        level: temperatureLevel,
        text:
          temperatureLevel === 'unknown'
            ? words`This material softens in hot glycol unless its maker says otherwise: enter the hottest its sheet allows for water and glycol.`
            : temperatureLevel === 'pass'
              ? `${words`It gets ${hot} at most.`}${replace}`
              : `${temperatureLevel === 'watch' ? words`It gets ${hot}: near the end of what this material stands. Take reinforced EPDM or silicone, or cool the loop.` : words`It gets ${hot}: too hot for it. Take reinforced EPDM or silicone, or cool the loop.`}${replace}`,
        threshold:
          temperatureLevel === 'unknown' ? words`the hottest temperature of its own sheet` : limits,
      },
      {
        check: 'derating',
        level: deratingLevel,
        text:
          derate === undefined
            ? words`Nothing is known of its strength at ${hot}: enter what its sheet leaves of the rating.`
            : input.sheetDerate !== undefined
              ? words`Its sheet leaves ${say(derate, '%')} of the rating.`
              : fromTable
                ? words`${say(derate, '%')} of the rating is left at ${hot} by a table for rigid PVC pipe; flexible tube may keep less. Ask for the hose’s own sheet.`
                : words`The rating is taken whole at ${hot}.`,
        threshold: words`from the hose’s own sheet (watch: table for rigid pipe)`,
      },
      {
        check: 'pressure',
        level: pressureLevel,
        text: idle
          ? words`The loop has no pressure at all: enter cap, pump and height.`
          : input.ratedPressure === undefined
            ? words`The loop can reach ${loop}; the hose’s rating is not given.`
            : input.rating === undefined || input.rating === 'unknown'
              ? words`The loop can reach ${loop}; it is not stated whether the hose’s ${say(input.ratedPressure, 'kPa')} is a working or a burst pressure. Ask its maker.`
              : margin === undefined
                ? words`The loop can reach ${loop}; what the hose stands when hot is not known.`
                : margin >= marginWanted.pass
                  ? words`The hot hose stands ${say(usable, 'kPa')}, ${say(margin, '')} times the ${loop} that the loop can reach.`
                  : words`The hot hose stands ${say(usable, 'kPa')}, only ${say(margin, '')} times the ${loop} that the loop can reach. Take a stronger hose or a lower cap.`,
        threshold: words`at least 3 times the loop’s pressure (watch), 2 times (stop)`,
      },
      {
        check: 'joint',
        level: jointLevel,
        text: jointText,
        threshold: words`a clamp that keeps its tension, behind a bead (watch); no clamp (stop)`,
      },
      {
        check: 'drip',
        level: dripLevel,
        text: dripText,
        threshold: words`no path (shield: watch; open: stop)`,
      },
    ]
  },
  working(input, output, say) {
    const divisor = input.rating === 'burst' ? ` / ${say(input.burstFactor, '')}` : ''
    const derate = say(output.derate, '%')
    return [
      `T = max(T_c, T_b) = max(${say(input.coolantTemperature, '°C')}, ${say(input.bayTemperature, '°C')}) = ${say(output.worstTemperature, '°C')}`,
      output.derate === undefined
        ? `k = ${derate}`
        : input.sheetDerate !== undefined
          ? words`k = ${derate} by its sheet`
          : input.material === 'pvc'
            ? words`k = ${derate} by the table for rigid pipe`
            : words`k = ${derate} within its usual temperature`,
      `p_u = p_r${divisor === '' ? '' : ' / n'} × k = ${say(input.ratedPressure, 'kPa')}${divisor} × ${say(output.derate, '')} = ${say(output.usablePressure, 'kPa')}`,
      `p = p_cap + p_p + ρ g h = ${say(input.capPressure, 'kPa')} + ${say(input.pumpPressure, 'kPa')} + ${say(coolantDensity, 'kg/m³', 4)} × ${say(gravity, 'm/s²')} × ${say(input.staticHeight, 'm')} = ${say(output.loopPressure, 'kPa')}`,
      `M = p_u / p = ${say(output.usablePressure, 'kPa')} / ${say(output.loopPressure, 'kPa')} = ${say(output.margin, '')}`,
    ]
  },
  examples: [
    {
      name: 'Pipe rated 280 psi at 140 °F',
      from: 'PVC and CPVC piping, technical manual: 280 psi × 0.22 = 62 psi',
      inputs: {
        material: 'pvc',
        ratedPressure: '280 psi',
        rating: 'working',
        coolantTemperature: '140 °F',
        bayTemperature: '100 °F',
        capPressure: '0 kPa gauge',
        pumpPressure: '20 kPa',
        staticHeight: '0 m',
        clamp: 'worm',
        bead: 'yes',
        drip: 'open',
      },
      outputs: { usablePressure: '62 psi', derate: '22 %', worstTemperature: '140 °F' },
      findings: {
        temperature: 'stop',
        derating: 'watch',
        pressure: 'pass',
        joint: 'watch',
        drip: 'stop',
      },
    },
    {
      name: 'Fitting rated 243 psi at 110 °F',
      from: 'PVC pipe, valves and fittings, temperature correction factors: 243 psi × 0.50 = 121 psi',
      inputs: {
        material: 'pvc',
        ratedPressure: '243 psi',
        rating: 'working',
        coolantTemperature: '80 °F',
        bayTemperature: '110 °F',
        capPressure: '100 kPa gauge',
        pumpPressure: '300 kPa',
        staticHeight: '1 m',
        clamp: 'lined',
        bead: 'yes',
        drip: 'shielded',
      },
      outputs: { usablePressure: '121 psi', derate: '50 %' },
      tolerance: 0.005,
      why: 'The source cuts 121.5 psi to 121 psi.',
      findings: { temperature: 'watch', pressure: 'watch', joint: 'pass', drip: 'watch' },
    },
    {
      // 1200 kPa / 4 = 300 kPa; 40 + 30 + 1.090 × 9.80665 × 1 = 80.69 kPa; 300 / 80.69 = 3.718.
      name: 'Heater hose known by its burst pressure',
      from: 'hand: 1200 kPa / 4 over 30 kPa + 40 kPa + 1090 kg/m³ × g × 1 m',
      inputs: {
        material: 'epdm',
        ratedPressure: '1200 kPa',
        rating: 'burst',
        coolantTemperature: '65 °C',
        bayTemperature: '70 °C',
        capPressure: '30 kPa gauge',
        pumpPressure: '40 kPa',
        staticHeight: '1 m',
        clamp: 'spring',
        bead: 'yes',
        drip: 'none',
      },
      outputs: { usablePressure: '300 kPa', loopPressure: '80.69 kPa', margin: '3.718' },
      findings: {
        temperature: 'pass',
        derating: 'pass',
        pressure: 'pass',
        joint: 'pass',
        drip: 'pass',
      },
    },
    {
      name: 'Nylon air line, nothing known',
      from: 'threshold case',
      inputs: {
        material: 'nylon',
        ratedPressure: '1000 kPa',
        rating: 'unknown',
        coolantTemperature: '65 °C',
        bayTemperature: '60 °C',
        capPressure: '30 kPa gauge',
        pumpPressure: '40 kPa',
        staticHeight: '1 m',
        clamp: 'none',
        bead: 'no',
        drip: 'unknown',
      },
      outputs: {},
      findings: {
        temperature: 'unknown',
        derating: 'unknown',
        pressure: 'unknown',
        joint: 'stop',
        drip: 'unknown',
      },
    },
  ],
})
