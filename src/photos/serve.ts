/**
 * Pictures while writing: made when the page asks for them. In: the pictures of the open ledger. Out: a
 * part of the development server that answers addresses in `photos/`.
 */
import type { Plugin } from 'vite'
import { picturesFolder, readName, type PictureFacts } from './facts.ts'
import { filesOf } from './make.ts'

/** `pictures`: absolute path -> what is known of it, as it is now. */
export function servePictures(pictures: () => ReadonlyMap<string, PictureFacts>): Plugin {
  return {
    name: 'worked-notes:pictures',
    apply: 'serve',
    configureServer(server) {
      server.middlewares.use((request, response, next) => {
        const name = new RegExp(`/${picturesFolder}/([^/?#]+)(?:[?#]|$)`).exec(
          request.url ?? '',
        )?.[1]
        const asked = name === undefined ? undefined : readName(name)
        const found = [...pictures()].find(([, { key }]) => key === asked?.key)
        if (name === undefined || asked === undefined || found === undefined) {
          next()
          return
        }
        filesOf(...found).then((files) => {
          const bytes = files.get(name)
          if (bytes === undefined) {
            next()
            return
          }
          response.setHeader(
            'Content-Type',
            asked.made ? `image/${asked.made.format}` : 'image/svg+xml',
          )
          // The name changes with the picture.
          response.setHeader('Cache-Control', 'max-age=31536000, immutable')
          response.end(bytes)
        }, next)
      })
    },
  }
}
