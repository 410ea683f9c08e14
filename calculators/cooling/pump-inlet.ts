/**
 * Whether the pump gets its coolant or draws vapour: pressure at its inlet against boiling.
 *
 * In: mix, temperature, altitude, cap, height of the tank, losses of the suction hose, what the pump
 * asks for. Out: net positive suction head available, and pressure at the inlet. Absolute pressures
 * inside: at 2000 m a fifth of the air's push is missing, and so is all of the cap's when it leaks.
 */
import { gravity, standardPressure } from '../air.ts'
import { coolantFields, coolantFinding, coolantOf } from '../coolant-fields.ts'
import { propertiesOf, propertySource } from '../coolant.ts'
import { defineCalculator, type InputValues, type Level } from '../define.ts'
import { hoseDrop, velocityIn } from '../friction.ts'
import { vapourPressure } from '../vapour.ts'
import { words } from '../../src/words/words.ts'

/** m above what the pump asks for, for water; pump handbooks after the Hydraulic Institute. */
const inHandWanted = 1.5
/** Pa gauge at the inlet with the cap open; common practice. */
const suctionStop = -20e3
/** Hose wall, m: handbook figure for smooth drawn tube and new hose. */
const roughness = 1.5e-6

const inputs = {
  ...coolantFields,
  temperature: {
    type: 'number',
    label: words`Hottest coolant at the pump`,
    symbol: 'T',
    of: 'temperature',
    units: ['°C', '°F'],
    hard: [-30, 100],
    usual: [20, 80],
    help: words`On the worst day and hill.`,
  },
  altitude: {
    type: 'number',
    label: words`Altitude`,
    symbol: 'h',
    of: 'length',
    units: ['m', 'ft'],
    hard: [-400, 5000],
    usual: [0, 3000],
    help: words`The highest pass.`,
    assume: { value: 0, because: words`at sea level; give the highest road you drive` },
  },
  cap: {
    type: 'number',
    label: words`Pressure under the cap`,
    symbol: 'p_c',
    of: 'gaugePressure',
    units: ['kPa gauge', 'psi gauge'],
    hard: [0, 300],
    usual: [0, 120],
    help: words`Hot and closed; zero for an open tank.`,
    assume: { value: 0, because: words`an open tank, or a cap that has just been off` },
  },
  height: {
    type: 'number',
    label: words`Tank level above the pump inlet`,
    symbol: 'z',
    of: 'length',
    units: ['mm', 'in'],
    hard: [-9000, 9000],
    usual: [-200, 1500],
    help: words`At the low mark; negative where the pump sits higher.`,
  },
  loss: {
    type: 'number',
    label: words`Loss of the suction side`,
    symbol: 'Δp_s',
    of: 'pressure',
    units: ['kPa', 'psi'],
    hard: [0, 200],
    usual: [0, 20],
    help: words`Between tank and pump with what lies there; or leave out and give the hose.`,
    optional: true,
  },
  flow: {
    type: 'number',
    label: words`Flow`,
    symbol: 'V̇',
    of: 'flow',
    units: ['L/min', 'gal/min'],
    hard: [0.5, 200],
    usual: [4, 40],
    help: words`For the loss of the hose.`,
    optional: true,
  },
  bore: {
    type: 'number',
    label: words`Suction hose, bore`,
    symbol: 'd',
    of: 'length',
    units: ['mm', 'in'],
    hard: [6, 80],
    usual: [12, 32],
    help: words`Inside diameter.`,
    choice: true,
    optional: true,
  },
  length: {
    type: 'number',
    label: words`Suction hose, length`,
    symbol: 'L',
    of: 'length',
    units: ['m', 'ft'],
    hard: [0.02, 30],
    usual: [0.1, 3],
    help: words`From tank to pump.`,
    choice: true,
    optional: true,
  },
  fittings: {
    type: 'number',
    label: words`Suction fittings, ΣK`,
    symbol: 'K',
    of: 'number',
    units: ['', ''],
    hard: [0, 60],
    usual: [0, 10],
    help: words`Outlet of the tank 0.5, sharp elbow 1.5, bend 0.4.`,
    assume: { value: 2, because: words`the tank’s outlet and one sharp elbow` },
  },
  required: {
    type: 'number',
    label: words`Suction head the pump asks for`,
    symbol: 'NPSH_r',
    of: 'length',
    units: ['m', 'ft'],
    hard: [0.1, 15],
    usual: [0.5, 5],
    help: words`NPSH on its sheet, at this flow.`,
    assume: {
      value: 3,
      because: words`small circulation pumps seldom ask for more (recalled); their sheet governs`,
    },
  },
} as const

