/** What a build says of a new site that will not do: links at the note's line, numbers for themselves. */
import { expect, it } from 'vitest'
import { wrongLines, wrongWords } from '../../src/site/wrong.ts'
import { ledgerOf, settings } from '../ledger/ledger-of.ts'

const link = {
  file: 'notes/a/index.html',
  line: 15,
  text: 'a link to `/kit/numbers/#nix`: there is no such place on that page',
  link: '/kit/numbers/#nix',
}
const other = { file: 'index.html', line: 2, text: 'not what its numbers give' }
const byHand = { ...link, file: 'open/index.html', link: '/kit/x/', text: 'leads nowhere' }

it('tells a link at the line of the note that it comes from, once', async () => {
  const site = `base: /kit/\n${settings}`
  const ledger = await ledgerOf({ a: 'So\n\n[a](/numbers/#nix) it is.' }, undefined, site)
  const wrong = [link, { ...link, file: 'notes/a/b/index.html' }, byHand, other]
  expect(wrongLines(wrong, ledger, 'mine')).toEqual([
    'mine/notes/a.mdx:9:1 error: a link to `/kit/numbers/#nix`: there is no such place on that page',
    'open/index.html:15 leads nowhere',
    'index.html:2 not what its numbers give',
  ])
})

it('says how much of it is links, and how much numbers', () => {
  expect(wrongWords([link, link])).toBe('1 link of the new site leads nowhere')
  expect(wrongWords([other, link, byHand])).toBe(
    '1 place of the new site is not what its numbers give, 2 links of the new site lead nowhere',
  )
})
