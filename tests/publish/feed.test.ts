/** What a reader of feeds gets of a note: its first name in the id, the boxes of its tasks as signs. */
import { readFile, rename, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { loadLedger } from '../../src/ledger/load.ts'
import { feedText } from '../../src/site/feed/atom.ts'
import { noteContent } from '../../src/site/feed/content.ts'
import { taskBoxHtml } from '../../src/card/tasks.ts'
import type { PublishedTask } from '../../src/ledger/published.ts'
import { headlineOf } from '../../src/site/social/headline.ts'
import { copyOf, root } from '../build/site.ts'

const content = join(root, 'tests/build/fixtures/published')

async function idsOf(folder: string): Promise<string[]> {
  const { published, calculators } = await loadLedger(folder)
  const feed = await feedText(published, { base: '/', calculators, page: () => '' })
  return [...(feed ?? '').matchAll(/<id>(tag:[^<]*)<\/id>/g)].map(([, id = '']) => id).sort()
}

it('a note that gets another name, and then another, keeps its ids', async () => {
  const folder = await copyOf(content)
  const before = await idsOf(folder)
  expect(before).toContain('tag:barge.example,2026-02-01:notes/bilge-pump')
  const [old, now] = ['bilge-pump', 'pumping-out'].map((name) => join(folder, `notes/${name}.mdx`))
  const text = await readFile(old ?? '', 'utf8')
  await rename(old ?? '', now ?? '')
  await writeFile(
    now ?? '',
    text.replace('status: done', 'status: done\nwas: [bilge-pump, the-bilge]'),
  )
  for (const name of ['clamp-meter', 'zzdraftmarker-note']) {
    const file = join(folder, `notes/${name}.mdx`)
    const other = await readFile(file, 'utf8')
    await writeFile(file, other.replaceAll('./bilge-pump.mdx', './pumping-out.mdx'))
  }
  expect(await idsOf(folder)).toEqual(before)
  await rm(folder, { recursive: true })
})

it('a task keeps its tick', () => {
  const item = (state: PublishedTask['state']): string => {
    const task = { id: 'a/Task-1', note: 'a', state, question: false, pieces: [], line: 1 }
    return `<li class="task">${taskBoxHtml(task, true)}Check the pump</li>`
  }
  const page = `<article class="prose"><ul>${item('done')}${item('open')}${item('carried')}</ul></article>`
  expect(noteContent(page, 'https://example.org/notes/a/', () => '')).toBe(
    '<ul><li>☑ Check the pump</li><li>☐ Check the pump</li><li>☐ Check the pump</li></ul>',
  )
})

it('the picture says since when its number is what it is', async () => {
  const folder = await copyOf(content)
  const dated = async (headline: string, more = ''): Promise<unknown> => {
    const file = join(folder, 'notes/bilge-pump.mdx')
    const text = await readFile(file, 'utf8')
    await writeFile(file, text.replace(/^headline: .*$/m, `headline: ${headline}${more}`))
    const { published, calculators } = await loadLedger(folder)
    return headlineOf(published, 'bilge-pump', calculators)
  }
  // The note is of 1 February; what the pump draws was measured on 14 March.
  expect(await dated('pumpFuse.fuse')).toMatchObject({ value: '7.5\u00a0A', date: '2026-03-14' })
  expect(await dated('draw')).toMatchObject({ value: '4.0\u00a0A', date: '2026-03-14' })
  expect(await dated('impeller.price')).toMatchObject({ date: '2026-02-01' })
  expect(await dated('pumpFuse.fuse', '\nchanged: 2026-05-02')).toMatchObject({
    date: '2026-05-02',
  })
  await rm(folder, { recursive: true })
})
