/**
 * One lump over a drive: a table of the closed form, small steps as a second method, and what must
 * hold for any drive.
 */
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { heatSoak } from '../../calculators/cooling/heat-soak.ts'
import { numberIn, rowsOf } from '../reference/csv.ts'
import { say } from './run-example.ts'

type Input = Parameters<typeof heatSoak.compute>[0]
type Stage = Input['stages'][number]
const zero = 273.15

const stage = (change: Partial<Stage> = {}): Stage => ({
  name: 'hill',
  duration: 600,
  heat: 1000,
  around: 30 + zero,
  conductance: 40,
  ...change,
})
const drive = (stages: readonly Stage[], change: Partial<Input> = {}): Input => ({
  mass: 10,
  specificHeat: 900,
  start: 30 + zero,
  limit: 500,
  stages,
  conductivity: 150,
  area: undefined,
  depth: 0.01,
  ...change,
})
const work = (stages: readonly Stage[], change: Partial<Input> = {}) =>
  heatSoak.compute(drive(stages, change))

test.each(rowsOf('lumped_transient.csv').filter((row) => row.t_s !== '0'))(
  '$C_J_K J/K, $UA_W_K W/K, $t_s s',
  (row) => {
    const result = work(
      [
        stage({
          duration: numberIn(row, 't_s'),
          heat: numberIn(row, 'q_W'),
          around: numberIn(row, 'T_amb_C') + zero,
          conductance: numberIn(row, 'UA_W_K'),
        }),
      ],
      { mass: numberIn(row, 'C_J_K') / 900, start: numberIn(row, 'T0_C') + zero },
    )
    expect((result.end ?? NaN) - zero).toBeCloseTo(numberIn(row, 'T_C'), 3)
  },
)

const stages = fc.array(
  fc.record({
    duration: fc.double({ min: 10, max: 3000, noNaN: true }),
    heat: fc.double({ min: 0, max: 5000, noNaN: true }),
    around: fc.double({ min: 260, max: 350, noNaN: true }),
    conductance: fc.oneof(fc.constant(0), fc.double({ min: 1e-9, max: 200, noNaN: true })),
  }),
  { minLength: 1, maxLength: 5 },
)

test('small steps of the differential equation end at the same temperature', () => {
  fc.assert(
    fc.property(stages, (rows) => {
      let temperature = 30 + zero
      for (const { duration, heat, around, conductance } of rows) {
        const slope = (at: number) => (heat - conductance * (at - around)) / 9000
        const steps = 400
        const h = duration / steps
        for (let i = 0; i < steps; i++) {
          const k1 = slope(temperature)
          const k2 = slope(temperature + (h * k1) / 2)
          const k3 = slope(temperature + (h * k2) / 2)
          const k4 = slope(temperature + h * k3)
          temperature += (h * (k1 + 2 * k2 + 2 * k3 + k4)) / 6
        }
      }
      expect(work(rows.map(stage)).end).toBeCloseTo(temperature, 5)
    }),
    { numRuns: 60 },
  )
})

test('a stage cut in two is the same stage, and the peak is never below the end', () => {
  fc.assert(
    fc.property(stages, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (rows, share) => {
      const halves = rows.flatMap((row) => [
        stage({ ...row, duration: row.duration * share }),
        stage({ ...row, duration: row.duration * (1 - share) }),
      ])
      const whole = work(rows.map(stage))
      const cut = work(halves)
      expect(cut.end).toBeCloseTo(whole.end ?? NaN, 7)
      expect(whole.peak).toBeGreaterThanOrEqual(whole.end ?? NaN)
    }),
  )
})

test('driven just to the moment it reaches the limit, it is at the limit', () => {
  fc.assert(
    fc.property(
      fc.oneof(fc.constant(0), fc.double({ min: 1e-12, max: 60, noNaN: true })),
      fc.double({ min: 304, max: 316, noNaN: true }),
      (conductance, limit) => {
        const hill = stage({ conductance, duration: 1e6 })
        const { toLimit } = work([hill], { limit })
        if (toLimit === undefined) return false
        expect(work([{ ...hill, duration: toLimit }], { limit }).end).toBeCloseTo(limit, 8)
        return true
      },
    ),
  )
})

test('time to the limit counts from the beginning of the drive', () => {
  const idle = stage({ name: 'idle', heat: 0, duration: 120 })
  const alone = work([stage()], { limit: 40 + zero })
  const after = work([idle, stage()], { limit: 40 + zero })
  expect((after.toLimit ?? NaN) - (alone.toLimit ?? NaN)).toBeCloseTo(120, 9)
  expect(after.limitStage).toBe('hill')
})

test('hotter than its limit when setting off: at once, and never while cooling below it', () => {
  expect(work([stage()], { start: 400, limit: 380 }).toLimit).toBe(0)
  expect(work([stage({ heat: 0 })], { start: 350, limit: 380 }).toLimit).toBeUndefined()
})

// 9 kg × 900 J/(kg·K) over 0.5 W/K.
test('little conductance still gives a time constant', () => {
  const [row] = work([stage({ conductance: 0.5 })], { mass: 9 }).table
  expect(row?.constant).toBeCloseTo(16_200, 9)
  expect(row?.settles).toBeCloseTo(30 + zero + 1000 / 0.5, 9)
})

test('of two stages that would pass the limit the hotter is named, wherever it stands', () => {
  const mild = stage({ name: 'mild', heat: 8000 })
  const steep = stage({ name: 'steep', heat: 9000 })
  const still = stage({ name: 'pump off', conductance: 0 })
  const named = (stages: readonly Stage[]) => {
    const input = drive(stages, { limit: 400 })
    const findings = heatSoak.findings(input, heatSoak.compute(input), say)
    return findings.find(({ check }) => check === 'lasting')?.text
  }
  expect(named([mild, steep])).toContain('“steep”')
  expect(named([steep, mild])).toContain('“steep”')
  expect(named([mild, still])).toContain('“pump off”')
  expect(named([still, mild])).toContain('“pump off”')
})

// 1 K × 9000 J/K over 9 W: 1000 s.
test('a limit met just when the stage ends is met', () => {
  const slow = stage({ heat: 9, conductance: 0, duration: 1000 })
  expect(work([slow], { start: 300, limit: 301 })).toMatchObject({ peak: 301, toLimit: 1000 })
})
