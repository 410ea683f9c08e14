/**
 * `npm run build`: checks the notes, makes the site beside the old one, verifies it, and only then puts
 * it in the old one's place.
 */
import { buildSite } from '../site/build.ts'
import { readOptions } from './options.ts'
import { run } from './run.ts'

await run(async (root, args) => {
  const { content, out } = readOptions(args, root)
  return (await buildSite({ root, content, out, say: (line) => console.log(line) })) ? 0 : 1
})