type Inputs = InputValues<typeof inputs>

function worked(input: Inputs) {
  const coolant = coolantOf(input.coolant, input.concentration, input.basis)
  const liquid = coolant && propertiesOf(coolant, input.temperature)
  const { flow, bore, length, fittings } = input
  const loss =
    input.loss ??
    (liquid === undefined || flow === undefined || bore === undefined || length === undefined
      ? undefined
      : hoseDrop({ length, bore, fittings, roughness }, flow, liquid))
  const surface = standardPressure(input.altitude) + input.cap
  const vapour = vapourPressure(input.temperature)
  if (liquid === undefined || loss === undefined) {
    return { coolant, liquid, loss, surface, vapour, weight: undefined }
  }
  const weight = liquid.density * gravity
  const column = weight * input.height - loss
  return {
    coolant,
    liquid,
    loss,
    surface,
    vapour,
    weight,
    column,
    available: (surface - vapour + column) / weight,
    open: (surface - input.cap - vapour + column) / weight,
  }
}

const head = (label: string, symbol: string) =>
  ({ type: 'number', label, symbol, of: 'length', units: ['m', 'ft'] }) as const
const absolute = (label: string, symbol: string) =>
  ({
    type: 'number',
    label,
    symbol,
    of: 'absolutePressure',
    units: ['kPa abs', 'psi abs'],
  }) as const

