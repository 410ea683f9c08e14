/** What nobody foresaw ends a build with a whole sentence, and with the note where the error names one. */
import { mkdir, readFile, realpath, rm, symlink } from 'node:fs/promises'
import { join, relative } from 'node:path'
import { afterAll, beforeAll, expect, it } from 'vitest'
import { keptFault } from '../../src/site/fault.ts'
import { temporaryFolder } from './site.ts'

let root: string
const said = (error: unknown, content = join(root, 'truck')) => keptFault(error, { root, content })
const seen = (path: string): string => relative(process.cwd(), join(root, path))

beforeAll(async () => {
  root = await realpath(await temporaryFolder())
  await mkdir(join(root, 'truck/notes'), { recursive: true })
  await symlink(join(root, 'truck'), join(root, 'linked'))
})
afterAll(() => rm(root, { recursive: true }))

it.each([
  ['[plugin x] {content}/notes/pump.mdx:17:8\nSomeError: Unexpected', 'notes/pump.mdx:17'],
  ['Error: cannot resolve "a" from "{content}/notes/pump.mdx".\nMore', 'notes/pump.mdx'],
  ['[MISSING] Error: no "b"\n   ╭─[ truck/notes/pump.mdx:5:10 ]', 'notes/pump.mdx:5'],
])('%j', async (message, place) => {
  for (const content of ['truck', 'linked']) {
    const whole = message.replace('{content}', join(root, content))
    expect(
      await said(new Error(`Build failed with 1 error:\n\n${whole}`), join(root, content)),
    ).toBe(
      `no page can be made of \`${seen(message.includes('{content}') ? `${content}/${place}` : `truck/${place}`)}\` (more of it in ${seen('.worked-notes/fault.txt')})`,
    )
  }
})

it('without a note of the builder’s, by its first line that says something', async () => {
  const file = seen('.worked-notes/fault.txt')
  expect(await said(new Error('Build failed with 2 errors:\n\nno such thing:\nmore'))).toBe(
    `no such thing (more of it in ${file})`,
  )
  expect(await said(new Error(`it was /elsewhere/notes/pump.mdx:3.`))).toBe(
    `it was /elsewhere/notes/pump.mdx:3 (more of it in ${file})`,
  )
  expect(await said(new Error(''))).toBe(`unknown (more of it in ${file})`)
  expect(await said(undefined)).toBe(`undefined (more of it in ${file})`)
  expect(await readFile(join(root, '.worked-notes/fault.txt'), 'utf8')).toBe('undefined\n')
})
