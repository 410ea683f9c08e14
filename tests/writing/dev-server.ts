/**
 * A running `npm run dev` for the tests. In: a content folder that may be changed. Out: pages as a
 * browser gets them, what the terminal says, whether it still runs; `stop` ends it.
 */
import { spawn } from 'node:child_process'
import { createServer } from 'node:net'
import { join } from 'node:path'
import { root } from '../build/site.ts'

export interface DevServer {
  readonly get: (path: string) => Promise<{ readonly status: number; readonly html: string }>
  /** Asks until `seen` is true of the page; the last answer where it never is. */
  readonly until: (
    path: string,
    seen: (html: string, status: number) => boolean,
  ) => Promise<{ readonly status: number; readonly html: string }>
  readonly said: () => string
  readonly runs: () => boolean
  readonly stop: () => Promise<void>
}

const freePort = (): Promise<number> =>
  new Promise((done) => {
    const server = createServer().listen(0, 'localhost', () => {
      const address = server.address()
      server.close(() => done(typeof address === 'object' && address !== null ? address.port : 0))
    })
  })

const soon = (ms: number): Promise<void> => new Promise((done) => setTimeout(done, ms))

export async function devServer(content: string): Promise<DevServer> {
  const port = await freePort()
  const child = spawn(
    process.execPath,
    [join(root, 'src/cli/dev.ts'), '--content', content, '--port', String(port)],
    { cwd: root, env: { PATH: process.env.PATH, HOME: process.env.HOME, NO_COLOR: '1' } },
  )
  let out = ''
  child.stdout.on('data', (text: Buffer) => (out += text.toString()))
  child.stderr.on('data', (text: Buffer) => (out += text.toString()))
  const ended = new Promise<void>((done) => child.on('close', () => done()))
  const runs = (): boolean => child.exitCode === null && child.signalCode === null
  for (let waited = 0; !/http:\S+/.test(out); waited += 50) {
    if (!runs() || waited > 60_000) throw new Error(`dev does not start: ${out}`)
    await soon(50)
  }
  const address = (/http:\S+/.exec(out)?.[0] ?? '').replace(/\/$/, '')
  const get: DevServer['get'] = async (path) => {
    const answer = await fetch(address + path)
    return { status: answer.status, html: await answer.text() }
  }
  return {
    get,
    until: async (path, seen) => {
      for (let tries = 0; ; tries += 1) {
        const answer = await get(path)
        if (seen(answer.html, answer.status) || tries > 200) return answer
        await soon(50)
      }
    },
    said: () => out,
    runs,
    stop: async () => {
      child.kill()
      await ended
    },
  }
}
