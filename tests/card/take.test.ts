/**
 * What a reader takes along from a page: MDX that works again in a note of another builder, plain
 * text, a table, a file, and a link that begins a question.
 */
import { describe, expect, it } from 'vitest'
import { hazards, standingWords } from '../../calculators/hazards.ts'
import { blockHtml, contextOf, editionOf } from '../../src/card/index.ts'
import { entriesOf } from '../../src/card/take/entries.ts'
import {
  askHref,
  blockAddress,
  changedFigures,
  csvText,
  jsonText,
  mdxText,
  plainText,
  type Whose,
} from '../../src/card/take/index.ts'
import { originOf } from '../../src/card/take/origin.ts'
import { workPublished } from '../../src/ledger/override.ts'
import { readRecord } from '../../src/ledger/record.ts'
import type { PlainValue, Published, PublishedBlock } from '../../src/ledger/published.ts'
import { calculators as registry } from '../../calculators/index.ts'
import { blockOf, ledgerOf, line, note } from '../ledger/ledger-of.ts'
import { trivial } from '../ledger/trivial.ts'
import { recordsOf, rowsOf } from './rfc4180.ts'
import { folders, siteIn } from './take-sites.ts'

const builder: Whose = { who: 'builder' }
const plain = (text: string): string => text.replace(/[\u00a0\u202f]/g, ' ')
const unwrapped = (text: string): string => plain(text).replace(/\s+/g, ' ')

/** Every number in values as `compute` saw or gave them, by its path. */
function numbersIn(values: Readonly<Record<string, PlainValue>>): Map<string, number | string> {
  const found = new Map<string, number | string>()
  for (const [key, value] of Object.entries(values))
    if (typeof value !== 'object') found.set(key, value)
    else
      for (const [index, row] of (value ?? []).entries())
        for (const [column, cell] of Object.entries(row))
          if (cell !== null) found.set(`${key}.${index}.${column}`, cell)
  return found
}

const settingsLike = ({ site }: Published): string =>
  `title: Another site\nvehicle: another van\nunits: [${site.units.join(', ')}]\n`

describe.each(folders)('a block of %s, as MDX in a note of another site', async (folder) => {
  const { ledger, ctx } = await siteIn(folder)
  const { blocks } = ledger.published
  const pasted = blocks.map((block) => mdxText(block, ctx, builder))
  const again = await ledgerOf(
    Object.fromEntries(pasted.map((text, index) => [`n${index}`, text])),
    registry,
    settingsLike(ledger.published),
  )
  const copyOf = (index: number): PublishedBlock =>
    blockOf(again, `n${index}/${blocks[index]?.name ?? ''}`)

  it('passes the check', () => {
    expect(blocks.length).toBeGreaterThan(0)
    expect(again.problems.filter(({ rule }) => rule !== 'unusual').map(line)).toEqual([])
  })

  it('is given the same to the last bit wherever the builder typed it', () => {
    for (const [index, block] of blocks.entries()) {
      const copied = numbersIn(copyOf(index).inputs)
      const original = numbersIn(block.inputs)
      expect([...copied.keys()]).toEqual([...original.keys()])
      for (const { path, number, word } of entriesOf(block, ctx)) {
        const [is, was] = [copied.get(path), original.get(path)]
        if (number === undefined) expect([block.id, path, is]).toEqual([block.id, path, was])
        else if (originOf(number, ctx).typed !== undefined)
          expect([block.id, path, is]).toEqual([block.id, path, number.value])
        else if (number.value !== 0)
          expect(Math.abs(Number(is) / Number(was) - 1)).toBeLessThan(1e-15)
        expect(word === undefined || number === undefined).toBe(true)
      }
    }
  })

  it('comes to the same results, verdict and warnings', () => {
    let exact = 0
    for (const [index, block] of blocks.entries()) {
      const copy = copyOf(index)
      const same = JSON.stringify(copy.inputs) === JSON.stringify(block.inputs)
      if (same) {
        exact += 1
        expect([block.id, copy.outputs]).toEqual([block.id, block.outputs])
        expect([block.id, copy.findings]).toEqual([block.id, block.findings])
      }
      const [is, was] = [numbersIn(copy.outputs), numbersIn(block.outputs)]
      expect([...is.keys()]).toEqual([...was.keys()])
      for (const [path, value] of was)
        if (typeof value === 'string') expect([path, is.get(path)]).toEqual([path, value])
        else
          expect(Math.abs(Number(is.get(path)) - value)).toBeLessThanOrEqual(1e-9 * Math.abs(value))
      const { verdict, accepted, hazards: harms, calculator } = copy
      expect({ verdict, accepted, harms, calculator }).toEqual({
        verdict: block.verdict,
        accepted: block.accepted,
        harms: block.hazards,
        calculator: block.calculator,
      })
    }
    expect(exact).toBeGreaterThan(blocks.length / 2)
  })

  it('says whose, from where, and every warning in all its words', () => {
    for (const [index, block] of blocks.entries()) {
      const text = pasted[index] ?? ''
      const comment = unwrapped(/^\{\/\*([^]*?)\*\/\}/.exec(text)?.[1] ?? '')
      const title = ctx.note(block.note)?.title ?? '?'
      expect(comment).toContain('The builder’s figures.')
      expect(comment).toContain(unwrapped(title))
      expect(comment).toContain(`edition ${editionOf(ledger.published, block.note)}`)
      expect(comment).toContain(blockAddress(block, ctx))
      expect(comment).toContain(standingWords)
      for (const [id, { signal, title: name, what, consequence, avoid }] of Object.entries(hazards))
        if (block.hazards.includes(id))
          expect(comment).toContain(`${signal} ${name}. ${what} ${consequence} ${avoid}`)
      for (const { number, given, label } of entriesOf(block, ctx))
        if (number?.firmness === 'assumed' && given.how !== 'assumed-default')
          expect(comment.split('Guesses, or resting on guesses: ')[1]).toContain(unwrapped(label))
    }
  })
})