export const pumpInlet = defineCalculator({
  id: 'pump-inlet',
  title: words`Pressure at the pump inlet`,
  phase: 'cooling',
  purpose: words`Whether the coolant reaches the pump as liquid: suction head available when hot and high up, with the cap tight and with it open.`,
  inputs,
  outputs: {
    available: head(words`Suction head available`, 'NPSH_a'),
    inHand: head(words`Suction head in hand`, 'NPSH_a − NPSH_r'),
    open: head(words`Available with the cap open`, 'NPSH_o'),
    inlet: absolute(words`At the pump inlet`, 'p_in'),
    vapour: absolute(words`Water boils at`, 'p_v'),
    gauge: {
      type: 'number',
      label: words`At the inlet with the cap open`,
      symbol: 'p_o',
      of: 'gaugePressure',
      units: ['kPa gauge', 'psi gauge'],
    },
    suctionLoss: {
      type: 'number',
      label: words`Loss of the suction side, used`,
      symbol: 'Δp',
      of: 'pressure',
      units: ['kPa', 'psi'],
    },
  },
  formula: [
    String.raw`\mathit{NPSH}_a = \frac{p_\text{air}(h) + p_c - p_v(T) - \Delta p}{\rho g} + z`,
    String.raw`p_v = p_k \exp\left[\frac{T_k}{T}\left(a_1\vartheta + a_2\vartheta^{1.5} + a_3\vartheta^3 + a_4\vartheta^{3.5} + a_5\vartheta^4 + a_6\vartheta^{7.5}\right)\right], \quad \vartheta = 1 - \frac{T}{T_k}`,
  ],
  validity: [
    words`The vapour pressure is that of water. Glycol boils later: at 50 % by volume its vapour pressure is about three quarters of that, so this is the careful end.`,
    words`The air’s pressure is the standard atmosphere’s; weather takes or gives 3 %.`,
    words`The pressure at the inlet is that of the coolant brought to rest; flowing past, it is lower by ρv²/2, which is 0.5 kPa at 1 m/s and 2 kPa at 2 m/s.`,
    words`The pump is taken to draw from the tank through one hose. Where the tank joins the loop elsewhere, the loss is that between its joint and the pump.`,
  ],
  checks: {
    head: {
      title: words`Suction head`,
      basis:
        'the pump’s own sheet; published: pump handbooks after the Hydraulic Institute, 1.5 m more for water',
    },
    open: { title: words`With the cap open or leaking`, basis: 'the pump’s own sheet' },
    suction: { title: words`Suction at the inlet`, basis: 'common practice' },
    coolant: { title: words`Coolant properties`, basis: 'published: ASHRAE 2001, IIR 2010, IAPWS' },
  },
  hazards: ['hot-coolant', 'dry-pump'],
  sources: [
    { title: 'IAPWS SR1-86, saturation properties of water', edition: '1992', trust: 'read' },
    { title: 'US Standard Atmosphere 1976', trust: 'read' },
    {
      title: 'Flow of Fluids through Valves, Fittings and Pipe, Crane TP-410',
      at: 'net positive suction head',
      trust: 'read',
    },
    { title: 'Suction head margins after the Hydraulic Institute', trust: 'read' },
  ],
  compute(input) {
    const { available, open, column, surface, vapour, loss } = worked(input)
    return {
      available,
      inHand: available === undefined ? undefined : available - input.required,
      open,
      inlet: column === undefined ? undefined : surface + column,
      vapour,
      gauge: column,
      suctionLoss: loss,
    }
  },
  findings(input, { available, inHand, open, gauge, vapour }, say) {
    const { coolant } = worked(input)
    const { loss, flow, bore, length } = input
    const m = (value: number | undefined) => say(value, 'm', 2)
    const missing =
      loss === undefined && [flow, bore, length].includes(undefined)
        ? words`The loss of the suction side is not known: give it, or flow, bore and length of the hose.`
        : words`It cannot be told without the coolant’s density.`
    const headLevel: Level =
      inHand === undefined
        ? 'unknown'
        : inHand < 0
          ? 'stop'
          : inHand < inHandWanted
            ? 'watch'
            : 'pass'
    const openLevel: Level =
      open === undefined ? 'unknown' : open < input.required ? 'watch' : 'pass'
    const suctionLevel: Level =
      gauge === undefined ? 'unknown' : gauge < suctionStop ? 'stop' : gauge < 0 ? 'watch' : 'pass'
    return [
      {
        check: 'head',
        level: headLevel,
        text:
          headLevel === 'unknown'
            ? missing
            : headLevel === 'pass'
              ? words`${m(available)} is there and the pump asks for ${m(input.required)}; water boils at ${say(vapour, 'kPa abs')} here.`
              : headLevel === 'stop'
                ? words`${m(available)} is there and the pump asks for ${m(input.required)}: it draws vapour, rattles and wears. Raise the tank, shorten and widen the suction hose, cooler coolant, or a pressure cap.`
                : words`${m(available)} is there and the pump asks for ${m(input.required)}: little is in hand. Raise the tank, shorten and widen the suction hose, cooler coolant, or a pressure cap.`,
        threshold: words`at least ${m(input.required + inHandWanted)} (watch), ${m(input.required)} (stop)`,
      },
      {
        check: 'open',
        level: openLevel,
        text:
          open === undefined
            ? missing
            : openLevel === 'pass'
              ? words`With the cap open ${m(open)} is left, enough for the pump.`
              : words`With the cap open or leaking only ${m(open)} is left: the pump depends on its cap. Replace the cap when in doubt, and never open it hot.`,
        threshold: words`at least ${m(input.required)}`,
      },
      {
        check: 'suction',
        level: suctionLevel,
        text:
          gauge === undefined
            ? missing
            : suctionLevel === 'pass'
              ? words`The inlet stands at ${say(gauge, 'kPa gauge')} with the cap open: nothing is sucked in.`
              : suctionLevel === 'stop'
                ? words`The inlet stands at ${say(gauge, 'kPa gauge')} with the cap open: it collapses soft hose and draws air past clamps and seals. Spring-supported hose, a wider bore, a higher tank.`
                : words`The inlet stands at ${say(gauge, 'kPa gauge')} with the cap open: it draws air past clamps and seals. Spring-supported hose, a wider bore, a higher tank.`,
        threshold: words`at least ${say(0, 'kPa gauge', 1)} (watch), ${say(suctionStop, 'kPa gauge', 1)} (stop)`,
      },
      { check: 'coolant', ...coolantFinding(coolant, input.temperature, say) },
    ]
  },
  working(input, { available, open }, say) {
    const { coolant, liquid, loss, surface, vapour } = worked(input)
    const kPa = (value: number | undefined) => say(value, 'kPa', 4)
    const hose =
      input.loss === undefined && input.flow !== undefined && input.bore !== undefined
        ? [
            words`Suction hose: v = ${say(velocityIn(input.bore, input.flow), 'm/s')}, Δp = (f L/d + ΣK) ρv²/2 = ${kPa(loss)}`,
          ]
        : []
    return [
      words`p_air(${say(input.altitude, 'm')}) = ${kPa(standardPressure(input.altitude))}, with the cap ${kPa(surface)}; p_v(${say(input.temperature, '°C')}) = ${kPa(vapour)}`,
      `ρ = ${say(liquid?.density, 'kg/m³', 4)}${coolant ? ` (${propertySource(coolant)})` : ''}`,
      ...hose,
      `NPSH_a = (${kPa(surface)} − ${kPa(vapour)} − ${kPa(loss)}) / (${say(liquid?.density, 'kg/m³', 4)} × ${say(gravity, 'm/s²', 4)}) + ${say(input.height, 'm')} = ${say(available, 'm')}`,
      words`With the cap open: ${say(open, 'm')}`,
    ]
  },
  examples: [
    {
      name: 'Lift from a pressurised tank',
      from: 'Crane TP-410, example 7.32: 5 psi gauge, lift 25 ft, loss 6 ft of water at 60 °F: 13.887 ft, the pump asks for 26 ft',
      inputs: {
        coolant: 'water',
        temperature: '60 °F',
        cap: '5 psi gauge',
        height: '-25 ft',
        // 6 ft × 62.364 lb/ft³ / 144.
        loss: '2.5985 psi',
        required: '26 ft',
      },
      outputs: { available: '13.887 ft', vapour: '0.256 psi abs' },
      tolerance: 0.0015,
      why: 'the book rounds density and vapour pressure',
      findings: { head: 'stop', open: 'watch', suction: 'stop', coolant: 'pass' },
    },
    {
      // (101.325 − 2.3392) kPa / (998.2 × 9.80665) + 0.5 − 0.3 = 10.312 m.
      name: 'Water at 20 °C, half a metre above',
      from: 'hand, vapour pressure of IAPWS-IF97: 98.986 kPa / 9.789 kN/m³ + 0.5 m − 0.3 m',
      inputs: {
        coolant: 'water',
        temperature: '20 °C',
        height: '500 mm',
        loss: '2.9367 kPa',
      },
      outputs: { available: '10.312 m', vapour: '2.339 kPa abs' },
      findings: { head: 'pass', open: 'pass', suction: 'pass', coolant: 'pass' },
    },
    {
      // (84.56 − 47.415) kPa / (971.8 × 9.80665) + 0.3 − 0.5 = 3.697 m; 0.5 m are 4.765 kPa.
      name: 'Water at 80 °C on a pass of 1500 m',
      from: 'hand, vapour pressure of IAPWS-IF97: 37.14 kPa / 9.530 kN/m³ + 0.3 m − 0.5 m',
      inputs: {
        coolant: 'water',
        temperature: '80 °C',
        altitude: '1500 m',
        height: '300 mm',
        loss: '4.765 kPa',
      },
      outputs: { available: '3.697 m' },
      tolerance: 0.002,
      why: 'printed with the pressure at 1500 m rounded',
      findings: { head: 'watch', suction: 'watch' },
    },
    {
      name: 'Nothing known of the suction side',
      from: 'threshold case',
      inputs: { coolant: 'ethylene-glycol', temperature: '60 °C', height: '300 mm' },
      outputs: {},
      findings: { head: 'unknown', open: 'unknown', suction: 'unknown', coolant: 'unknown' },
    },
  ],
})
