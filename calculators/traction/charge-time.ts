/**
 * How long a charge takes, what it draws from the supply and what it costs.
 *
 * In: the pack, from and to, the charger, outlet and breaker. Out: hours, A, kWh, the breaker it asks
 * for. Charging is a load for hours: a breaker or an outlet that runs a kettle for minutes is not
 * thereby good for it.
 */
import { defineCalculator } from '../define.ts'
import type { Finding } from '../define.ts'
import { exactly } from '../exactly.ts'
import { breakerRatings } from '../tables/breaker-ratings.ts'
import { words } from '../../src/words/words.ts'

/** Of the breaker, for a load of three hours and more; NEC 210.20(A), 625.41. */
const continuousShare = 0.8
const continuousTime = 3 * 3600
/** A for hours, by outlet; BS 1363-2 notes for the British one, common practice for the other. */
const outletLimit = { uk: 10, ukEv: 10, schuko: 10 } as const
/** Of the pack's full voltage: readings apart; a charger this far below never fills it. */
const above = 1.001
const below = 0.99

export const chargeTime = defineCalculator({
  id: 'charge-time',
  title: words`Charge time and supply`,
  phase: 'traction',
  purpose: words`Works out how long a charge takes and what it draws, and holds it against breaker, outlet and pack.`,
  inputs: {
    energy: {
      type: 'number',
      label: words`Pack energy`,
      symbol: 'E',
      of: 'energy',
      units: ['kWh', 'kWh'],
      hard: [0.1, 500],
      usual: [2, 150],
      help: words`Nominal, all of it.`,
    },
    from: {
      type: 'number',
      label: words`From`,
      symbol: 's_1',
      of: 'fraction',
      units: ['%', '%'],
      hard: [0, 100],
      usual: [5, 80],
      help: words`Charge in it now.`,
    },
    to: {
      type: 'number',
      label: words`To`,
      symbol: 's_2',
      of: 'fraction',
      units: ['%', '%'],
      hard: [0, 100],
      usual: [50, 100],
      help: words`Where you stop.`,
      choice: true,
    },
    power: {
      type: 'number',
      label: words`Charger takes from the supply`,
      symbol: 'P',
      of: 'power',
      units: ['kW', 'kW'],
      hard: [0.05, 50],
      usual: [0.5, 22],
      help: words`Its input, not its output.`,
    },
    efficiency: {
      type: 'number',
      label: words`Efficiency, supply to cells`,
      symbol: 'η',
      of: 'fraction',
      units: ['%', '%'],
      hard: [50, 100],
      usual: [80, 96],
      help: words`Charger, cable and cells.`,
      assume: { value: 90, because: words`common for a charger of some kilowatts` },
    },
    tail: {
      type: 'number',
      label: words`Last stretch at falling current`,
      symbol: 't_tail',
      of: 'time',
      units: ['min', 'min'],
      hard: [0, 600],
      usual: [0, 120],
      help: words`Added for topping and balancing when you charge full.`,
      assume: { value: 0, because: words`there is hardly any below 95 %` },
    },
    volts: {
      type: 'number',
      label: words`Supply voltage`,
      symbol: 'U',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [90, 520],
      usual: [110, 415],
      help: words`Between live conductors: 120, 230, 240, or 400 V for three phases.`,
    },
    phases: {
      type: 'choice',
      label: words`Phases`,
      help: words`Of the charger.`,
      options: { one: words`one`, three: words`three` },
      choice: true,
      assume: { value: 'one', because: words`most chargers of conversions` },
    },
    plate: {
      type: 'number',
      label: words`Current on the charger’s plate`,
      symbol: 'I_plate',
      of: 'current',
      units: ['A', 'A'],
      hard: [0.5, 100],
      usual: [5, 48],
      help: words`Counts for the breaker if it is higher than the power says.`,
      optional: true,
    },
    breaker: {
      type: 'number',
      label: words`Breaker`,
      symbol: 'I_breaker',
      of: 'current',
      units: ['A', 'A'],
      hard: [3, 200],
      usual: [10, 100],
      help: words`Of the circuit, with nothing else on it.`,
      choice: true,
    },
    sizes: {
      type: 'choice',
      label: words`Electrical code`,
      help: words`Decides breaker sizes and how the 80 % is judged.`,
      options: { us: words`North American`, iec: words`IEC countries` },
      choice: true,
      assume: { value: 'us', because: words`its rule for hours is the stricter` },
    },
    outlet: {
      type: 'choice',
      label: words`Connected by`,
      help: words`What stands between breaker and vehicle.`,
      options: {
        fixed: words`a charging station wired in`,
        rated: words`a socket rated for the whole circuit`,
        uk: words`a British 13 A socket`,
        ukEv: words`a British 13 A socket marked EV`,
        schuko: words`a continental household socket`,
      },
      choice: true,
      optional: true,
    },
    lead: {
      type: 'choice',
      label: words`Extension lead`,
      help: words`Between outlet and vehicle.`,
      options: { no: words`none`, yes: words`one or more` },
      choice: true,
      optional: true,
    },
    chargerVoltage: {
      type: 'number',
      label: words`Charger stops at`,
      symbol: 'U_charger',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [2, 1000],
      usual: [24, 900],
      help: words`Its end voltage as it is set.`,
      optional: true,
    },
    packVoltage: {
      type: 'number',
      label: words`Pack voltage, full`,
      symbol: 'U_full',
      of: 'voltage',
      units: ['V', 'V'],
      hard: [2, 1000],
      usual: [24, 900],
      help: words`Cells in series times their full voltage.`,
      optional: true,
    },
    tariff: {
      type: 'number',
      label: words`Price of energy`,
      symbol: 'p',
      of: 'moneyPerEnergy',
      units: ['US$/kWh', 'US$/kWh'],
      hard: [0, 10],
      usual: [0.05, 1],
      help: words`At the meter.`,
      optional: true,
    },
  },
  outputs: {
    time: {
      type: 'number',
      label: words`Charge takes`,
      symbol: 't',
      of: 'time',
      units: ['h', 'h'],
    },
    wall: {
      type: 'number',
      label: words`From the meter`,
      symbol: 'E_wall',
      of: 'energy',
      units: ['kWh', 'kWh'],
    },
    cost: {
      type: 'number',
      label: words`Cost`,
      symbol: 'K',
      of: 'money',
      units: ['US$', 'US$'],
    },
    current: {
      type: 'number',
      label: words`Supply current`,
      symbol: 'I',
      of: 'current',
      units: ['A', 'A'],
    },
    share: {
      type: 'number',
      label: words`Of the breaker`,
      symbol: 'I/I_breaker',
      of: 'fraction',
      units: ['%', '%'],
    },
    continuous: {
      type: 'number',
      label: words`Breaker carries for hours`,
      symbol: 'I_hours',
      of: 'current',
      units: ['A', 'A'],
    },
    inHand: {
      type: 'number',
      label: words`In hand there`,
      symbol: 'ΔI',
      of: 'current',
      units: ['A', 'A'],
    },
    needed: {
      type: 'number',
      label: words`Smallest breaker for it`,
      symbol: 'I_need',
      of: 'current',
      units: ['A', 'A'],
      exact: true,
    },
    heat: {
      type: 'number',
      label: words`Heat to carry off`,
      symbol: 'Q',
      of: 'power',
      units: ['W', 'W'],
    },
  },
  formula: [
    't = \\frac{E\\,(s_2 - s_1)}{P\\,\\eta} + t_\\text{tail}',
    'I = \\frac{P}{U} \\text{ or } \\frac{P}{\\sqrt{3}\\,U} \\le 0.8\\,I_\\text{breaker}',
  ],
  validity: [
    words`Constant power; near full the current falls and the last stretch has to be added. Power factor one.`,
    words`Outlet figures are for hours; the local code and a licensed electrician decide.`,
    words`Cells below their charging temperature must not be charged at all.`,
  ],
  checks: {
    span: { title: words`From and to`, basis: 'common practice' },
    breaker: {
      title: words`Breaker for hours`,
      basis: 'published: NEC 210.20(A) and 625.41, 80 % for three hours and more',
    },
    outlet: {
      title: words`Outlet for hours`,
      basis: 'published: notes to BS 1363-2 and IET guidance (British); common practice (others)',
    },
    lead: { title: words`Extension lead`, basis: 'common practice' },
    voltage: { title: words`Charger matches the pack`, basis: 'the cell’s own sheet' },
  },
  hazards: ['earth-and-residual-current', 'cell-fire', 'wiring-fire'],
  sources: [
    {
      title: 'NEC, continuous loads, as quoted in utility and code guides',
      at: '210.20(A), 625.41: 15 A carries 12 A, 40 A carries 32 A',
      trust: 'read',
    },
    {
      title: 'Notes to BS 1363-2 and IET wiring guidance, section 722',
      at: '10 A for hours; sockets for vehicles marked EV',
      trust: 'read',
    },
    { title: 'NEC 240.6(A) and IEC 60898-1, breaker sizes', trust: 'read' },
  ],
  compute(input) {
    const part = input.energy * (input.to - input.from)
    const wall = input.to > input.from ? part / input.efficiency : undefined
    const drawn = input.power / (input.volts * (input.phases === 'three' ? Math.sqrt(3) : 1))
    const current = Math.max(drawn, input.plate ?? drawn)
    const continuous = continuousShare * input.breaker
    return {
      time: wall === undefined ? undefined : wall / input.power + input.tail,
      wall,
      cost: wall === undefined || input.tariff === undefined ? undefined : wall * input.tariff,
      current,
      share: current / input.breaker,
      continuous,
      inHand: continuous - current,
      needed: breakerRatings[input.sizes].find(
        (rating) => continuousShare * rating >= current * (1 - 1e-9),
      ),
      heat: input.power * (1 - input.efficiency),
    }
  },
  findings(input, output, say) {
    type Said = Pick<Finding, 'level' | 'text'>
    const hair = 1 + 1e-9
    const { current = Infinity, share = Infinity } = output
    const amps = say(current, 'A')
    const span = (): Said =>
      output.time === undefined
        ? {
            level: 'stop',
            text: words`Charging goes up: ${say(input.from, '%')} to ${say(input.to, '%')} is no charge.`,
          }
        : { level: 'pass', text: words`The charge takes ${say(output.time, 'h')}.` }
    const breaker = (): Said => {
      const fact = words`The charger draws ${amps}, ${say(share, '%', 2)} of the ${exactly(say, input.breaker, 'A')} breaker`
      const instead =
        output.needed === undefined
          ? words`turn the charger down.`
          : words`it takes a ${exactly(say, output.needed, 'A')} circuit, or a charger turned down to ${say(output.continuous, 'A')}.`
      if (share <= continuousShare * hair) return { level: 'pass', text: `${fact}.` }
      if (share > hair) return { level: 'stop', text: `${fact}: ${instead}` }
      if (output.time === undefined)
        return { level: 'unknown', text: words`${fact}; how long is not known.` }
      return input.sizes === 'us' && output.time >= continuousTime
        ? { level: 'stop', text: words`${fact} for ${say(output.time, 'h', 2)}: ${instead}` }
        : { level: 'watch', text: words`${fact}, and it is warm: ${instead}` }
    }
    const outlet = (): Said => {
      if (input.outlet === undefined)
        return { level: 'unknown', text: words`It is not said what the vehicle is plugged into.` }
      if (input.outlet === 'fixed' || input.outlet === 'rated')
        return { level: 'pass', text: words`The connection is rated for the whole circuit.` }
      const limit = outletLimit[input.outlet]
      const fact = words`A household socket carries ${say(limit, 'A', 2)} for hours; the charger draws ${amps}`
      if (current > limit * hair)
        return {
          level: 'stop',
          text: words`${fact}: it burns its contacts. Turn the charger down.`,
        }
      return input.outlet === 'ukEv'
        ? { level: 'pass', text: `${fact}.` }
        : {
            level: 'watch',
            text: words`${fact}: it is not made for this. Feel the plug every time.`,
          }
    }
    const lead = (): Said =>
      input.lead === undefined
        ? { level: 'unknown', text: words`It is not said whether an extension lead is used.` }
        : input.lead === 'no'
          ? { level: 'pass', text: words`There is no extension lead.` }
          : {
              level: 'stop',
              text: words`An extension lead overheats over hours, rolled up or at its joints: plug in directly.`,
            }
    const voltage = (): Said => {
      const [ends, full] = [input.chargerVoltage, input.packVoltage]
      if (ends === undefined || full === undefined)
        return {
          level: 'unknown',
          text: words`Whether the charger is set for this pack is not known: give both full voltages.`,
        }
      const fact = words`The charger stops at ${say(ends, 'V', 4)}, the pack is full at ${say(full, 'V', 4)}`
      if (ends > full * above)
        return { level: 'stop', text: words`${fact}: it overcharges the cells. Set it down.` }
      return ends >= full * below
        ? { level: 'pass', text: `${fact}.` }
        : {
            level: 'watch',
            text: words`${fact}: it never fills and may not balance. Set for another count of cells?`,
          }
    }
    return [
      { check: 'span', ...span(), threshold: words`to a higher charge than from (stop)` },
      {
        check: 'breaker',
        ...breaker(),
        threshold:
          input.sizes === 'us'
            ? words`at most 80 % (stop from 3 h, watch below), 100 % (stop)`
            : words`at most 80 % (watch), 100 % (stop)`,
      },
      {
        check: 'outlet',
        ...outlet(),
        threshold: words`household sockets: at most 10 A for hours (stop), made for vehicles (watch)`,
      },
      { check: 'lead', ...lead(), threshold: words`none (stop)` },
      {
        check: 'voltage',
        ...voltage(),
        threshold: words`not above the full pack (stop), within 1 % below (watch)`,
      },
    ]
  },
  working(input, output, say) {
    const three = input.phases === 'three'
    const volts = say(input.volts, 'V')
    return [
      ...(output.time === undefined
        ? []
        : [
            `t = E (s_2 − s_1) / (P η) + t_tail = ${say(input.energy, 'kWh')} × (${say(input.to, '%')} − ${say(input.from, '%')}) / (${say(input.power, 'kW')} × ${say(input.efficiency, '%')}) + ${say(input.tail, 'min')} = ${say(output.time, 'h')}`,
          ]),
      three
        ? `I = P / (√3 × U) = ${say(input.power, 'kW')} / (√3 × ${volts}) = ${say(input.power / input.volts / Math.sqrt(3), 'A')}`
        : `I = P / U = ${say(input.power, 'kW')} / ${volts} = ${say(input.power / input.volts, 'A')}`,
      `0.8 I_breaker = 0.8 × ${exactly(say, input.breaker, 'A')} = ${say(output.continuous, 'A')}`,
    ]
  },
  moreHazards: (input) => ((input.packVoltage ?? Infinity) > 60 ? ['high-voltage'] : []),
  examples: [
    {
      name: '40 kWh from 20 to 80 % at 7.36 kW',
      from: 'hand: 40 kWh × 0.6 / (7.36 kW × 0.92) = 3.54442 h; 7360 W / 230 V = 32 A; 26.087 kWh × 0.20 = 5.22',
      inputs: {
        energy: '40 kWh',
        from: '20 %',
        to: '80 %',
        power: '7.36 kW',
        efficiency: '92 %',
        volts: '230 V',
        breaker: '40 A',
        outlet: 'fixed',
        lead: 'no',
        chargerVoltage: '131.4 V',
        packVoltage: '131.4 V',
        tariff: '0.20 US$/kWh',
      },
      outputs: {
        time: '3.54442 h',
        current: '32 A',
        wall: '26.087 kWh',
        cost: 'US$5.22',
        continuous: '32 A',
        needed: '40 A',
      },
      findings: { span: 'pass', breaker: 'pass', outlet: 'pass', lead: 'pass', voltage: 'pass' },
    },
    {
      name: '30 kWh from 10 to 100 % at a British socket',
      from: 'hand: 30 kWh × 0.9 / (2.3 kW × 0.88) = 13.3399 h; 2300 W / 230 V = 10 A',
      inputs: {
        energy: '30 kWh',
        from: '10 %',
        to: '100 %',
        power: '2.3 kW',
        efficiency: '88 %',
        volts: '230 V',
        breaker: '32 A',
        sizes: 'iec',
        outlet: 'ukEv',
        lead: 'no',
      },
      outputs: { time: '13.3399 h', current: '10 A' },
      findings: { breaker: 'pass', outlet: 'pass', voltage: 'unknown' },
    },
    {
      name: 'J. Bird 2.17: 3.6 MJ in 40 minutes at 250 V',
      from: 'J. Bird, Electrical Circuit Theory and Technology, example 2.17: 1.5 kW, 6 A',
      inputs: {
        energy: '1 kWh',
        from: '0 %',
        to: '100 %',
        power: '1.5 kW',
        efficiency: '100 %',
        volts: '250 V',
        breaker: '15 A',
      },
      outputs: { time: '0.6667 h', current: '6 A' },
      findings: { outlet: 'unknown', lead: 'unknown' },
    },
    {
      name: '16 A on three phases of 400 V',
      from: 'hand: √3 × 400 V × 16 A = 11 085.1 W',
      inputs: {
        energy: '60 kWh',
        from: '10 %',
        to: '90 %',
        power: '11.0851 kW',
        volts: '400 V',
        phases: 'three',
        breaker: '16 A',
        sizes: 'iec',
        outlet: 'schuko',
        lead: 'yes',
        chargerVoltage: '360 V',
        packVoltage: '400 V',
      },
      outputs: { current: '16.000 A', needed: '20 A' },
      findings: { breaker: 'watch', outlet: 'stop', lead: 'stop', voltage: 'watch' },
    },
    {
      name: 'NEC: a 15 A breaker carries 12 A for hours',
      from: 'NEC 210.20(A), 625.41 as quoted in code guides: 15 A breaker, 12 A',
      inputs: {
        energy: '20 kWh',
        from: '20 %',
        to: '90 %',
        power: '1.68 kW',
        volts: '120 V',
        breaker: '15 A',
        chargerVoltage: '135 V',
        packVoltage: '131.4 V',
      },
      outputs: { continuous: '12 A', needed: '20 A', current: '14 A' },
      findings: { breaker: 'stop', voltage: 'stop' },
    },
    {
      name: 'threshold case: down instead of up, more than the breaker, an old socket',
      from: 'threshold case',
      inputs: {
        energy: '20 kWh',
        from: '80 %',
        to: '20 %',
        power: '2 kW',
        volts: '230 V',
        breaker: '6 A',
        outlet: 'uk',
      },
      outputs: { time: 'cannot tell' },
      findings: { span: 'stop', breaker: 'stop', outlet: 'watch' },
    },
  ],
})