const small = {
  a: note(
    [
      'Has <Reading id="draw" value="4 A" with="meter" at="warm" />, wants <Rated id="volts" value="12.0 V" source="sheet" at="p. 2" />.',
      '',
      'And <Assumed id="more" value="0.5 A" because="so said" /> besides.',
      '',
      '<Calc id="one" use="lamp" volts={volts} amps={draw + more} maker="Ours" />',
      '',
      '<Calc id="direct" use="lamp" amps={draw} />',
      '',
      '<Calc id="bright" use="lamp" title="A lamp that is too bright" amps="6 A" accept="only for a test" />',
      '',
      '<Calc id="high" use="lamp" volts="96 V" amps="0.1 A" />',
      '',
      '<Calc id="pieces" use="cut" pieces={[{ name: "front", length: "2 m" }, { length: "1 ft" }]} />',
    ].join('\n'),
    { title: 'A note of lamps' },
  ),
}
const { published, calculators } = await ledgerOf(small)
const ctx = contextOf(published, { base: '/van/', calculators })
const readers = (overrides: Parameters<typeof workPublished>[1]) => {
  const worked = workPublished(published, overrides, calculators)
  return {
    published: worked,
    ctx: contextOf(worked, { base: '/van/', calculators, builder: published }),
    block: (name: string) => blockOf({ published: worked }, `a/${name}`),
  }
}
const block = (name: string): PublishedBlock => blockOf({ published }, `a/${name}`)

describe('a reader’s figures, as MDX', () => {
  const { ctx: yours, block: theirs } = readers({
    'a/draw': '3.5 A',
    'a/bright.amps': '7.25 A',
    'a/pieces.pieces': [{ name: 'both', length: '5/8"' }, {}],
  })
  const whose: Whose = { who: 'reader', changed: 3 }

  it('name the edition that the page prints', () => {
    const text = mdxText(theirs('one'), yours, { ...whose, edition: 'abc123' })
    expect(text).toContain(', edition abc123\n')
    expect(mdxText(theirs('one'), yours, whose)).toContain(`edition ${editionOf(published, 'a')}\n`)
  })

  it('are what is written, also where they are below a sum', () => {
    expect(mdxText(theirs('one'), yours, whose)).toContain('\n  amps="4 A"\n')
    expect(mdxText(theirs('bright'), yours, whose)).toContain('\n  amps="7.25 A"\n')
    expect(mdxText(theirs('pieces'), yours, whose)).toContain(
      '{ name: "both", length: "5/8\\"" },\n    {  },',
    )
  })

  it('say that they are, and do not take the builder’s reason along', () => {
    const text = mdxText(theirs('bright'), yours, whose)
    expect(text).toContain('A reader’s figures, not the builder’s: 3 figures changed.')
    expect(text).not.toContain('accept=')
    expect(mdxText(block('bright'), ctx, builder)).toContain('accept="only for a test"')
  })
})

