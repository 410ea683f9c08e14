/**
 * Plain text in lines of at most 72 characters where words allow it. A line breaks at a plain space
 * only: a number and its unit have a no-break space between them and stay together, and what has no
 * space (an address) has a line of its own, however long.
 */
const longest = 72

/** The first line begins with `first`, those after it with as many spaces. */
export function wrap(text: string, first = ''): string {
  const indent = ' '.repeat(first.length)
  const lines: string[] = []
  let line = first
  let empty = true
  for (const word of text.split(' ').filter((part) => part !== '')) {
    if (!empty && line.length + 1 + word.length > longest) {
      lines.push(line)
      line = indent
      empty = true
    }
    line += empty ? word : ` ${word}`
    empty = false
  }
  return [...lines, line].join('\n')
}
