/**
 * While writing: pages of older names of notes (`was`), as they will be published. In: the pages as they
 * are now, by path within the site. Out: a part of the development server that answers with them.
 */
import type { Plugin } from 'vite'
import { decodedAddress } from '../ledger/decoded.ts'

/** `base`: below which path the server's pages are. */
export function serveRenamed(pages: () => ReadonlyMap<string, string>, base: string): Plugin {
  const root = base.replace(/\/*$/, '/')
  return {
    name: 'worked-notes:renamed',
    apply: 'serve',
    configureServer(server) {
      server.middlewares.use((request, response, next) => {
        const path = decodedAddress(/^[^?#]*/.exec(request.url ?? '')?.[0] ?? '')
        const below = path.startsWith(root) ? path.slice(root.length) : path.replace(/^\//, '')
        const html = pages().get(`${below.replace(/\/?$/, '/')}index.html`)
        if (html === undefined) {
          next()
          return
        }
        response.setHeader('Content-Type', 'text/html; charset=utf-8')
        response.end(html)
      })
    },
  }
}
