/** Working the ledger: order, figures, ±, kinds, firmness, replacements, what cannot be told. */
import { describe, expect, it } from 'vitest'
import { calculators } from '../../calculators/index.ts'
import { work } from '../../src/ledger/work.ts'
import { blockOf, ledgerOf, line, note, numberOf, soundLedger } from './ledger-of.ts'

const draw = 'It draws <Reading id="draw" value="3.0 A" with="meter" />.'

describe('the order', () => {
  it('is that of what rests on what, not that of the text or the notes', async () => {
    const ledger = await soundLedger({
      a: 'import { c } from \'./c.mdx\'\n\n<Calc id="last" use="lamp" volts="5 V" amps={c.amps + c.fuse} />',
      b: 'It is <Chosen id="start" value="2 A" because="so" />.',
      c: 'import { start } from \'./b.mdx\'\n\n<Calc id="c" use="lamp" volts="6 V" amps={start * 2} />',
    })
    expect(blockOf(ledger, 'a/last').inputs).toMatchObject({ amps: 9, volts: 5 })
    expect(numberOf(ledger, 'a/last.power').value).toBe(45)
  })

  it('of the published lists is by id, whatever the order of the text', async () => {
    const ledger = await soundLedger({
      b: note(
        '<Chosen id="z" value="1 m" because="so" />\n\n<Chosen id="a" value="1 m" because="so" />',
        { date: '2026-01-01' },
      ),
      a: note('<Chosen id="q" value="1 m" because="so" />', { date: '2026-02-01' }),
    })
    expect(ledger.published.numbers.map(({ id }) => id)).toEqual(['a/q', 'b/a', 'b/z'])
    expect(ledger.published.notes.map(({ slug }) => slug)).toEqual(['b', 'a'])
  })
})

describe('an input left to its usual value', () => {
  const rated = { sag: '2 V', step: '100 A', p: '1', m: '1.02', um: '3 %', up: '2 %' }
  const said = Object.entries(rated).map(
    ([id, value]) => `<Rated id="${id}" value="${value}" source="sheet" at="p. 1" />`,
  )
  const compared = (back: string) =>
    soundLedger(
      {
        n: `${said.join(' ')}\n\n<Calc id="c" use="prediction-check" predicted={p} measured={m} instrument={um} prediction={up} ${back} />`,
      },
      calculators,
    )

  it('is no guess of a block that has no need of it', async () => {
    const ledger = await compared('back="nothing"')
    const { unused, provisional } = blockOf(ledger, 'n/c')
    expect(unused).toContain('ammeter')
    expect(provisional).toBe(false)
    const { rests, firmness } = numberOf(ledger, 'n/c.error')
    expect(rests).not.toContain('n/c.ammeter')
    expect(firmness).toBe('rated')
  })
  it('is one as soon as it is needed', async () => {
    const ledger = await compared('back="pack" sag={sag} step={step}')
    const { unused } = blockOf(ledger, 'n/c')
    expect(unused).not.toContain('ammeter')
    expect(unused).toContain('watch')
    const { rests, firmness } = numberOf(ledger, 'n/c.error')
    expect(rests).toContain('n/c.ammeter')
    expect(firmness).toBe('assumed')
    // Worked again from what is published, it says the same.
    const again = work(ledger.published, ledger.calculators).published
    expect(blockOf({ published: again }, 'n/c').unused).toEqual(unused)
  })
  it('is one where it chooses what is done', async () => {
    const { unused, provisional } = blockOf(await compared(''), 'n/c')
    expect(unused).not.toContain('back')
    expect(provisional).toBe(true)
  })
})

