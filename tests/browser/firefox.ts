/**
 * Firefox, driven by WebDriver BiDi (W3C) over its own socket. In: the path of its program. Out: a page
 * that can be sent to an address, asked, and typed into; `faults` is what its console complains of and
 * what its content policy stops. It has a profile of its own, and reaches no other host.
 */
import { spawn } from 'node:child_process'
import { accessSync, constants } from 'node:fs'
import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { delimiter, join } from 'node:path'
import { z } from 'zod'

export function installedFirefox(): string | undefined {
  const named = process.env.FIREFOX_PATH ?? ''
  const folders = (process.env.PATH ?? '').split(delimiter)
  const inPath = ['firefox', 'firefox-esr'].flatMap((name) =>
    folders.map((folder) => join(folder, name)),
  )
  return [named, ...inPath, '/Applications/Firefox.app/Contents/MacOS/firefox'].find((path) => {
    try {
      if (path !== '') accessSync(path, constants.X_OK)
      return path !== ''
    } catch {
      return false
    }
  })
}

/** Whatever is not on this machine is asked of a proxy that is not there. */
const settings = {
  'app.normandy.enabled': false,
  'app.update.disabledForTesting': true,
  'browser.shell.checkDefaultBrowser': false,
  'browser.startup.page': 0,
  'datareporting.policy.dataSubmissionEnabled': false,
  'network.captive-portal-service.enabled': false,
  'network.connectivity-service.enabled': false,
  'network.proxy.type': 1,
  'network.proxy.http': '127.0.0.1',
  'network.proxy.http_port': 9,
  'network.proxy.ssl': '127.0.0.1',
  'network.proxy.ssl_port': 9,
  'toolkit.telemetry.enabled': false,
}

const message = z.object({
  id: z.number().optional(),
  method: z.string().optional(),
  error: z.string().optional(),
  message: z.string().optional(),
  result: z.unknown().optional(),
  params: z.unknown().optional(),
})
const tree = z.object({ contexts: z.array(z.object({ context: z.string() })).min(1) })
const answer = z.object({
  type: z.string(),
  result: z.object({ value: z.unknown() }).optional(),
  exceptionDetails: z.object({ text: z.string() }).optional(),
})
const logged = z.object({ level: z.string(), text: z.string().nullable() })

export interface Firefox {
  readonly faults: () => Promise<string[]>
  readonly goto: (address: string) => Promise<void>
  /** The value of an expression, or of its promise, as JSON carries it. */
  readonly ask: (expression: string) => Promise<unknown>
  readonly type: (text: string) => Promise<void>
  readonly close: () => Promise<void>
}

export async function firefox(path: string): Promise<Firefox> {
  const profile = await mkdtemp(join(tmpdir(), 'firefox-'))
  const lines = Object.entries(settings).map(
    ([name, value]) => `user_pref(${JSON.stringify(name)}, ${JSON.stringify(value)})`,
  )
  await writeFile(join(profile, 'user.js'), lines.join('\n'))
  const child = spawn(
    path,
    ['--headless', '--no-remote', '--profile', profile, '--remote-debugging-port=0'],
    { env: { ...process.env, HOME: profile } },
  )
  const ended = new Promise<void>((done) => child.on('close', () => done()))
  const stop = async (): Promise<void> => {
    child.kill()
    await ended
    await rm(profile, { recursive: true, force: true, maxRetries: 5 })
  }
  try {
    const address = await new Promise<string>((found, lost) => {
      let said = ''
      child.stderr.on('data', (text: Buffer) => {
        said += text.toString()
        const [, at] = /WebDriver BiDi listening on (ws:\S+)/.exec(said) ?? []
        if (at !== undefined) found(at)
      })
      void ended.then(() => lost(new Error(`Firefox does not start: ${said}`)))
    })
    return await driven(`${address}/session`, stop)
  } catch (error) {
    await stop()
    throw error
  }
}

async function driven(address: string, stop: () => Promise<void>): Promise<Firefox> {
  const socket = new WebSocket(address)
  await new Promise((open, lost) => {
    socket.addEventListener('open', open)
    socket.addEventListener('error', () => lost(new Error(`no answer from ${address}`)))
  })
  const waiting = new Map<number, (reply: z.infer<typeof message>) => void>()
  const complaints: string[] = []
  socket.addEventListener('message', ({ data }) => {
    const reply = message.parse(JSON.parse(String(data)))
    if (reply.id !== undefined) waiting.get(reply.id)?.(reply)
    const entry = logged.safeParse(reply.params)
    if (reply.method === 'log.entryAdded' && entry.success && entry.data.level === 'error')
      complaints.push(entry.data.text ?? '')
  })
  let id = 0
  const send = async (method: string, params: object): Promise<unknown> => {
    id += 1
    const reply = new Promise<z.infer<typeof message>>((done) => waiting.set(id, done))
    socket.send(JSON.stringify({ id, method, params }))
    const { error, message: said, result } = await reply
    if (error !== undefined) throw new Error(`${method}: ${error} ${said ?? ''}`)
    return result
  }
  await send('session.new', { capabilities: {} })
  await send('session.subscribe', { events: ['log.entryAdded'] })
  await send('script.addPreloadScript', {
    functionDeclaration: `() => {
      const stopped = []
      Object.defineProperty(globalThis, 'stopped', { value: stopped })
      document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) =>
        stopped.push('policy: ' + violatedDirective + ' ' + blockedURI))
    }`,
  })
  const { contexts } = tree.parse(await send('browsingContext.getTree', {}))
  const [{ context } = { context: '' }] = contexts
  const ask = async (expression: string): Promise<unknown> => {
    const { result, exceptionDetails } = answer.parse(
      await send('script.evaluate', {
        expression: `(async () => JSON.stringify(await (${expression})) ?? 'null')()`,
        target: { context },
        awaitPromise: true,
      }),
    )
    if (exceptionDetails !== undefined) throw new Error(`${exceptionDetails.text}: ${expression}`)
    return JSON.parse(String(result?.value))
  }
  return {
    ask,
    goto: async (to) => {
      await send('browsingContext.navigate', { context, url: to, wait: 'complete' })
    },
    type: async (text) => {
      const actions = Array.from(text, (value) => [
        { type: 'keyDown', value },
        { type: 'keyUp', value },
      ]).flat()
      const keys = { type: 'key', id: 'keyboard', actions }
      await send('input.performActions', { context, actions: [keys] })
    },
    faults: async () => [...complaints, ...z.array(z.string()).parse(await ask('stopped'))],
    close: async () => {
      await send('browser.close', {}).catch(() => undefined)
      socket.close()
      await stop()
    },
  }
}
