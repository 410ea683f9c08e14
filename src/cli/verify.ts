/** `npm run verify`: works a finished site again from its own numbers.json; exit code 1 when anything differs. */
import { relative } from 'node:path'
import { picturesLeft } from '../photos/left.ts'
import { verifySite } from '../site/verify.ts'
import { readOptions } from './options.ts'
import { run } from './run.ts'

await run(async (root, words) => {
  const { out } = readOptions(words, root)
  const left = (await picturesLeft(out)).map((one) => ({ ...one, line: 1 }))
  const wrong = [...(await verifySite(out)), ...left]
  for (const { file, line, text } of wrong)
    console.log(`${relative(process.cwd(), out) || '.'}/${file}:${line} ${text}`)
  console.log(
    wrong.length === 0
      ? 'verified: everything shown is what its numbers give'
      : `${wrong.length} difference${wrong.length === 1 ? '' : 's'}`,
  )
  return wrong.length === 0 ? 0 : 1
})