describe('text that is markup', () => {
  it.each([
    '*/ } { /* "end" */}',
    '“curly” ‘single’ – dash',
    'A & B &amp; <C id="x"> \\ \\" \\u0041',
    "it's `code` ${x} \\`",
    'line\nbreak\r\n\ttab \u2028 next',
    '{/* */} <!-- --> ]]> => />',
    'right\u202eleft \u0000 null',
    'closed by ” and more" x="5 A',
  ])('%j stays text', async (nasty) => {
    const word = nasty
      .replaceAll('\u202e', '')
      .replace(/[\p{Cc}\u2028 ]+/gu, ' ')
      .trim()
    const nastyBlock = (name: string): PublishedBlock => ({
      ...block(name),
      title: nasty,
      accepted: name === 'bright' ? nasty : null,
      given:
        name === 'one'
          ? { ...block(name).given, maker: { type: 'word', value: nasty, how: 'literal' } }
          : name === 'pieces'
            ? {
                pieces: {
                  type: 'rows',
                  rows: [
                    {
                      name: { type: 'word', value: nasty, how: 'literal' },
                      length: { type: 'number', id: 'a/pieces.pieces.0.length', how: 'literal' },
                    },
                  ],
                },
              }
            : block(name).given,
    })
    const nasties: Published = {
      ...published,
      site: { ...published.site, vehicle: nasty, notice: nasty },
      notes: published.notes.map((one) => ({ ...one, title: nasty })),
    }
    const there = contextOf(nasties, { base: '/', calculators })
    const texts = ['one', 'bright', 'pieces'].map((name) =>
      mdxText(nastyBlock(name), there, builder),
    )
    const again = await ledgerOf(
      Object.fromEntries(texts.map((text, index) => [`n${index}`, text])),
    )
    expect(again.problems.map(line)).toEqual([])
    const { inputs, title } = blockOf(again, 'n0/one')
    expect([title, inputs.maker]).toEqual([word, word])
    expect(blockOf(again, 'n1/bright').accepted).toBe(word)
    expect(blockOf(again, 'n2/pieces').inputs.pieces).toMatchObject([{ name: word }])
  })
})

describe('a number that cannot be told', () => {
  it('is left for the builder to give, and named', () => {
    const { ctx: yours, block: theirs } = readers({ 'a/one.amps': 'three' })
    const text = mdxText(theirs('one'), yours, { who: 'reader', changed: 1 })
    expect(text).not.toContain('amps=')
    expect(text).toContain('Cannot be told, and is for you to give: Current.')
  })
})

