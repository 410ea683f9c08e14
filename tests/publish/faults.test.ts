/**
 * What befalls a build in a garage: it is stopped half-way, another one runs, the disk is full, the clock
 * stands in 1970, there is no git and no font. The old site stays whole, and the new one has the same
 * bytes as anywhere.
 */
import { spawn } from 'node:child_process'
import { cp, mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest'
import { diskWords } from '../../src/site/disk.ts'
import { takeLock } from '../../src/site/lock.ts'
import { recover } from '../../src/site/swap.ts'
import { command } from '../build/command.ts'
import { builtSite, copyOf, filesIn, root, temporaryFolder, type Built } from '../build/site.ts'

const content = join(root, 'tests/build/fixtures/published')
const works = join(root, '.worked-notes')

// Each builds whole sites, some three times.
vi.setConfig({ testTimeout: 240_000 })

let folder: string
let out: string
let old: ReadonlyMap<string, Buffer>
let site: Built
beforeAll(async () => {
  site = await builtSite(content)
  old = site.files
})
afterAll(() => site.remove())
beforeEach(async () => {
  folder = await temporaryFolder()
  out = join(folder, 'dist')
  await cp(site.folder, out, { recursive: true })
})
afterEach(() => rm(folder, { recursive: true }))

const build = (from: string, to = out, env: Readonly<Record<string, string>> = {}) =>
  command('build', ['--content', from, '--out', to], env)

/** The same notes with another word, so that a new site would be seen. */
async function another(): Promise<string> {
  const copy = await copyOf(content)
  const file = join(copy, 'site.yaml')
  await writeFile(file, (await readFile(file, 'utf8')).replace('quiet barge', 'loud barge'))
  return copy
}

/** A line of program that a command runs before itself. */
const before = (program: string): Readonly<Record<string, string>> => ({
  NODE_OPTIONS: `--import "data:text/javascript,${encodeURIComponent(program)}"`,
})

const beside = async (): Promise<string[]> => (await readdir(folder)).sort()

it('stopped half-way: the old site is whole, and the next build clears up and succeeds', async () => {
  const copy = await another()
  const child = spawn(
    process.execPath,
    [join(root, 'src/cli/build.ts'), '--content', copy, '--out', out],
    { cwd: root, stdio: 'ignore' },
  )
  const gone = new Promise((done) => child.on('exit', done))
  const work = join(works, `build-${child.pid ?? 0}`)
  // Some files of the new site are there by then, and not all.
  let names: string[] = []
  for (let tries = 0; tries < 2400 && !names.includes('notes'); tries++) {
    await wait(50)
    names = await readdir(work).catch(() => [])
  }
  expect(names).toContain('notes')
  child.kill('SIGKILL')
  await gone
  expect(await filesIn(out)).toEqual(old)
  expect(await beside()).toEqual(['dist', 'dist.building'])
  const { code, out: said } = await build(content)
  expect([code, said]).toEqual([0, expect.stringMatching(/built and verified: 2 notes/)])
  expect(await beside()).toEqual(['dist'])
  expect(await readdir(works)).not.toContain(`build-${child.pid ?? 0}`)
  expect(await filesIn(out)).toEqual(old)
  await rm(copy, { recursive: true })
})

it('stopped between the two renames: the old site is put back by the next build, also by one that fails', async () => {
  // A process that is gone.
  const child = spawn(process.execPath, ['-e', ''])
  await new Promise((done) => child.on('exit', done))
  await rename(out, `${out}.old-${child.pid ?? 0}`)
  await mkdir(`${out}.new-${child.pid ?? 0}`)
  const broken = await copyOf(content)
  await writeFile(join(broken, 'notes/bilge-pump.mdx'), 'no head')
  expect((await build(broken)).code).toBe(1)
  expect(await filesIn(out)).toEqual(old)
  expect(await beside()).toEqual(['dist'])
  await rm(broken, { recursive: true })
})

it('what another build is still at is left alone', async () => {
  const fresh = `${out}.new-${process.pid}`
  await mkdir(fresh)
  await recover(out, works)
  expect(await beside()).toEqual(['dist', `dist.new-${process.pid}`])
  await rm(fresh, { recursive: true })
})

it('two at once: the second waits for the first, and both are whole', async () => {
  const copy = await another()
  const first = build(content)
  await expect.poll(beside, { timeout: 20_000, interval: 20 }).toContain('dist.building')
  const [one, other] = await Promise.all([first, build(copy)])
  expect([one.code, one.err, other.code, other.err]).toEqual([0, '', 0, ''])
  expect(other.out).toMatch(
    /^another build of this site is running \(process \d+\): waiting for it$/m,
  )
  expect(await readFile(join(out, 'index.html'), 'utf8')).toContain('loud barge')
  expect((await command('verify', ['--out', out])).code).toBe(0)
  expect(await beside()).toEqual(['dist'])
  await rm(copy, { recursive: true })
})

describe('a full disk', () => {
  /** Writing where the path has this in it fails as on a full disk; `moves`: and nothing can be moved. */
  const full = (part: string, moves: boolean): Readonly<Record<string, string>> =>
    before(`
      import fs from 'node:fs/promises'
      import { syncBuiltinESMExports } from 'node:module'
      const full = (path) => Object.assign(new Error('ENOSPC: no space left on device, write'), { code: 'ENOSPC', path: String(path) })
      const { writeFile, rename, cp } = fs
      fs.writeFile = (path, ...more) => String(path).includes(${JSON.stringify(part)}) ? Promise.reject(full(path)) : writeFile(path, ...more)
      if (${moves}) {
        fs.rename = (from, to) => /build-\\d+$/.test(String(from)) ? Promise.reject(Object.assign(new Error('EXDEV'), { code: 'EXDEV' })) : rename(from, to)
        fs.cp = async (from, to) => { await cp(from + '/index.html', to + '/index.html'); throw full(to) }
      }
      syncBuiltinESMExports()
    `)

  it.each([
    ['while the site is made', full('feed.xml', false), 'feed.xml'],
    ['while it is copied to another disk', full('nothing has this name', true), '.new-'],
  ])('%s: is said in a line, and the old site is whole', async (_, env, where) => {
    const copy = await another()
    const { code, out: said, err } = await build(copy, out, env)
    const last = said.trim().split('\n').at(-1) ?? ''
    expect([code, err]).toEqual([1, ''])
    expect(last).toMatch(
      /^the disk is full \(`.*`\): nothing was built, and the old site stands as it was$/,
    )
    expect(last).toContain(where)
    expect(await filesIn(out)).toEqual(old)
    expect(await beside()).toEqual(['dist'])
    await rm(copy, { recursive: true })
  })

  it('and its like are known however deep they are wrapped; other errors are not taken for it', () => {
    const error = (code: string) => Object.assign(new Error('x'), { code })
    expect(diskWords(new Error('outer', { cause: error('ENOSPC') }))).toBe('the disk is full')
    expect(diskWords(error('EROFS'))).toBe('the disk can only be read')
    expect(diskWords(new Error('ENOSPC: no space left on device'))).toBe('the disk is full')
    expect(
      diskWords(
        new Error(
          'Something went wrong\nFailed to write file in /x/chunks/a.mjs\n\nCaused by:\n    No space left on device (os error 28)',
        ),
      ),
    ).toBe('the disk is full (`/x/chunks/a.mjs`)')
    const copy = Object.assign(error('ENOSPC'), { path: '/from', dest: '/to' })
    expect(diskWords(copy)).toBe('the disk is full (`/to`)')
    expect(diskWords(error('ENOENT'))).toBeUndefined()
    expect(diskWords('text')).toBeUndefined()
  })
})

it('a clock in 1970, no git, no font of the machine: the same bytes', async () => {
  const clock = before(`
    globalThis.Date = class extends Date {
      constructor(...given) { if (given.length === 0) super(1000); else super(...given) }
      static now() { return 1000 }
    }
  `)
  const bare = {
    ...clock,
    PATH: dirname(process.execPath),
    FONTCONFIG_FILE: join(folder, 'no-such-file'),
    FONTCONFIG_PATH: join(folder, 'no-such-folder'),
    XDG_DATA_HOME: folder,
    XDG_CACHE_HOME: folder,
    HOME: folder,
  }
  const to = join(folder, 'bare')
  const { code, err } = await build(content, to, bare)
  expect([code, err]).toEqual([0, ''])
  const made = await filesIn(to)
  expect([...made.keys()]).toEqual([...old.keys()])
  expect(
    [...made]
      .filter(([name, bytes]) => !bytes.equals(old.get(name) ?? Buffer.of()))
      .map(([name]) => name),
  ).toEqual([])
  await rm(to, { recursive: true })
})

it('a file of a build whose process is gone keeps nobody waiting', async () => {
  const file = join(folder, 'lock')
  const child = spawn(process.execPath, ['-e', ''])
  await new Promise((done) => child.on('exit', done))
  await writeFile(file, String(child.pid ?? 0))
  const told: number[] = []
  const free = await takeLock(file, (pid) => told.push(pid))
  expect([told, await readFile(file, 'utf8')]).toEqual([[], String(process.pid)])
  await free()
  await expect(readFile(file)).rejects.toThrow('ENOENT')
})
