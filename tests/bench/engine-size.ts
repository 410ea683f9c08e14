/**
 * What the engine of a page weighs, bundled as the site's scripts are and without calculators: what works
 * numbers alone (ledger and units), and what works them and writes them into the page. Gzip, in bytes; what is
 * fetched only where it is needed (drawings, panels of hazards, the table of stories) does not count.
 */
import { resolve } from 'node:path'
import { gzipSync } from 'node:zlib'
import { build } from 'vite'
import { catalogueModule, plainWords } from '../../src/site/words.ts'

const root = resolve(import.meta.dirname, '../..')
const entry = 'worked-notes-engine'

const calculator =
  /[\\/]calculators[\\/](?:index\.ts|(?:auxiliary|cooling|project|traction|vehicle|workshop)[\\/])/

async function sizeOf(code: string): Promise<number> {
  const made = await build({
    root,
    configFile: false,
    logLevel: 'error',
    plugins: [
      {
        name: entry,
        resolveId: (id) => (id === entry ? resolve(root, `src/${entry}.js`) : undefined),
        load: (id) => (id.endsWith(`${entry}.js`) ? code : undefined),
      },
      catalogueModule(),
      plainWords(),
    ],
    build: {
      write: false,
      modulePreload: false,
      rolldownOptions: {
        input: entry,
        preserveEntrySignatures: 'strict',
        external: (id) => calculator.test(id),
      },
    },
  })
  if (Array.isArray(made) || !('output' in made)) throw new Error('the bundler made no one bundle')
  return made.output
    .flatMap((one) => (one.type === 'chunk' && !one.isDynamicEntry ? [one.code] : []))
    .reduce((sum, text) => sum + gzipSync(text, { level: 9 }).length, 0)
}

export const engineSizes = async (): Promise<{ works: number; draws: number }> => ({
  works: await sizeOf(
    "export { openLedger } from './ledger/open.ts'\nexport { ledgerOf } from './ledger/roots.ts'",
  ),
  draws: await sizeOf("export { startEngine } from './live/engine.ts'"),
})
