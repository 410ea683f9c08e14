/** Nothing that a builder keeps in or around the folder of the site is lost by a build. */
import { execFileSync, spawn } from 'node:child_process'
import {
  chmod,
  lstat,
  mkdir,
  readdir,
  readFile,
  realpath,
  rename,
  rm,
  symlink,
  writeFile,
} from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { UsageError } from '../../src/cli/options.ts'
import { buildSite } from '../../src/site/build.ts'
import { carriedOver, listFile, writeList } from '../../src/site/own-files.ts'
import { placeOfSite } from '../../src/site/places.ts'
import { recover, replace } from '../../src/site/swap.ts'
import { command } from './command.ts'
import { builtSite, copyOf, filesIn, root, small, temporaryFolder } from './site.ts'

let folder: string
let out: string
beforeEach(async () => {
  folder = await realpath(await temporaryFolder())
  out = join(folder, 'site')
})
afterEach(() => rm(folder, { recursive: true }))

async function write(into: string, files: Readonly<Record<string, string>>): Promise<void> {
  for (const [name, text] of Object.entries(files)) {
    await mkdir(dirname(join(into, name)), { recursive: true })
    await writeFile(join(into, name), text)
  }
}

const textsIn = async (from: string): Promise<Record<string, string>> =>
  Object.fromEntries([...(await filesIn(from))].map(([name, bytes]) => [name, bytes.toString()]))

/** What a build leaves, as far as the next one looks at it. */
async function siteAt(place: string, files: Readonly<Record<string, string>>): Promise<void> {
  await write(place, { 'numbers.json': '{}', ...files })
  await writeList(place)
}

const goneProcess = async (): Promise<number> => {
  const child = spawn(process.execPath, ['-e', ''])
  await new Promise((done) => child.on('exit', done))
  return child.pid ?? 0
}

