/**
 * Sorts and filters the table of all numbers. The table is whole without it; this only orders and
 * hides rows. `?how=assumed` in the address sets the filter.
 */
import { words } from '../words/words.ts'
import { language } from '#words'
const form = document.querySelector<HTMLFormElement>('form.filters')
const table = document.querySelector<HTMLTableElement>('#All-numbers')
const body = table?.tBodies[0]

if (form && table && body) {
  const rows = [...body.rows]
  const input = form.querySelector('input')
  const how = form.querySelector('select')
  const status = form.querySelector('[role=status]')

  const filter = () => {
    const wanted = (input?.value ?? '').toLowerCase().split(/\s+/)
    let shown = 0
    for (const row of rows) {
      const text = row.textContent.toLowerCase()
      const fits =
        (!how?.value || row.dataset.how === how.value) &&
        wanted.every((word) => text.includes(word))
      row.hidden = !fits
      if (fits) shown += 1
    }
    if (status) status.textContent = words`${shown} of ${rows.length} shown`
  }

  const key = (row: HTMLTableRowElement, column: number) => {
    const cell = row.cells[column]
    return cell?.dataset.sort ?? cell?.textContent.trim() ?? ''
  }
  const sort = (column: number, head: HTMLTableCellElement) => {
    const down = head.ariaSort === 'ascending'
    for (const other of table.querySelectorAll('th[aria-sort]')) other.removeAttribute('aria-sort')
    head.setAttribute('aria-sort', down ? 'descending' : 'ascending')
    const sign = down ? -1 : 1
    rows.sort((a, b) => {
      const [left, right] = [key(a, column), key(b, column)]
      return sign * (Number(left) - Number(right) || left.localeCompare(right, language))
    })
    body.append(...rows)
  }

  for (const [column, head] of [...(table.tHead?.rows[0]?.cells ?? [])].entries()) {
    const button = document.createElement('button')
    button.type = 'button'
    button.append(...head.childNodes)
    button.addEventListener('click', () => sort(column, head))
    head.append(button)
  }

  const asked = new URLSearchParams(location.search).get('how')
  if (how && asked) how.value = asked
  form.hidden = false
  form.addEventListener('input', filter)
  form.addEventListener('submit', (event) => {
    event.preventDefault()
    filter()
  })
  filter()
}
