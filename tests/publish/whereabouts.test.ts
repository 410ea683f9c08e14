/** Where the site will be, set once: by `site.yaml`, or by the variables of the shell, which go first. */
import { join } from 'node:path'
import { rm } from 'node:fs/promises'
import { describe, expect, it } from 'vitest'
import { readSite } from '../../src/ledger/site-file.ts'
import { withWhereabouts, type Environment } from '../../src/ledger/whereabouts.ts'
import { command } from '../build/command.ts'
import { builtSite, filesIn, small, temporaryFolder } from '../build/site.ts'

const read = (settings: string, env: Environment = {}) =>
  withWhereabouts(readSite(`title: T\nvehicle: V\n${settings}\n`, 'site.yaml'), env, 'site.yaml')

const place = (settings: string, env: Environment = {}) => {
  const { site, problems } = read(settings, env)
  return [site?.address, site?.base, ...problems.map(({ text }) => text)]
}

describe('where the site will be', () => {
  it.each([
    ['', {}, undefined, '/'],
    ['base: /kit/', {}, undefined, '/kit/'],
    ['base: /kit', {}, undefined, '/kit/'],
    ['address: https://a.example', {}, 'https://a.example', '/'],
    ['address: https://a.example/', {}, 'https://a.example', '/'],
    ['address: https://a.example\nbase: /kit/', {}, 'https://a.example', '/kit/'],
    ['address: https://a.example/my-truck/', {}, 'https://a.example', '/my-truck/'],
    ['address: https://a.example/kit\nbase: /kit/', {}, 'https://a.example', '/kit/'],
    ['', { SITE_URL: 'https://b.example:8443/a/b' }, 'https://b.example:8443', '/a/b/'],
    ['', { BASE_PATH: 'a/b' }, undefined, '/a/b/'],
    ['base: /kit/', { BASE_PATH: '/' }, undefined, '/'],
    ['base: /kit/', { SITE_URL: '', BASE_PATH: '' }, undefined, '/kit/'],
    [
      'address: https://a.example/kit/',
      { SITE_URL: 'https://b.example/x/' },
      'https://b.example',
      '/x/',
    ],
    [
      'address: https://a.example\nbase: /kit/',
      { SITE_URL: 'https://b.example/x/' },
      'https://b.example',
      '/x/',
    ],
    ['address: https://a.example/kit/', { BASE_PATH: '/x/' }, 'https://a.example', '/x/'],
    ['base: /kit/', { SITE_URL: 'http://b.example' }, 'http://b.example', '/kit/'],
  ])('from %j and %j', (settings, env, address, base) => {
    expect(place(settings, env)).toEqual([address, base])
  })

  it.each([
    [
      '',
      { SITE_URL: 'barge.example' },
      '`SITE_URL`: `barge.example` is no web address, such as https://example.org',
    ],
    [
      '',
      { SITE_URL: 'https://a.example/?x=1' },
      '`SITE_URL`: `https://a.example/?x=1` is no web address, such as https://example.org',
    ],
    [
      'address: ftp://a.example',
      {},
      '`address`: `ftp://a.example` is no web address, such as https://example.org',
    ],
    [
      '',
      { BASE_PATH: '/my truck/' },
      'the path `/my truck/` of the site: letters without accents, digits, `-`, `_`, `.` and `~` only',
    ],
    [
      '',
      { BASE_PATH: '/a/../b/' },
      'the path `/a/../b/` of the site: letters without accents, digits, `-`, `_`, `.` and `~` only',
    ],
    [
      '',
      { BASE_PATH: '//elsewhere.example', SITE_URL: 'https://a.example/x/' },
      '`SITE_URL` says the site lies at `/x/`, `BASE_PATH` says `/elsewhere.example/`',
    ],
    [
      'address: https://a.example/kit/\nbase: /other/',
      {},
      '`address` says the site lies at `/kit/`, `base` says `/other/`',
    ],
  ])('refuses %j and %j', (settings, env, text) => {
    const { problems } = read(settings, env)
    expect(problems.map((one) => [one.rule, one.level, one.text])).toEqual([
      ['bad-whereabouts', 'error', text],
    ])
  })
})

it('the same notes for two places differ only where a whole address is due', async () => {
  const folder = await temporaryFolder()
  const out = join(folder, 'dist')
  const env = { BASE_PATH: '/' }
  const { code, err } = await command('build', ['--content', small, '--out', out], env)
  expect([code, err]).toEqual([0, ''])
  const other = await filesIn(out)
  await rm(folder, { recursive: true })
  // By its own settings it lies below `/kit/`.
  const { files: one, remove } = await builtSite(small)
  await remove()
  expect([...one.keys()]).toEqual([...other.keys()])
  const bare = (bytes: Buffer | undefined): string =>
    bytes?.toString('latin1').replaceAll('/kit/', '/') ?? ''
  const differing = [...one].filter(
    ([name, bytes]) => !bytes.equals(other.get(name) ?? Buffer.of()),
  )
  // What differs is the path itself, where it is printed for paper or belongs to what is not found.
  expect(differing.filter(([name, bytes]) => bare(bytes) !== bare(other.get(name)))).toEqual([])
  expect(differing.map(([name]) => name).filter((name) => !name.endsWith('.html'))).toEqual([
    '_headers',
  ])
  expect(differing.map(([name]) => name)).toContain('404.html')
})
