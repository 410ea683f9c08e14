/**
 * The index for searching in the words of pages. In: pages as they are published, one after the other.
 * Out: the files of the index, without the parts of the tool that this kit does not use.
 */
import { close, createIndex } from 'pagefind'
import { language } from '#words'

export interface PageIndex {
  /** `path` from the site's root: `notes/cooling/`. */
  add(path: string, html: string): Promise<void>
  files(): Promise<readonly { readonly path: string; readonly bytes: Uint8Array }[]>
}

const used =
  /^(?:pagefind(?:-worker)?\.js|pagefind-entry\.json|pagefind\..*\.pf_meta|wasm\.[\w-]+\.pagefind|(?:index|fragment)\/.*)$/

/** Where every number and every block stands anyway, or nothing to read does. */
export const isSearched = (file: string, html: string): boolean =>
  file !== '404.html' &&
  file !== 'numbers/index.html' &&
  file !== 'writing/index.html' &&
  !/^notes\/[^/]+\/[^/]+\/index\.html$/.test(file) &&
  !/<meta http-equiv="refresh"|<meta name="robots" content="noindex"/i.test(html)

export async function startIndex(): Promise<PageIndex> {
  const { index, errors } = await createIndex({ forceLanguage: language, includeCharacters: '.' })
  if (index === undefined) throw new Error(errors.join('; '))
  return {
    async add(path, html) {
      const main = /<main\b[^]*<\/main>/.exec(html)?.[0] ?? ''
      // Addresses written out for paper are no words to search for.
      const words = main
        .replace(/<(script|svg)\b[^]*?<\/\1>/g, '')
        .replace(/<span class="on-print">[^<]*<\/span>/g, '')
      const { errors: faults } = await index.addHTMLFile({
        url: `/${path}`,
        content: `<!doctype html><html lang="${language}"><body>${words}</body></html>`,
      })
      if (faults.length > 0) throw new Error(faults.join('; '))
    },
    async files() {
      const { errors: faults, files } = await index.getFiles()
      await close()
      if (faults.length > 0) throw new Error(faults.join('; '))
      return files
        .filter(({ path }) => used.test(path))
        .map(({ path, content }) => ({ path: `search/${path}`, bytes: content }))
        .sort((a, b) => (a.path < b.path ? -1 : 1))
    },
  }
}
