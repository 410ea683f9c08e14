/** Files in the folder of the notes that are no notes: what an editor leaves, links that lead nowhere. */
import { mkdir, symlink } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { loadLedger } from '../../src/ledger/load.ts'
import { inFolder, line, settings } from './ledger-of.ts'
import { trivial } from './trivial.ts'

it('a hidden file is passed over, and what cannot be read is told', async () => {
  const said = await inFolder({ pump: 'It hums.' }, settings, async (content) => {
    await symlink('someone@somewhere.1234', join(content, 'notes', '.#pump.mdx'))
    await symlink('gone.mdx', join(content, 'notes', 'lost.mdx'))
    await mkdir(join(content, 'notes', 'folder.mdx'))
    const { problems, published } = await loadLedger(content, trivial)
    expect(published.notes.map(({ slug }) => slug)).toEqual(['pump'])
    return problems.map(line)
  })
  const why =
    'cannot be read: it is a folder, a link that leads nowhere, or not yours to read | hint: put the note itself there'
  expect(said).toEqual([
    `notes/folder.mdx:1:1 error note-unreadable: \`folder.mdx\` ${why}`,
    `notes/lost.mdx:1:1 error note-unreadable: \`lost.mdx\` ${why}`,
  ])
})
