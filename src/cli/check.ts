/** `npm run check`: every problem of every note; exit code 1 when one of them is an error. */
import { relative } from 'node:path'
import { count } from '../card/index.ts'
import { hasErrors, loadLedger, type Ledger } from '../ledger/load.ts'
import { byPlace } from '../ledger/order.ts'
import { readOptions } from './options.ts'
import { printProblem, summary } from './print.ts'
import { run } from './run.ts'

/** As it is published, and what is wrong with the drafts besides. */
async function checked(content: string): Promise<Ledger> {
  const ledger = await loadLedger(content)
  if (ledger.drafts.length === 0) return ledger
  const { problems } = await loadLedger(content, undefined, { drafts: true })
  const files = new Set(ledger.drafts.map(({ file }) => file))
  const more = problems.filter(({ file }) => files.has(file))
  return { ...ledger, problems: [...ledger.problems, ...more].sort(byPlace) }
}

await run(async (root, words) => {
  const { content, format } = readOptions(words, root)
  const { problems, published, drafts } = await checked(content)
  if (format === 'json') console.log(JSON.stringify({ problems }, null, 2))
  else {
    const folder = relative(process.cwd(), content).replaceAll('\\', '/')
    const leftOut = drafts.length === 0 ? '' : ` (${count(drafts.length, 'draft')} left out)`
    for (const problem of problems) console.log(printProblem(problem, folder))
    console.log(
      `${published.notes.length} notes, ${published.numbers.length} numbers, ${published.blocks.length} blocks${leftOut}: ${summary(problems)}`,
    )
  }
  return hasErrors(problems) ? 1 : 0
})
