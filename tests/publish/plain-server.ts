/**
 * A plain file server, as a host is that knows nothing of the kit. In: a folder, the path below which it
 * lies, and whether the host reads `_headers`. Out: its address; `stop` cuts it off.
 */
import { readFile, stat } from 'node:fs/promises'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { extname, join } from 'node:path'
import { contentTypes } from '../browser/content-types.ts'

export interface PlainServer {
  readonly address: string
  /** Another folder in its place, as after an upload. */
  serve(folder: string): void
  stop(): Promise<void>
}

export async function plainServer(
  folder: string,
  below: string,
  options: { readonly headers?: boolean } = {},
): Promise<PlainServer> {
  let root = folder
  const rules = options.headers === true ? await headerRules(folder) : []
  const server = createServer((request, response) => {
    void (async () => {
      const { pathname } = new URL(request.url ?? '/', 'http://site.example')
      const within = pathname.startsWith(below) ? decodeURI(pathname.slice(below.length)) : '?'
      const name = within === '' || within.endsWith('/') ? `${within}index.html` : within
      const own = rules
        .filter(({ path }) => pathname.startsWith(path))
        .flatMap(({ lines }) => lines)
      for (const [key = '', value = ''] of own) response.setHeader(key, value)
      const there = await stat(join(root, name)).catch(() => undefined)
      const found = there?.isFile() === true
      if (there?.isDirectory() === true) {
        response.writeHead(301, { location: `${pathname}/` }).end()
        return
      }
      response.writeHead(found ? 200 : 404, {
        'content-type': found
          ? (contentTypes[extname(name)] ?? 'application/octet-stream')
          : 'text/html',
      })
      response.end(await readFile(join(root, found ? name : '404.html')))
    })()
  })
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening))
  const { port } = server.address() as AddressInfo
  return {
    address: `http://127.0.0.1:${port}${below}`,
    serve: (other) => {
      root = other
    },
    stop: () =>
      new Promise((done) => {
        server.closeAllConnections()
        server.close(() => done())
      }),
  }
}

/** `path*`, and the lines below it that are indented. */
async function headerRules(folder: string) {
  const rules: { path: string; lines: string[][] }[] = []
  for (const line of (await readFile(join(folder, '_headers'), 'utf8')).split('\n'))
    if (line.startsWith('/')) rules.push({ path: line.replace(/\*$/, ''), lines: [] })
    else if (line.trim() !== '')
      rules.at(-1)?.lines.push(
        line
          .trim()
          .split(/:\s+(.*)/)
          .slice(0, 2),
      )
  return rules
}