describe('the figures', () => {
  it.each([
    ['3.0 A', '12 V', '36\u00a0W'],
    ['3.00 A', '12.0 V', '36.0\u00a0W'],
    ['3.00 A', '12 V', '36\u00a0W'],
    ['3 A', '12 V', '36\u00a0W'],
    ['3.333 A', '9.999 V', '33.33\u00a0W'],
  ])(
    'of a result follow the least precise input, two at least: %s × %s',
    async (amps, volts, shown) => {
      const ledger = await soundLedger({
        n: `So <Reading id="i" value="${amps}" with="meter" /> at <Rated id="u" value="${volts}" source="sheet" at="p. 1" />.\n\n<Calc id="c" use="lamp" volts={u} amps={i} />`,
      })
      expect(numberOf(ledger, 'n/c.power').shown).toBe(shown)
    },
  )

  it('of a size stay as they are', async () => {
    const ledger = await soundLedger({ n: `${draw}\n\n<Calc id="c" use="lamp" amps={draw} />` })
    const { shown, figures, exact, shownOther } = numberOf(ledger, 'n/c.fuse')
    expect([shown, figures, exact, shownOther]).toEqual(['5\u00a0A', null, true, undefined])
  })

  it.each([
    ['6 in', '6\u00a0in', '0.15\u00a0m'],
    ['6.0 in', '6.0\u00a0in', '0.15\u00a0m'],
    ['0.006 km', '0.006\u00a0km', '20\u00a0ft'],
    ['8 m', '8\u00a0m', '26\u00a0ft'],
  ])(
    'of one digit are two in another unit, or it would be another size: %s',
    async (typed, ...due) => {
      const ledger = await soundLedger({
        n: `<Reading id="q" value="${typed}" with="tape" />\n\n<Calc id="c" use="cut" pieces={[{ length: q }]} />`,
      })
      const { shown, shownOther } = numberOf(ledger, 'n/c.pieces.0.length')
      expect([shown, shownOther]).toEqual(due)
    },
  )

  it.each([
    ['0 in', '0\u00a0mm'],
    ['0.000 in', '0\u00a0mm'],
    ['0 km', '0\u00a0mi'],
    ['$2/ft', '6.6\u00a0US$/m'],
    ['120 Wh/mi', '74.6\u00a0Wh/km'],
    ['5 ft/s', '1.5\u00a0m/s'],
  ])('stand in the other system in a unit of like size: %s', async (typed, due) => {
    const ledger = await soundLedger({ n: `<Assumed id="q" value="${typed}" because="so" />` })
    expect(numberOf(ledger, 'n/q').shownOther).toBe(due)
  })

  it('of a sum are not those of its least part', async () => {
    const given = { base: '2.92 m', front: '862 kg', rear: '678 kg', box: '8 kg', at: '1 m' }
    const said = Object.entries(given).map(
      ([id, value]) => `<Rated id="${id}" value="${value}" source="sheet" at="p. 1" />`,
    )
    const ledger = await soundLedger(
      {
        n: `${said.join(' ')}\n\n<Calc id="c" use="axle-balance" wheelbase={base} frontBefore={front} rearBefore={rear} added={[{ name: "box", mass: box, x: at }]} />`,
      },
      calculators,
    )
    expect(numberOf(ledger, 'n/c.kerb').shown).toBe('1550\u00a0kg')
    expect(numberOf(ledger, 'n/c.rearEmpty').shown).toBe('681\u00a0kg')
    expect(numberOf(ledger, 'n/c.table.0.onRear').shown).toBe('2.7\u00a0kg')
  })

  it('of a choice do not count', async () => {
    const ledger = await soundLedger({
      n: '<Calc id="c" use="cut" pieces={[{ length: "1 m" }, { length: "0.5 m" }]} />',
    })
    expect(numberOf(ledger, 'n/c.total').shown).toBe('1.50\u00a0m')
  })

  it('of a value the calculator takes by itself do not count', async () => {
    const ledger = await soundLedger({
      n: 'So <Reading id="i" value="3.333 A" with="meter" />.\n\n<Calc id="c" use="lamp" amps={i} />',
    })
    expect(numberOf(ledger, 'n/c.power').shown).toBe('40.00\u00a0W')
  })

  it('of a sum end where those of its least precise part end', async () => {
    const ledger = await soundLedger({
      n: 'So <Reading id="a" value="12 m" with="tape" /> and <Reading id="b" value="0.456 m" with="tape" />: {a + b}, {a - b}, {b + b}.',
    })
    expect(['a + b', 'a - b', 'b + b'].map((name) => numberOf(ledger, `n/${name}`).shown)).toEqual([
      '12\u00a0m',
      '12\u00a0m',
      '0.912\u00a0m',
    ])
  })

  it('come in the system that the site puts first, and in the other', async () => {
    const site = (units: string) => `title: t\nvehicle: v\nunits: ${units}\n`
    const text = { n: '<Calc id="c" use="cut" pieces={[{ length: "1 m" }]} />' }
    const shown = async (units: string) => {
      const { shown: first, shownOther } = numberOf(
        await soundLedger(text, undefined, site(units)),
        'n/c.total',
      )
      return [first, shownOther]
    }
    expect([await shown('metric'), await shown('us'), await shown('[us, metric]')]).toEqual([
      ['1.00\u00a0m', '3.28\u00a0ft'],
      ['3.28\u00a0ft', '1.00\u00a0m'],
      ['3.28\u00a0ft', '1.00\u00a0m'],
    ])
  })
})