describe('what lies in the folder of the site', () => {
  const host = {
    '.git/HEAD': 'ref: refs/heads/pages',
    '.git/objects/ab/cd': 'a commit',
    '.htaccess': 'ErrorDocument 404 /404.html',
    '.nojekyll': '',
    '.well-known/security.txt': 'Contact: mailto:me@example.org',
    CNAME: 'notes.example.org',
    'robots.txt': 'User-agent: *\nDisallow: /\n',
  }

  it('is carried over where it is the host’s or git’s', async () => {
    await siteAt(out, { 'index.html': 'old', 'notes/pump/index.html': 'old' })
    await write(out, host)
    const fresh = join(folder, 'work')
    await siteAt(fresh, { 'index.html': 'new' })
    const made = await textsIn(fresh)
    await replace(out, fresh)
    expect(await textsIn(out)).toEqual({ ...made, ...host })
    expect(await readdir(folder)).toEqual(['site'])
    expect(await carriedOver(out)).toEqual([...new Set(Object.keys(host).map(top))].sort())
  })

  it('may be that alone: a branch for pages that is empty yet', async () => {
    await write(out, host)
    expect(await carriedOver(out)).toHaveLength(6)
  })

  it.each([
    ['at its top', 'README.md'],
    ['deeper', 'notes/pump/data-sheet.pdf'],
    ['in a folder of its own', 'films/first-drive.mp4'],
  ])('%s is named and refused, and stays', async (_, name) => {
    await siteAt(out, { 'notes/pump/index.html': 'old' })
    await write(out, { [name]: 'mine' })
    const before = await textsIn(out)
    const words = `\`${out}\` holds what no build of this kit made, and a build would replace it: \`${name}\`. Move it elsewhere (names at the top that begin with a dot, \`CNAME\` and \`robots.txt\` may stay)`
    await expect(carriedOver(out)).rejects.toThrow(new UsageError(words))
    const fresh = join(folder, 'work')
    await siteAt(fresh, { 'index.html': 'new' })
    await expect(replace(out, fresh)).rejects.toThrow(UsageError)
    expect(await textsIn(out)).toEqual(before)
    expect(await readdir(folder)).toEqual(['site'])
  })

  it('a link to a folder elsewhere, and many files, are named too', async () => {
    await siteAt(out, {})
    await symlink(folder, join(out, 'photos'))
    await write(out, Object.fromEntries([1, 2, 3, 4, 5, 6].map((n) => [`x${n}.txt`, 'mine'])))
    await expect(carriedOver(out)).rejects.toThrow(
      /: `photos`, `x1\.txt`, `x2\.txt`, `x3\.txt`, `x4\.txt` and 2 more\. Move it elsewhere/,
    )
  })

  it('what file managers and packers leave is nobody’s work', async () => {
    await siteAt(out, { 'notes/pump/index.html': 'old' })
    await write(out, {
      'notes/.DS_Store': '',
      'notes/pump/Thumbs.db': '',
      'notes/pump/index.html.gz': 'packed',
    })
    expect(await carriedOver(out)).toEqual([])
  })

  it('of a site made before there was a list, what the kit makes is known by its name', async () => {
    await write(out, { 'numbers.json': '{}', 'notes/pump/index.html': 'old', CNAME: 'x.example' })
    expect(await carriedOver(out)).toEqual(['CNAME'])
    await write(out, { 'readme.txt': 'mine' })
    await expect(carriedOver(out)).rejects.toThrow('`readme.txt`')
  })

  it('is never mixed up with what the new site has by the same name', async () => {
    await siteAt(out, { 'index.html': 'old' })
    await write(out, host)
    const before = await textsIn(out)
    const fresh = join(folder, 'work')
    await siteAt(fresh, { 'index.html': 'new', 'robots.txt': 'Allow: /' })
    await expect(replace(out, fresh)).rejects.toThrow(
      `the new site has \`robots.txt\` of its own, and what is so called in \`${out}\` no build made: move it elsewhere`,
    )
    expect(await textsIn(out)).toEqual(before)
  })

  it.skipIf(process.getuid?.() === 0)(
    'stands as it was where something cannot be moved',
    async () => {
      await siteAt(out, { 'index.html': 'old' })
      await write(out, host)
      await chmod(join(out, '.well-known'), 0o500)
      const before = await textsIn(out)
      const fresh = join(folder, 'work')
      await siteAt(fresh, { 'index.html': 'new' })
      await expect(replace(out, fresh)).rejects.toThrow('EACCES')
      expect(await textsIn(out)).toEqual(before)
      await chmod(join(out, '.well-known'), 0o700)
    },
  )

  it('of a build that was stopped before it was carried over, is by the next', async () => {
    const stopped = await goneProcess()
    const old = `${out}.old-${stopped}`
    await siteAt(old, { 'index.html': 'old', 'robots.txt': 'Allow: /' })
    const { CNAME, 'robots.txt': robots, ...left } = host
    await write(old, left)
    expect(robots).toContain('Disallow')
    await siteAt(out, { 'index.html': 'new' })
    await write(out, { CNAME })
    const made = await textsIn(out)
    await recover(out, join(folder, 'works'))
    expect(await textsIn(out)).toEqual({ ...made, ...left })
    expect(await readdir(folder)).toEqual(['site'])
  })

  it('of a build that was stopped while it took the old site away, is not asked for again', async () => {
    await siteAt(out, { 'index.html': 'new' })
    await write(`${out}.gone-${await goneProcess()}`, { 'notes/pump/index.html': 'half' })
    await recover(out, join(folder, 'works'))
    expect(await readdir(folder)).toEqual(['site'])
  })
})

const top = (file: string): string => file.split('/')[0] ?? ''

