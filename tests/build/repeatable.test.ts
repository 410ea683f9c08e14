/** The same notes give the same bytes, wherever and whenever they are built. */
import { rm } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { command } from './command.ts'
import { copyOf, filesIn, small, temporaryFolder } from './site.ts'

it('two folders, two time zones, two languages and two shells: one site', async () => {
  const places = [
    {
      TZ: 'Pacific/Kiritimati',
      LANG: 'tr_TR.UTF-8',
      LC_ALL: 'tr_TR.UTF-8',
      BASE_URL: '/elsewhere/',
      NODE_ENV: 'development',
    },
    { TZ: 'America/Los_Angeles', LANG: 'C', LC_ALL: 'C' },
  ]
  const sites: ReadonlyMap<string, Buffer>[] = []
  for (const env of places) {
    const content = await copyOf(small)
    const folder = await temporaryFolder()
    const out = join(folder, 'dist')
    const {
      code,
      out: said,
      err,
    } = await command('build', ['--content', content, '--out', out], env)
    expect([said, err, code]).toEqual([
      expect.stringMatching(/^built and verified: 2 notes/),
      '',
      0,
    ])
    sites.push(await filesIn(out))
    for (const one of [content, folder]) await rm(one, { recursive: true })
  }
  const [one, other] = sites
  expect([...(other?.keys() ?? [])]).toEqual([...(one?.keys() ?? [])])
  expect(
    [...(one ?? [])]
      .filter(([name, bytes]) => !bytes.equals(other?.get(name) ?? Buffer.of()))
      .map(([name]) => name),
  ).toEqual([])
}, 240_000)
