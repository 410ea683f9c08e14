/** `npm run check`: every problem of every note; exit code 1 when one of them is an error. */
import { relative } from 'node:path'
import { hasErrors, loadLedger, type Ledger } from '../ledger/load.ts'
import { byPlace } from '../ledger/order.ts'
import { readOptions } from './options.ts'
import { printProblem } from './print.ts'
import { run } from './run.ts'
import { words } from '../words/words.ts'
import { counted } from '../words/counted.ts'
import { sizeWords } from '../ledger/size.ts'
import { summary } from '../ledger/severity.ts'

/** As it is published, and what is wrong with the drafts besides. */
async function checked(content: string): Promise<Ledger> {
  const ledger = await loadLedger(content)
  if (ledger.drafts.length === 0) return ledger
  const { problems } = await loadLedger(content, undefined, { drafts: true })
  const files = new Set(ledger.drafts.map(({ file }) => file))
  const more = problems.filter(({ file }) => files.has(file))
  return { ...ledger, problems: [...ledger.problems, ...more].sort(byPlace) }
}

await run(async (root, args) => {
  const { content, format } = readOptions(args, root)
  const { problems, published, drafts } = await checked(content)
  if (format === 'json') console.log(JSON.stringify({ problems }, null, 2))
  else {
    const folder = relative(process.cwd(), content).replaceAll('\\', '/')
    for (const problem of problems) console.log(printProblem(problem, folder))
    const there = sizeWords(published)
    const { length } = drafts
    const left = counted(
      length,
      words`${length} draft checked and left out`,
      words`${length} drafts checked and left out`,
    )
    console.log(`${length === 0 ? there : `${there} (${left})`}: ${summary(problems)}`)
  }
  return hasErrors(problems) ? 1 : 0
})