describe('a real build', () => {
  const build = async (content: string, to: string) => {
    const said: string[] = []
    const done = await buildSite({ root, content, out: to, say: (line) => said.push(line) })
    return { done, said: said.join('\n') }
  }

  it('lists its files, keeps a repository with its commits, and verifies with it', async () => {
    const site = await builtSite(small)
    await rename(site.folder, out)
    await site.remove()
    const list: unknown = JSON.parse(await readFile(join(out, listFile), 'utf8'))
    expect(list).toEqual([...(await filesIn(out)).keys()].sort())
    const git = (...words: string[]): string =>
      execFileSync('git', [
        '-C',
        out,
        '-c',
        'user.name=x',
        '-c',
        'user.email=x@example.org',
        ...words,
      ]).toString()
    git('init', '-q', '-b', 'pages')
    await write(out, {
      CNAME: 'notes.example.org',
      '.well-known/a/index.html': '<data value="1">1</data>',
    })
    git('add', '-A')
    git('commit', '-q', '-m', 'The site')
    const { done, said } = await build(small, out)
    expect([done, said]).toEqual([true, expect.stringContaining('built and verified')])
    expect(git('status', '--porcelain')).toBe('')
    expect(git('log', '--format=%s').trim()).toBe('The site')
    expect(await command('verify', ['--out', out])).toMatchObject({ code: 0, err: '' })
  })

  it('through links makes the site where the link leads, and leaves the link', async () => {
    const content = await copyOf(small)
    await rename(join(content, 'notes/loop.mdx'), join(folder, 'loop.mdx'))
    await symlink(join(folder, 'loop.mdx'), join(content, 'notes/loop.mdx'))
    await symlink(content, join(folder, 'linked'))
    await mkdir(join(folder, 'real'))
    await symlink(join(folder, 'real'), out)
    const { done, said } = await build(join(folder, 'linked'), out)
    expect([done, said]).toEqual([true, expect.stringContaining('built and verified')])
    expect((await lstat(out)).isSymbolicLink()).toBe(true)
    expect(await readdir(join(folder, 'real'))).toContain('numbers.json')
    await rm(content, { recursive: true })
  })
})

describe('a site is not made', () => {
  let content: string
  beforeEach(async () => {
    content = join(folder, 'truck/content')
    await write(content, { 'site.yaml': 'title: x', 'notes/a.mdx': 'mine' })
  })
  const refusal = async (place: string, notes = content): Promise<string> => {
    const before = await textsIn(folder)
    const options = { root, content: notes, out: place, say: () => undefined }
    const error: unknown = await buildSite(options).then(
      () => 'built',
      (one: unknown) => one,
    )
    expect(error).toBeInstanceOf(UsageError)
    expect(await textsIn(folder)).toEqual(before)
    return error instanceof Error ? error.message : ''
  }
  const instead = ': name another folder, such as `--out ../my-site`'

  it('where the notes are', async () => {
    expect(await refusal(content)).toBe(`\`${content}\` is the folder of the notes${instead}`)
  })

  it('around the notes, also where a site is there already', async () => {
    const around = join(folder, 'truck')
    await siteAt(around, { 'index.html': 'old' })
    const said = `\`${around}\` has the folder of the notes in it, and a build replaces the whole folder${instead}`
    expect(await refusal(around)).toBe(said)
    await symlink(around, join(folder, 'linked'))
    expect(await refusal(join(folder, 'linked'))).toContain('has the folder of the notes in it')
    await symlink(content, join(folder, 'notes'))
    expect(await refusal(around, join(folder, 'notes'))).toBe(said)
  })

  it('among the notes', async () => {
    const among = join(content, 'dist')
    expect(await refusal(among)).toBe(
      `\`${among}\` lies in the folder of the notes, where the next build would read it as theirs${instead}`,
    )
  })

  it.each(['.', 'src', 'src/new', 'public', 'content', 'node_modules/site', '.worked-notes'])(
    'at %s of the kit',
    async (name) => {
      const place = join(root, name)
      expect(await refusal(place)).toBe(`\`${place}\` belongs to the kit itself${instead}`)
    },
  )

  it('around the kit', async () => {
    const kit = join(folder, 'all/kit')
    await mkdir(kit, { recursive: true })
    const around = join(folder, 'all')
    await expect(placeOfSite({ root: kit, content, out: around })).rejects.toThrow(
      `\`${around}\` belongs to the kit itself${instead}`,
    )
  })

  it('in place of a file, or below one', async () => {
    const file = join(content, 'site.yaml')
    const said = `\`${file}\` is a file: the site is a folder, name one with \`--out\``
    expect([await refusal(file), await refusal(join(file, 'site'))]).toEqual([said, said])
  })

  it('but beside all that', async () => {
    for (const name of ['dist', 'site', 'contents', 'srcs/a', '.worked-notes/bench/dist'])
      expect(await placeOfSite({ root, content, out: join(root, name) })).toMatch(/.*/)
    const beside = join(folder, 'truck/content-site')
    expect(await placeOfSite({ root, content, out: beside })).toBe(beside)
    await symlink(join(folder, 'not/yet'), join(folder, 'link'))
    expect(await placeOfSite({ root, content, out: join(folder, 'link/a') })).toBe(
      join(folder, 'not/yet/a'),
    )
  })
})
