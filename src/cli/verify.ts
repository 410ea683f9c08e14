/** `npm run verify`: works a finished site again from its own numbers.json; exit code 1 when anything differs. */
import { relative } from 'node:path'
import { picturesLeft } from '../photos/left.ts'
import { isOfHost } from '../site/own-files.ts'
import { verifySite } from '../site/verify.ts'
import { readOptions } from './options.ts'
import { run } from './run.ts'
import { words } from '../words/words.ts'
import { counted } from '../words/counted.ts'

await run(async (root, args) => {
  const { out } = readOptions(args, root)
  const left = (await picturesLeft(out, new Map(), isOfHost)).map((one) => ({ ...one, line: 1 }))
  const wrong = [...(await verifySite(out)), ...left]
  for (const { file, line, text } of wrong)
    console.log(`${relative(process.cwd(), out) || '.'}/${file}:${line} ${text}`)
  console.log(
    wrong.length === 0
      ? words`verified: everything shown is what its numbers give`
      : counted(
          wrong.length,
          words`${wrong.length} difference`,
          words`${wrong.length} differences`,
        ),
  )
  return wrong.length === 0 ? 0 : 1
})
