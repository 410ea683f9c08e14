/** Links of a finished site that lead nowhere: each is found, with its page, and no other. */
import { expect, it } from 'vitest'
import { deadLinks } from '../../src/site/dead-links.ts'

const pages = new Map([
  [
    'index.html',
    '<a href="/kit/notes/a/">a</a> <a class="x" href="/kit/notes/b/">b</a> <a href="/kit/numbers.csv">n</a> <a href="https://example.org/">o</a> <a href="/other/">x</a> <a href="mailto:a@b">m</a>',
  ],
  [
    'notes/a/index.html',
    '<h2 id="what">w</h2> <i id="pump.flow">p</i> <a href="#what">w</a> <a href="#pump.flow">p</a> <a href="#not">n</a> <a href="/kit/#there">t</a> <a href="../b/">r</a> <a href="/kit/">h</a>',
  ],
  ['notes/numbers.json', '<a href="/nowhere">'],
])
const files = new Set([...pages.keys(), 'numbers.csv'])

it('finds every link that leads nowhere', () => {
  expect([...deadLinks(pages, files, '/kit/')].map(({ file, text }) => `${file}: ${text}`)).toEqual(
    [
      'index.html: a link to `/kit/notes/b/` leads nowhere',
      'index.html: a link to `/other/` leads nowhere',
      'notes/a/index.html: a link to `#not`: there is no such place on that page',
      'notes/a/index.html: a link to `/kit/#there`: there is no such place on that page',
      'notes/a/index.html: a link to `../b/` leads nowhere',
    ],
  )
})
