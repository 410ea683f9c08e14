/** `npm run check`: every problem of every note; exit code 1 when one of them is an error. */
import { relative } from 'node:path'
import { hasErrors, loadLedger } from '../ledger/load.ts'
import { readOptions } from './options.ts'
import { printProblem, summary } from './print.ts'
import { run } from './run.ts'

await run(async (root, words) => {
  const { content, format } = readOptions(words, root)
  const ledger = await loadLedger(content)
  const { problems, published } = ledger
  if (format === 'json') console.log(JSON.stringify({ problems }, null, 2))
  else {
    const folder = relative(process.cwd(), content).replaceAll('\\', '/')
    for (const problem of problems) console.log(printProblem(problem, folder))
    console.log(
      `${published.notes.length} notes, ${published.numbers.length} numbers, ${published.blocks.length} blocks: ${summary(problems)}`,
    )
  }
  return hasErrors(problems) ? 1 : 0
})
