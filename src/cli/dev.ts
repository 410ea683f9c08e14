/** `npm run dev`: writing mode. The page reloads as you type; problems show in the page and here. */
import { dev } from 'astro'
import { siteConfig } from '../site/config.ts'
import { readOptions } from './options.ts'
import { run } from './run.ts'
import { words } from '../words/words.ts'

await run(async (root, args) => {
  const { content, port } = readOptions(args, root)
  const config = await siteConfig({
    content,
    drafts: true,
    writing: true,
    say: (line) => console.log(line),
  })
  const server = await dev({
    ...config,
    root,
    configFile: false,
    logLevel: 'warn',
    server: { port, host: 'localhost' },
  })
  console.log(
    words`writing mode at ${`http://localhost:${server.address.port}${config.base ?? '/'}`} (stop with Ctrl+C)`,
  )
  return 0
})
