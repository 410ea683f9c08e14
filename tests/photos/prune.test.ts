/** Kept copies of photos: those that no build named for a while go, counted in builds. */
import { mkdir, readdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { filesOf, namesOf } from '../../src/photos/make.ts'
import { lookAt } from '../../src/photos/look.ts'
import { keptBuilds, pruneCopies } from '../../src/photos/prune.ts'
import { scene, smallPhoto } from './camera.ts'
import { inTemporary } from './folder.ts'

const build = async (folder: string, keys: readonly string[], times = 1): Promise<void> => {
  for (let time = 0; time < times; time++) await pruneCopies(new Set(keys), folder)
}

async function kept(folder: string, bytes: Buffer): Promise<{ key: string; names: string[] }> {
  const path = join(folder, 'photo.jpg')
  const cache = join(folder, 'cache')
  await writeFile(path, bytes)
  const looked = await lookAt(path, cache)
  if (!('facts' in looked)) throw new Error('no photo')
  await filesOf(path, looked.facts, cache)
  const { key } = looked.facts
  return { key, names: [...namesOf(looked.facts), `${key}.json`] }
}

it('keeps what builds name, and lets go of the rest after some builds, whatever the clock says', async () => {
  await inTemporary(async (folder) => {
    const cache = join(folder, 'cache')
    const stays = await kept(folder, await smallPhoto())
    const goes = await kept(folder, await scene(50, 40).jpeg().toBuffer())
    await writeFile(join(cache, `${stays.key}-64.avif.99-1.part`), 'half')
    const here = async (): Promise<string[]> =>
      (await readdir(cache)).filter((name) => name !== 'used.json').sort()
    expect((await here()).length).toBe(stays.names.length + goes.names.length + 1)

    await build(cache, [stays.key, goes.key])
    await build(cache, [stays.key], keptBuilds)
    expect((await here()).length).toBe(stays.names.length + goes.names.length + 1)
    // Named once more, it begins anew; what a stopped build left half written is named by nobody.
    await build(cache, [goes.key, stays.key])
    await build(cache, [stays.key], keptBuilds)
    expect(await here()).toEqual([...stays.names, ...goes.names].sort())
    await build(cache, [stays.key])
    expect(await here()).toEqual(stays.names.sort())
  })
})

it('begins anew where its record is broken, and needs neither the record nor the folder', async () => {
  await inTemporary(async (folder) => {
    await build(join(folder, 'none'), ['0'.repeat(20)])
    expect(await readdir(folder)).toEqual([])
    const cache = join(folder, 'cache')
    await mkdir(cache)
    const name = `${'a'.repeat(20)}-400.webp`
    await writeFile(join(cache, name), 'x')
    for (const text of ['', '{', '[]', '{"builds":"many","last":{}}', '{"builds":900}']) {
      await writeFile(join(cache, 'used.json'), text)
      await build(cache, [], 2)
      expect(await readdir(cache)).toContain(name)
    }
    await build(cache, [], keptBuilds)
    expect(await readdir(cache)).toEqual(['used.json'])
  })
})