describe('plain text', () => {
  const text = plainText(block('one'), ctx, builder, [
    { title: 'Ohm and Joule', edition: 'second', at: 'p. 1', trust: 'recalled' },
  ])

  it('says where it is from, whose, and what came out', () => {
    expect(unwrapped(text)).toContain(
      `Power of a lamp Notes of a test: an invented van Note: A note of lamps, 14 March 2026, edition ${editionOf(published, 'a')} /van/notes/a/one/ The builder’s figures. Verdict: watch`,
    )
    expect(plain(text)).toContain('\n- Power: 54 W\n')
    expect(unwrapped(text)).toContain(
      'Power: watch. It takes 54.0 W. Limit: above 50 W (watch), above 60 W (stop). Common practice.',
    )
    expect(plain(text)).toContain('1. P = U I = 12.0 V × 4.50 A = 54.0 W')
  })

  it('says how each figure is known', () => {
    expect(unwrapped(text)).toContain(
      '- Voltage: 12.0 V (from a sheet: Controller sheet, rev B, p. 2)',
    )
    expect(unwrapped(text)).toContain(
      '- Current: 4.5 A (worked out, rests on a guess: 4 A + 0.5 A)',
    )
    expect(unwrapped(plainText(block('direct'), ctx, builder, []))).toContain(
      '- Current: 4 A ± 0.1 A (measured 14 March 2026 with digital multimeter, warm)',
    )
    expect(unwrapped(text)).toContain('- Casing: of metal (a guess) - Mark: Ours')
    expect(unwrapped(plainText(block('pieces'), ctx, builder, []))).toContain(
      '- front, length: 2 m (6.6 ft) (chosen in this block) - piece 2, length: 1 ft',
    )
  })

  it('ends with sources and warnings, whole', () => {
    const end = unwrapped(text).split('SOURCES ')[1] ?? ''
    const { what, consequence, avoid } = hazards['wiring-fire']
    expect(end).toBe(
      `- Controller sheet, rev B, p. 2 - Ohm and Joule, second, p. 1. Recalled, to be confirmed. WARNINGS WARNING Wiring fire. ${what} ${consequence} ${avoid} ${standingWords} `,
    )
  })

  it('shows the builder’s beside what a reader changed or moved, and both verdicts', () => {
    const { ctx: yours, block: theirs } = readers({ 'a/draw': '2 A', 'a/one.maker': '' })
    const changed = unwrapped(plainText(theirs('one'), yours, { who: 'reader', changed: 2 }, []))
    expect(changed).toContain('A reader’s figures, not the builder’s: 2 figures changed.')
    expect(changed).toContain('Verdict: pass, provisional The builder’s verdict: watch')
    expect(changed).toContain('2 A + 0.5 A); the builder’s 4.5 A')
    expect(changed).toContain('- Mark: left out; the builder’s Ours')
    expect(changed).toContain('- Power: 30 W; the builder’s 54 W')
    expect(changed).toContain('- Voltage: 12.0 V (from a sheet')
  })

  it('names a reader’s own figure as that', () => {
    const { ctx: yours, block: theirs } = readers({ 'a/high.amps': '0.2 A' })
    expect(
      unwrapped(plainText(theirs('high'), yours, { who: 'reader', changed: 1 }, [])),
    ).toContain('- Current: 0.2 A (the reader’s own figure); the builder’s 0.1 A')
  })

  it.each(folders)(
    'of %s has lines of 72 signs and no number parted from its unit',
    async (folder) => {
      const { ledger, ctx: there } = await siteIn(folder)
      for (const one of ledger.published.blocks) {
        const sources = ledger.calculators.get(one.calculator)?.sources ?? []
        const lines = plainText(one, there, builder, sources).split('\n')
        // Only what has no space to break at may be longer.
        expect(
          lines.filter((text) => text.length > 72 && text.trim().slice(3).includes(' ')),
        ).toEqual([])
        expect(lines.join('\n')).not.toMatch(
          /\d\n *(?:mm|m|kW|W|°C|°F|K|A|V|L\/min|gal\/min|kPa|psi|kg|lb|in|ft)[\s,.;)]/,
        )
        expect(lines.join('\n')).not.toMatch(/undefined|\bNaN\b|\[object|\bsafe\b/)
      }
    },
  )
})

