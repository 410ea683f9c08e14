/** The old site stays until the new one is whole; what is no site of the kit is never replaced. */
import { cp, mkdir, readFile, rm, stat, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { UsageError } from '../../src/cli/options.ts'
import { buildSite } from '../../src/site/build.ts'
import { writeList } from '../../src/site/own-files.ts'
import { command } from './command.ts'
import { builtSite, copyOf, filesIn, root, small, temporaryFolder } from './site.ts'

describe('the folder of the site', () => {
  let content: string
  let folder: string
  beforeAll(async () => {
    content = await copyOf(small)
    folder = await temporaryFolder()
  })
  afterAll(async () => {
    for (const one of [content, folder]) await rm(one, { recursive: true, force: true })
  })
  /** A finished site in a folder of its own. */
  const siteIn = async (name: string): Promise<string> => {
    const site = await builtSite(content)
    const out = join(folder, name)
    await cp(site.folder, out, { recursive: true })
    await site.remove()
    return out
  }
  const build = async (out: string, from = content) => {
    const said: string[] = []
    const done = await buildSite({ root, content: from, out, say: (line) => said.push(line) })
    return { done, said }
  }

  it('stays as it was, byte for byte, when a note fails', async () => {
    const out = await siteIn('failing')
    const old = await filesIn(out)
    const { mtimeMs, ino } = await stat(out)
    const failing = await copyOf(content)
    const note = join(failing, 'notes/loop.mdx')
    await writeFile(
      note,
      (await readFile(note, 'utf8')).replace('value="65 °C"', 'value="65 flurbs"'),
    )
    const { done, said } = await build(out, failing)
    expect(done).toBe(false)
    expect(said.slice(1)).toEqual([
      '1 error, 0 warnings: nothing was built, and the old site stands as it was',
    ])
    expect(said[0]).toMatch(/notes\/loop\.mdx:11:38 error: `flurbs` is not a unit known here$/)
    expect(await filesIn(out)).toEqual(old)
    expect([(await stat(out)).mtimeMs, (await stat(out)).ino]).toEqual([mtimeMs, ino])
    await rm(failing, { recursive: true })
  })

  it('takes the new site whole: what the old one had and the new one has not is gone', async () => {
    const out = await siteIn('whole')
    await writeFile(join(out, 'notes', 'left-over.html'), 'old')
    await writeList(out)
    expect((await build(out)).done).toBe(true)
    expect([...(await filesIn(out)).keys()]).not.toContain('notes/left-over.html')
  })

  it('is made where there is none, also several folders deep', async () => {
    const out = join(folder, 'a/b/c')
    expect((await build(out)).done).toBe(true)
    expect([...(await filesIn(out)).keys()]).toContain('numbers.json')
  })

  it('that holds other files is refused, and they stay', async () => {
    const out = join(folder, 'photographs')
    await mkdir(out)
    await writeFile(join(out, 'van.jpg'), 'a picture')
    await expect(build(out)).rejects.toThrow(UsageError)
    expect([...(await filesIn(out))].map(([name, bytes]) => [name, bytes.toString()])).toEqual([
      ['van.jpg', 'a picture'],
    ])
    const { code, out: text, err } = await command('build', ['--content', content, '--out', out])
    expect([code, text, err]).toEqual([
      2,
      '',
      `${out} holds other files and no site of this kit: name an empty or a new folder\n`,
    ])
  })

  it('that is empty is taken', async () => {
    const out = join(folder, 'empty')
    await mkdir(out)
    expect((await build(out)).done).toBe(true)
  })
})

describe('a command', () => {
  it('check lists every problem with its place, and says so by its exit code', async () => {
    const { code, out, err } = await command('check', ['--content', small])
    expect([code, err]).toEqual([0, ''])
    expect(out).toMatch(/^2 notes, \d+ numbers, 4 blocks: 0 errors, 0 warnings\n$/)
    const content = await temporaryFolder()
    await mkdir(join(content, 'notes'))
    await writeFile(join(content, 'notes/a.mdx'), '---\ntitle: x\n---\n{1,5}\n')
    const wrong = await command('check', ['--content', content, '--format', 'json'])
    expect(wrong.code).toBe(1)
    const list: unknown = JSON.parse(wrong.out)
    expect(list).toMatchObject({
      problems: [
        { file: 'notes/a.mdx' },
        { file: 'notes/a.mdx' },
        { file: 'notes/a.mdx' },
        { file: 'notes/a.mdx' },
        { file: 'site.yaml' },
      ],
    })
    await rm(content, { recursive: true })
  })

  it.each([
    [
      ['--contents', 'x'],
      'cannot make sense of `--contents x`; allowed: --content DIR, --out DIR, --format text|json, --port N\n',
    ],
    [['--format', 'xml'], '--format is text or json, not `xml`\n'],
    [['--port', '99999'], '--port is a number up to 65535, not `99999`\n'],
  ])('with %j says what it takes, in one line', async (words, line) => {
    const { code, out, err } = await command('check', words)
    expect([code, out, err]).toEqual([2, '', line])
  })

  it('verify tells a site that was altered, and one that is none', async () => {
    const { folder: out, remove } = await builtSite(small)
    expect(await command('verify', ['--out', out])).toMatchObject({ code: 0, err: '' })
    const page = join(out, 'notes/loop/index.html')
    await writeFile(page, (await readFile(page, 'utf8')).replace('>2.4\u00a0', '>2.5\u00a0'))
    const altered = await command('verify', ['--out', out])
    expect([altered.code, altered.err]).toEqual([1, ''])
    expect(altered.out).toMatch(
      /notes\/loop\/index\.html:\d+ `loop\/supply` prints something else than 2\.4\u00a0m\n1 difference\n$/,
    )
    await rm(join(out, 'numbers.json'))
    expect(await command('verify', ['--out', out])).toMatchObject({ code: 1, err: '' })
    await remove()
  })
})