describe('the ±', () => {
  it.each([
    ['value="2.00 m" plusMinus="5 mm"', 0.005],
    ['value="2.00 m" plusMinus="1 %"', 0.02],
    ['value="65 °C" plusMinus="2 °C"', 2],
    ['value="65 °C" plusMinus="2 K"', 2],
    ['value="149 °F" plusMinus="9 °F"', 5],
    ['value="-2 °C" plusMinus="0.5 Δ°C"', 0.5],
  ])('%s', async (attributes, plusMinus) => {
    const ledger = await soundLedger({
      n: `So <Reading id="a" with="tape" ${attributes} /> it is.`,
    })
    expect(numberOf(ledger, 'n/a').plusMinus).toBeCloseTo(plusMinus, 12)
  })

  it('on the reading wins over the instrument’s own', async () => {
    const ledger = await soundLedger({
      n: 'So <Reading id="a" value="3 A" with="meter" plusMinus="0.5 A" />, <Reading id="b" value="3 A" with="meter" />.',
    })
    expect(['n/a', 'n/b'].map((id) => numberOf(ledger, id).plusMinus)).toEqual([0.5, 0.1])
  })
})

describe('kind and firmness', () => {
  it('an input that is one name has the kind and the source of that number', async () => {
    const ledger = await soundLedger({
      n: `${draw}\n\n<Calc id="c" use="lamp" amps={draw} volts="12 V" />`,
    })
    const { kind, firmness, instrument, expression, rests, block } = numberOf(ledger, 'n/c.amps')
    expect({ kind, firmness, instrument, expression, rests, block }).toEqual({
      kind: 'reading',
      firmness: 'reading',
      instrument: { key: 'meter', title: 'digital multimeter', plusMinus: '0.1 A' },
      expression: { ref: 'n/draw' },
      rests: ['n/draw'],
      block: 'n/c',
    })
  })

  it.each([
    ['a reading', 'amps={r} volts={r2}', 'reading'],
    ['a sheet', 'amps={r} volts={s}', 'rated'],
    ['a choice', 'amps={r} volts={s} wire="1 mm²"', 'chosen'],
    ['a guess', 'amps={r} volts="12 V"', 'assumed'],
    ['what the calculator assumes', 'amps={r}', 'assumed'],
    ['a sum of a reading and a guess', 'amps={r + g} volts={r2}', 'assumed'],
  ])('a result is as firm as its weakest root: %s', async (_, inputs, firmness) => {
    const roots =
      'x <Reading id="r" value="3 A" with="meter" /> <Reading id="r2" value="12 V" with="a voltmeter" /> <Rated id="s" value="12 V" source="sheet" at="p. 1" /> <Assumed id="g" value="1 A" because="so" />'
    const ledger = await soundLedger({
      n: `${roots}\n\n<Calc id="c" use="lamp" casing="metal" ${inputs} />`,
    })
    const { kind, firmness: found } = numberOf(ledger, 'n/c.power')
    expect([kind, found]).toEqual(['worked', firmness])
  })

  it('a pass is provisional when something is assumed, a word too; other verdicts never are', async () => {
    const roots =
      'x <Reading id="r" value="3 A" with="meter" /> <Reading id="u" value="12 V" with="a voltmeter" /> <Reading id="w" value="18 V" with="a voltmeter" />'
    const block = (id: string, inputs: string) =>
      `<Calc id="${id}" use="lamp" amps={r} ${inputs} />`
    const ledger = await soundLedger({
      n: [
        roots,
        block('firm', 'volts={u} casing="metal"'),
        block('word', 'volts={u}'),
        block('guess', 'casing="metal"'),
        block('watch', 'volts={w}'),
      ].join('\n\n'),
    })
    expect(
      ledger.published.blocks.map(({ name, verdict, provisional }) => [name, verdict, provisional]),
    ).toEqual([
      ['firm', 'pass', false],
      ['guess', 'pass', true],
      ['watch', 'watch', false],
      ['word', 'pass', true],
    ])
  })
})

