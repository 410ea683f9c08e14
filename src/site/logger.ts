/**
 * What Astro says while a site is made or served, in the terminal: warnings as they are, of an error its
 * first line. In: Astro's own messages. Out: lines.
 *
 * Stacks are for those who change the kit: none gets to a builder. What ends a build is thrown as well,
 * and told by the build in its own words.
 */
import { words } from '../words/words.ts'

interface Told {
  readonly label: string | null
  readonly level: string
  readonly message: string
}

interface Destination {
  readonly write: (told: Told) => void
}

/** `options.building`: errors end the command, which tells them. */
export default function destination(options: { readonly building?: boolean } = {}): Destination {
  return {
    write({ level, message }) {
      const gone = /`getStaticPaths\(\)` route pattern was matched.* path `([^`]*)`/s.exec(
        message,
      )?.[1]
      if (gone !== undefined)
        process.stdout.write(
          `${words`there is no page \`${gone}\` now: its note has another name, or cannot be read`}\n`,
        )
      else if (level === 'error') {
        const page = /^Caught error rendering (\S+): /.exec(message)?.[1]
        if (page !== undefined) process.stderr.write(`${words`\`${page}\` cannot be made`}\n`)
        else if (options.building !== true) process.stderr.write(`${firstLine(message)}\n`)
      } else process.stdout.write(`${level === 'warn' ? words`warning: ${message}` : message}\n`)
    },
  }
}

const firstLine = (message: string): string => message.trim().split('\n')[0] ?? ''
