/** `npm start`: builds the site and serves it on this machine; `-- --port N` chooses the port. */
import { preview } from 'astro'
import { buildSite } from '../site/build.ts'
import { siteConfig } from '../site/config.ts'
import { readOptions } from './options.ts'
import { run } from './run.ts'
import { words } from '../words/words.ts'

await run(async (root, args) => {
  const { content, out, port } = readOptions(args, root)
  if (!(await buildSite({ root, content, out, say: (line) => console.log(line) }))) return 1
  const config = await siteConfig({ content, outDir: out })
  const server = await preview({
    ...config,
    root,
    configFile: false,
    logLevel: 'warn',
    server: { port, host: 'localhost' },
  })
  console.log(
    words`the site is at ${`http://localhost:${server.port}${config.base ?? '/'}`} (stop with Ctrl+C)`,
  )
  await server.closed()
  return 0
})