describe('what cannot be told', () => {
  it('spreads to all that rests on it, and is said once, at its cause', async () => {
    const ledger = await ledgerOf({
      a: 'So <Reading id="i" value="3 amsp" with="meter" /> it is.\n\n<Calc id="c" use="lamp" amps={i} />',
      b: 'import { c, i } from \'./a.mdx\'\n\nIt is {c.power * 2}, {i + i}.\n\n<Calc id="d" use="lamp" amps={c.fuse} />',
    })
    expect(ledger.problems.map(line)).toEqual([
      'notes/a.mdx:7:20 error unknown-unit: `amsp` is not a unit known here',
    ])
    expect(
      ['a/i', 'a/c.power', 'a/c.fuse', 'b/c.power * 2', 'b/i + i', 'b/d.amps', 'b/d.power'].map(
        (id) => {
          const { value, shown, now } = numberOf(ledger, id)
          return [id, value, shown, now]
        },
      ),
    ).toEqual([
      ['a/i', null, '3 amsp', null],
      ['a/c.power', null, 'cannot tell', null],
      ['a/c.fuse', null, 'cannot tell', null],
      ['b/c.power * 2', null, 'cannot tell', null],
      ['b/i + i', null, 'cannot tell', null],
      ['b/d.amps', null, 'cannot tell', null],
      ['b/d.power', null, 'cannot tell', null],
    ])
    const { verdict, provisional, findings, working, hazards, outputs } = blockOf(ledger, 'b/d')
    expect({ verdict, provisional, findings, working, hazards, outputs }).toEqual({
      verdict: 'unknown',
      provisional: false,
      findings: [
        {
          check: 'power',
          level: 'unknown',
          text: 'Cannot tell: Current not known.',
          threshold: '',
          basis: 'common practice',
        },
        {
          check: 'volts',
          level: 'unknown',
          text: 'Cannot tell: Current not known.',
          threshold: '',
          basis: 'common practice',
        },
      ],
      working: [],
      hazards: ['wiring-fire'],
      outputs: {},
    })
  })
})

