/**
 * A strict reader of comma-separated text after RFC 4180, section 2: records end with CR LF, a cell
 * with a comma, a quote or a line break stands in quotes, a quote within is doubled. It throws on
 * everything else, and on records of different widths.
 */
export function rowsOf(text: string): readonly (readonly string[])[] {
  const rows: string[][] = []
  let row: string[] = []
  let at = 0
  while (at < text.length) {
    const quoted = /^"((?:[^"]|"")*)"/.exec(text.slice(at))
    const bare = quoted ? undefined : (/^[^",\r\n]*/.exec(text.slice(at))?.[0] ?? '')
    row.push(quoted ? (quoted[1] ?? '').replaceAll('""', '"') : (bare ?? ''))
    at += (quoted?.[0] ?? bare ?? '').length
    if (text[at] === ',') at += 1
    else if (text.startsWith('\r\n', at)) {
      at += 2
      rows.push(row)
      row = []
    } else throw new Error(`neither a comma nor CR LF at ${at}: ${text.slice(at - 20, at + 20)}`)
  }
  if (row.length > 0) throw new Error('the last record has no end')
  const wide = rows[0]?.length
  for (const [index, cells] of rows.entries())
    if (cells.length !== wide) throw new Error(`record ${index + 1} has ${cells.length} cells`)
  return rows
}

/** Records by the names of the first. */
export function recordsOf(text: string): readonly Readonly<Record<string, string>>[] {
  const [head = [], ...rows] = rowsOf(text)
  return rows.map((cells) => Object.fromEntries(head.map((name, at) => [name, cells[at] ?? ''])))
}