describe('a table for spreadsheets', () => {
  it.each(folders)('of %s reads back, number by number', async (folder) => {
    const { ledger } = await siteIn(folder)
    const text = csvText(ledger.published, undefined, ledger.calculators)
    const records = recordsOf(text)
    const byId = new Map(records.map((record) => [record.id, record]))
    for (const { id, value, unit, plusMinus, block: owner } of ledger.published.numbers) {
      const record = byId.get(id)
      expect([id, record?.value, record?.unit, record?.plusMinus]).toEqual([
        id,
        value === null ? '' : String(value),
        unit,
        plusMinus === null ? '' : String(plusMinus),
      ])
      expect(value === null ? null : Number(record?.value)).toBe(value)
      expect(record?.whose).toBe('the builder’s')
      const harms = ledger.published.blocks.find((one) => one.id === owner)?.hazards ?? []
      for (const harm of harms)
        expect(record?.hazards).toContain(
          Object.entries(hazards).find(([key]) => key === harm)?.[1].title,
        )
    }
    const all = new Set(ledger.published.blocks.flatMap((one) => one.hazards))
    expect(records.length).toBe(ledger.published.numbers.length + all.size + 1)
    expect(records.at(-1)?.id).toBe(standingWords)
  })

  it('tells a reader’s own from what it moved and what stayed', () => {
    const { published: worked } = readers({ 'a/draw': '2 A', 'a/high.amps': '0.10 A' })
    const records = new Map(
      recordsOf(csvText(worked, published, calculators)).map((record) => [record.id, record]),
    )
    const of = (id: string) => {
      const { whose, builder: was, label } = records.get(id) ?? {}
      return [label, whose, was]
    }
    expect(of('a/draw')).toEqual(['draw', 'a reader’s own', '4'])
    expect(of('a/one.amps')).toEqual(['Current', 'moved by a reader’s figures', '4.5'])
    expect(of('a/one.power')).toEqual(['Power', 'moved by a reader’s figures', '54'])
    expect(of('a/volts')).toEqual(['volts', 'the builder’s', ''])
    expect(of('a/high.amps')).toEqual(['Current', 'a reader’s own', ''])
    expect(of('a/high.power')).toEqual(['Power', 'the builder’s', ''])
  })

  it('runs nothing, keeps numbers numbers, and quotes what must be', () => {
    const [first] = published.numbers
    if (first === undefined) throw new Error('no number')
    const titles = ['=1+1', '+1', '-1', '@SUM(A1)', '\tx', '\rx', ' =1', 'a "b", c', 'two\r\nlines']
    const numbers = titles.map((title, index) => ({
      ...first,
      id: `n/${index}`,
      name: title,
      value: -index - 0.5,
      shown: '-1 °C',
      source: { key: 'k', title },
    }))
    const records = recordsOf(csvText({ ...published, numbers, blocks: [] }))
    expect(records.slice(0, -1).map(({ source }) => source)).toEqual([
      "'=1+1",
      "'+1",
      "'-1",
      "'@SUM(A1)",
      "'\tx",
      "'\rx",
      "' =1",
      'a "b", c',
      'two\r\nlines',
    ])
    expect(records[0]).toMatchObject({ value: '-0.5', shown: "'-1 °C" })
    expect(records.at(-1)).toMatchObject({ id: standingWords, value: '' })
  })

  it('is read by a reader that refuses what the standard refuses', () => {
    expect(rowsOf('a,"b ""c""\r\nd"\r\n1,\r\n')).toEqual([
      ['a', 'b "c"\r\nd'],
      ['1', ''],
    ])
    for (const bad of ['a\n', 'a"b\r\n', '"a\r\n', 'a,b\r\nc\r\n', 'a'])
      expect(() => rowsOf(bad)).toThrow()
  })
})

describe('a file for programs', () => {
  it('reads as numbers.json does, and says whose, the warnings and the standing words', () => {
    const { published: worked } = readers({ 'a/draw': '2 A' })
    const text = jsonText(worked, { who: 'reader', changed: 1 })
    expect(readRecord(text)).toMatchObject({ numbers: worked.numbers, blocks: worked.blocks })
    const data: unknown = JSON.parse(text)
    expect(data).toMatchObject({
      whose: {
        who: 'reader',
        changed: 1,
        words: 'A reader’s figures, not the builder’s: 1 figure changed.',
      },
      hazards: [
        { id: 'high-voltage', ...hazards['high-voltage'] },
        { id: 'wiring-fire', ...hazards['wiring-fire'] },
      ],
      standing: standingWords,
    })
  })
})