describe('a replacement', () => {
  const old = note(
    'Say <Assumed id="guess" value="2 A" because="a first guess" />.\n\n<Calc id="c" use="lamp" volts="10 V" amps={guess} />\n\nThat is {guess * 2}.',
    {
      date: '2026-01-10',
    },
  )
  const later = note(
    'import { guess, c } from \'./old.mdx\'\n\nIt drew <Reading id="really" value="4.0 A" with="meter" on="2026-03-10" replaces={guess} checks={c.amps} />.',
    {
      date: '2026-03-14',
    },
  )

  it('stands in for the number everywhere, and leaves its own value as it was', async () => {
    const ledger = await soundLedger({ old, later })
    const { value, now, shown, kind } = numberOf(ledger, 'old/guess')
    expect({ value, now, shown, kind }).toEqual({
      value: 2,
      now: 4,
      shown: '2\u00a0A',
      kind: 'assumed',
    })
    const really = numberOf(ledger, 'later/really')
    expect([really.replaces, really.checks, really.date]).toEqual([
      'old/guess',
      'old/c.amps',
      '2026-03-10',
    ])
    expect(numberOf(ledger, 'old/guess * 2').value).toBe(8)
    expect(numberOf(ledger, 'old/c.power').value).toBe(40)
    expect(numberOf(ledger, 'old/c.power').firmness).toBe('assumed')
  })

  it('counts from its date on only', async () => {
    const { published, calculators } = await soundLedger({ old, later })
    const on = (asOf: string) =>
      numberOf(work(published, calculators, { asOf }), 'old/c.power').value
    expect([on('2026-01-10'), on('2026-03-09'), on('2026-03-10'), on('2027-01-01')]).toEqual([
      20, 20, 40, 40,
    ])
  })

  it('the latest of several wins, whatever the order of the notes', async () => {
    const again = note(
      'import { guess } from \'./old.mdx\'\n\n<Reading id="again" value="5 A" with="meter" on="2026-03-12" replaces={guess} />',
    )
    for (const notes of [
      { old, later, again },
      { zz: again, old, later },
    ]) {
      expect(numberOf(await soundLedger(notes), 'old/c.power').value).toBe(50)
    }
  })

  it('may itself be replaced', async () => {
    const third = note(
      'import { really } from \'./later.mdx\'\n\n<Reading id="third" value="6 A" with="meter" on="2026-04-01" replaces={really} />',
      { date: '2026-04-01' },
    )
    const ledger = await soundLedger({ old, later, third })
    expect(
      ['old/guess', 'later/really', 'third/third'].map((id) => numberOf(ledger, id).now),
    ).toEqual([6, 6, 6])
    expect(numberOf(ledger, 'old/c.power').value).toBe(60)
  })

  it('of a result moves what rests on the result', async () => {
    const measured = note(
      'import { c } from \'./old.mdx\'\n\n<Reading id="watts" value="25 W" with="a wattmeter" replaces={c.power} />\n\nHence {c.power * 2}.',
    )
    const ledger = await soundLedger({ old, measured })
    expect([
      numberOf(ledger, 'old/c.power').value,
      numberOf(ledger, 'old/c.power').now,
      numberOf(ledger, 'measured/c.power * 2').value,
    ]).toEqual([20, 25, 50])
  })

  it('of a sum, of itself, or of a number of another kind is refused', async () => {
    const { problems } = await ledgerOf({
      old,
      n: 'import { guess } from \'./old.mdx\'\n\n<Reading id="a" value="1 A" with="meter" replaces={guess * 2} />\n\n<Reading id="b" value="1 A" with="meter" replaces={b} />\n\n<Reading id="c" value="1 V" with="a voltmeter" replaces={guess} />',
    })
    expect(problems.map(line)).toEqual([
      'notes/n.mdx:9:1 error not-a-name: `replaces` takes one name, not a sum',
      'notes/n.mdx:11:17 error replaces-itself: `b` cannot take its own place | hint: `replaces` names an older number, whose place this one takes',
      'notes/n.mdx:13:17 error wrong-dimension: `c` is a voltage and cannot take the place of `old/guess`, which is a current',
    ])
  })

  it('that two numbers do for each other is a circle', async () => {
    const { problems } = await ledgerOf({
      n: '<Reading id="a" value="1 A" with="meter" replaces={b} />\n\n<Reading id="b" value="2 A" with="meter" replaces={a} />\n\n{a * 2}',
    })
    expect(problems.map(line)).toEqual([
      'notes/n.mdx:7:17 error circle: these numbers take each other’s place in a circle: `n/a` → `n/b` → `n/a` | hint: `replaces` names an older number, whose place this one takes | also: notes/n.mdx:9:17',
    ])
  })
})

describe('working again', () => {
  it('what was worked gives the same, whole', async () => {
    const { published, calculators } = await soundLedger({
      a: `${draw}\n\n<Calc id="c" use="lamp" amps={draw} wire="18 AWG" />\n\n<Calc id="d" use="cool" conductance="10 W/K" inlet="65 °C" rise={h - k} cap="13 psi gauge" />\n\nx <Chosen id="h" value="40 °C" because="so" /> <Chosen id="k" value="86 °F" because="so" /> {h - k} {draw / 3}`,
      b: 'import { draw } from \'./a.mdx\'\n\n<Reading id="again" value="3.5 A" with="meter" replaces={draw} on="2026-03-20" />\n\n<Calc id="cut" use="cut" pieces={[{ length: "4 1/2 in" }, { length: "2 m" }]} />',
    })
    expect(work(published, calculators)).toEqual({ published, problems: [] })
  })
})
