/**
 * A disk that is really full: a small one is mounted for the build alone, and filled up when the build has
 * come to a certain point. Where none can be mounted, that is said and nothing is tested.
 */
import { execFileSync, spawn } from 'node:child_process'
import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, it, vi } from 'vitest'
import { filesIn, root, temporaryFolder } from '../build/site.ts'
import { photoSite } from '../photos/site.ts'

// Each builds a whole site.
vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 })

/** Own mounts for one command: nobody else sees the small disk. */
const apart = process.getuid?.() === 0 ? ['-m'] : ['-r', '-m']
const works = join(root, '.worked-notes')

function mounts(): boolean {
  try {
    execFileSync('unshare', [...apart, 'mount', '-t', 'tmpfs', '-o', 'size=1m', 'small', '/mnt'], {
      stdio: 'ignore',
    })
    return true
  } catch {
    return false
  }
}

interface Ended {
  readonly code: number | null
  readonly out: string
  readonly err: string
}

/** Runs a line of the shell with a small disk at `place`. */
function withSmallDisk(place: string, size: string, line: string, env = {}): Promise<Ended> {
  return new Promise((done) => {
    const child = spawn(
      'unshare',
      [...apart, 'sh', '-c', `mount -t tmpfs -o size=${size} small "${place}" && ${line}`],
      { cwd: root, env: { PATH: process.env.PATH, HOME: process.env.HOME, ...env } },
    )
    let [out, err] = ['', '']
    child.stdout.on('data', (text: Buffer) => (out += text.toString()))
    child.stderr.on('data', (text: Buffer) => (err += text.toString()))
    child.on('close', (code) => done({ code, out, err }))
  })
}

/** A thread that fills the disk when a file of the new site is there whose path has `sign` in it. */
const filler = (sign: string): Readonly<Record<string, string>> => {
  const thread = `
    const { readdirSync, openSync, writeSync } = require('node:fs')
    const sleep = () => Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 3)
    const names = (folder) => { try { return readdirSync(folder, { recursive: true }) } catch { return [] } }
    for (;;) {
      if (names(${JSON.stringify(works)}).some((name) => name.includes(${JSON.stringify(sign)}))) break
      sleep()
    }
    const file = openSync(${JSON.stringify(join(works, 'filled-up'))}, 'w')
    const zeros = Buffer.alloc(1 << 20)
    // Whatever is freed meanwhile is taken as well.
    for (;;) { try { writeSync(file, zeros) } catch { sleep() } }
  `
  const program = `
    import { isMainThread, Worker } from 'node:worker_threads'
    if (isMainThread) new Worker(${JSON.stringify(thread)}, { eval: true, execArgv: [] }).unref()
  `
  return { NODE_OPTIONS: `--import "data:text/javascript,${encodeURIComponent(program)}"` }
}

let folder: string
let out: string
let content: string
let old: ReadonlyMap<string, Buffer>
const there = mounts()
const command = (to: string): string =>
  `"${process.execPath}" src/cli/build.ts --content "${content}" --out "${to}"`

beforeAll(async () => {
  if (!there) return
  folder = await temporaryFolder()
  out = join(folder, 'dist')
  content = await photoSite()
  await mkdir(works, { recursive: true })
  const settings = join(content, 'site.yaml')
  await writeFile(settings, `${await readFile(settings, 'utf8')}address: https://notes.example\n`)
  const { code, err } = await withSmallDisk(works, '200m', command(out))
  expect([code, err]).toEqual([0, ''])
  old = await filesIn(out)
})
afterAll(async () => {
  if (!there) return
  await rm(folder, { recursive: true })
  await rm(content, { recursive: true })
})

const oneLine =
  /^the disk is full(?: \(`.*`\))?: nothing was built, and the old site stands as it was$/

it.skipIf(!there).each([
  ['while the program of the pages is written', '.prerender'],
  ['while photos are written', '.avif'],
  ['while the site is finished', 'feed.xml'],
])('%s: is said in a line, and the old site is whole', async (_, sign) => {
  const { code, out: said, err } = await withSmallDisk(works, '24m', command(out), filler(sign))
  expect([code, err]).toEqual([1, ''])
  expect(said.trim().split('\n').at(-1)).toMatch(oneLine)
  expect(said).not.toMatch(/^\s+at |\.ts:\d+|built and verified/m)
  expect(await filesIn(out)).toEqual(old)
  expect((await readdir(folder)).sort()).toEqual(['dist'])
})

it.skipIf(!there)('where the site lies on a disk with room for one only', async () => {
  const bytes = [...old.values()].reduce((sum, { length }) => sum + Math.ceil(length / 4096) * 4, 0)
  const place = join(folder, 'small')
  await mkdir(place)
  const site = join(place, 'dist')
  const sum = `find "${place}" -type f -exec sha256sum {} + | sort`
  const {
    code,
    out: said,
    err,
  } = await withSmallDisk(
    place,
    `${Math.ceil(bytes * 1.5)}k`,
    `${command(site)} && ${sum} > "${folder}/before"; ${command(site)}; code=$?; ${sum} > "${folder}/after"; exit $code`,
  )
  expect([code, err]).toEqual([1, ''])
  expect(said.trim().split('\n').at(-1)).toMatch(oneLine)
  const before = await readFile(join(folder, 'before'), 'utf8')
  expect(before.split('\n').length).toBeGreaterThan(old.size)
  expect(await readFile(join(folder, 'after'), 'utf8')).toBe(before)
})

it.runIf(!there)('no small disk can be mounted on this machine: a full one was not tried', () => {
  expect(there).toBe(false)
})