describe('a question', () => {
  const mail = (href: string) => {
    const url = new URL(href)
    return {
      to: url.pathname,
      subject: url.searchParams.get('subject'),
      body: url.searchParams.get('body'),
    }
  }

  it('is a mail with everything in it', () => {
    const { ctx: yours, block: theirs } = readers({ 'a/draw': '2 A', 'a/one.maker': 'Mine' })
    const one = theirs('one')
    const href = askHref(one, yours, 'o+k%&x@example.org', changedFigures(one, yours))
    expect(href).toMatch(/^mailto:o%2Bk%25%26x@example\.org\?subject=[^ \n]*&body=[^ \n]*$/)
    const { subject, body } = mail(href)
    expect(subject).toBe('Question: Power of a lamp (A note of lamps)')
    expect(body?.split('\r\n')).toEqual([
      'My question:',
      '',
      '',
      'Power of a lamp',
      '/van/notes/a/one/',
      'Verdict: pass, provisional',
      "A reader's figures, not the builder's: 2 figures changed.",
      '- Mark: Mine (builder: Ours)',
      '- draw: 2 A (builder: 4 A)',
      'WARNING Wiring fire',
      standingWords,
    ])
  })

  it('fills the form of a forum, whatever the words', () => {
    const setting = 'https://example.org/new?t={title}&b={text}&again={title}'
    const strange = { ...block('high'), title: '$& {text} 100 % \ud800' }
    const { searchParams } = new URL(askHref(strange, ctx, setting, []))
    expect(searchParams.get('t')).toBe('Question: $& {text} 100 % \ufffd (A note of lamps)')
    expect(searchParams.get('again')).toBe(searchParams.get('t'))
    expect(searchParams.get('b')).toContain('DANGER High voltage; WARNING Wiring fire\n')
  })

  it.each([0, 1, 10, 40, 400])('stays short with %i figures, and says what it left out', (many) => {
    const figures = Array.from({ length: many }, (_, index) => ({
      label: `Länge des Schlauchs № ${index}`,
      yours: '1.5 m',
      builders: '2.5 m',
    }))
    const titled = { ...block('high'), title: '長い題名'.repeat(many) }
    const { length, body } = ((href: string) => ({ length: href.length, ...mail(href) }))(
      askHref(titled, ctx, 'name@example.org', figures),
    )
    expect(length).toBeLessThan(1900)
    const lines = body?.split('\r\n') ?? []
    const kept = lines.filter((text) => text.startsWith('- L')).length
    const left = Number(/\((\d+) changed figures? left out/.exec(body ?? '')?.[1] ?? 0)
    expect(kept + left).toBe(many)
    expect(kept).toBeGreaterThanOrEqual(Math.min(many, 5))
    expect(lines.slice(-2)).toEqual(['DANGER High voltage; WARNING Wiring fire', standingWords])
  })

  it('stands in the foot of every card of a site that takes questions, and only there', async () => {
    expect(blockHtml(block('one'), ctx)).not.toContain('Ask about this block')
    const asked = await ledgerOf(
      small,
      trivial,
      'title: T\nvehicle: v\naddress: https://example.org\nquestions: name@example.org\ninstruments:\n  meter: { title: meter, plusMinus: 0.1 A }\nsources:\n  sheet: { title: Sheet }\n',
    )
    expect(asked.published.site.questions).toBe('name@example.org')
    const there = contextOf(asked.published, { base: '/van/', calculators })
    const href = (html: string) =>
      (
        /<a class="ask" href="([^"]*)">Ask about this block<\/a><\/p>/.exec(html)?.[1] ?? ''
      ).replaceAll('&amp;', '&')
    for (const one of asked.published.blocks) {
      const { to, body } = mail(href(blockHtml(one, there)))
      expect(to).toBe('name@example.org')
      expect(body).toContain(`https://example.org/van/notes/a/${one.name}/\r\n`)
      expect(body).toContain("The builder's figures.")
    }
    const worked = workPublished(asked.published, { 'a/high.amps': '0.2 A' }, calculators)
    const yours = contextOf(worked, { base: '/van/', calculators, builder: asked.published })
    const moved = href(blockHtml(blockOf({ published: worked }, 'a/high'), yours, 'yours'))
    expect(mail(moved).body).toContain('- Current: 0.2 A (builder: 0.1 A)')
  })
})
