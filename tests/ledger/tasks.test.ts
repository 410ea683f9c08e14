/** Tasks and open questions: what counts as one, who closed it, what carries it on, and links of notes. */
import { describe, expect, it } from 'vitest'
import { contextOf, tasksOf } from '../../src/card/index.ts'
import { note, soundLedger } from './ledger-of.ts'

const one = `- [ ] Bleed again at {draw}
- [x] Fill
- [ ] Is it *tight*, by the **paper**?
  - [ ] and the lid
- [x] Paint, closed in [two](./two.mdx)
- a plain item
- [ ] Carry me

It is <Chosen id="draw" value="1.5 A" because="so" />. See [the sheet](https://example.org/a) and <a href="https://example.org/b">another</a>, [here](mailto:a@example.org).`

const two = `- [x] bleed again at {flow}, opened in [one](./one.mdx#draw).
- [ ] Carry me, opened in [one](./one.mdx)

<Chosen id="flow" value="2 A" because="so" />`

const three = '- [x] Carry me, opened in [two](./two.mdx)'

const notes = {
  one: note(one, { date: '2026-01-01' }),
  two: note(two, { date: '2026-02-01' }),
  three: note(three, { date: '2026-03-01' }),
}

describe('tasks', () => {
  it('are the items of task lists, in their order, each with what closed it', async () => {
    const { published } = await soundLedger(notes)
    expect(
      (published.tasks ?? []).map(({ id, pieces, state, question, in: closed, from }) => [
        id,
        pieces.map((piece) => (typeof piece === 'string' ? piece : `<${piece.number}>`)).join(''),
        state,
        question,
        closed,
        from,
      ]),
    ).toEqual([
      ['one/Task-1', 'Bleed again at <one/draw>', 'done', false, 'two', undefined],
      ['one/Task-2', 'Fill', 'done', false, undefined, undefined],
      ['one/Task-3', 'Is it tight, by the paper?', 'open', true, undefined, undefined],
      ['one/Task-4', 'and the lid', 'open', false, undefined, undefined],
      ['one/Task-5', 'Paint', 'done', false, 'two', undefined],
      ['one/Task-6', 'Carry me', 'carried', false, 'two', undefined],
      ['two/Task-1', 'bleed again at <two/flow>', 'done', false, undefined, 'one'],
      ['two/Task-2', 'Carry me', 'done', false, 'three', 'one'],
      ['three/Task-1', 'Carry me', 'done', false, undefined, 'two'],
    ])
  })

  it('are given out note by note', async () => {
    const { published, calculators } = await soundLedger(notes)
    const ctx = contextOf(published, { base: '/', calculators })
    expect(tasksOf('two', ctx).map(({ id }) => id)).toEqual(['two/Task-1', 'two/Task-2'])
    expect(tasksOf('none', ctx)).toEqual([])
  })
})

it('links that lead off the site are in the ledger, mail addresses are not', async () => {
  const { published } = await soundLedger(notes)
  expect(published.links).toEqual([
    { note: 'one', text: 'the sheet', url: 'https://example.org/a', line: 15 },
    { note: 'one', text: 'another', url: 'https://example.org/b', line: 15 },
  ])
})
