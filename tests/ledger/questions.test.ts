/** The setting `questions`: what it may be, and every way to write it wrong, whole. */
import { describe, expect, it } from 'vitest'
import { ledgerOf, line, settings } from './ledger-of.ts'
import { trivial } from './trivial.ts'

const withQuestions = (value: string) =>
  ledgerOf({ n: 'Text.' }, trivial, `${settings}questions: ${value}\n`)

const due =
  'a mail address, such as `name@example.org`, or an https address with `{title}` and `{text}` where the words go'

describe('where questions go', () => {
  it.each([
    ['name@example.org', 'name@example.org'],
    ['"o\'neil+van@mail.example.org"', "o'neil+van@mail.example.org"],
    [
      '"https://example.org/new?title={title}&body={text}"',
      'https://example.org/new?title={title}&body={text}',
    ],
    ['https://example.org/{title}#{text}', 'https://example.org/{title}#{text}'],
  ])('may be %s', async (written, read) => {
    const { problems, published } = await withQuestions(written)
    expect(problems.map(line)).toEqual([])
    expect(published.site.questions).toBe(read)
  })

  it('may be left out', async () => {
    const { published } = await ledgerOf({ n: 'Text.' })
    expect(published.site).not.toHaveProperty('questions')
  })

  it.each([
    ['""', `\`\` was read; due is ${due}`],
    ['name', `\`name\` was read; due is ${due}`],
    ['name@example', `\`name@example\` was read; due is ${due}`],
    ['a b@example.org', `\`a b@example.org\` was read; due is ${due}`],
    ['a..b@example.org', `\`a..b@example.org\` was read; due is ${due}`],
    ['a@example.org,b@example.org', `\`a@example.org,b@example.org\` was read; due is ${due}`],
    ['example.org/ask', `\`example.org/ask\` was read; due is ${due}`],
    ['mailto:name@example.org', '`mailto:name@example.org` was read; write the mail address alone'],
    [
      'http://example.org/?{title}{text}',
      '`http://example.org/?{title}{text}` was read; an address begins with `https://`',
    ],
    [
      'javascript:alert("{title}{text}")',
      '`javascript:alert("{title}{text}")` was read; an address begins with `https://`',
    ],
    [
      'https://example.org/new',
      '`https://example.org/new` was read; `{title}` and `{text}` must stand where the words go',
    ],
    [
      'https://example.org/new?body={text}',
      '`https://example.org/new?body={text}` was read; `{title}` must stand where the words go',
    ],
    [
      'https://example.org/?{title}{text}{tags}',
      '`https://example.org/?{title}{text}{tags}` was read; `{tags}` is none of `{title}` and `{text}`',
    ],
    [
      'https://{title}.example.org/{text}',
      '`https://{title}.example.org/{text}` was read; that is no web address',
    ],
    ['https://?{title}{text}', '`https://?{title}{text}` was read; that is no web address'],
    [
      'https://example.org/a b?{title}{text}',
      '`https://example.org/a b?{title}{text}` was read; that is no web address',
    ],
    ['[a@example.org]', 'a text is due here'],
    [
      `https://example.org/?{title}{text}${'x'.repeat(300)}`,
      `it has more than 300 characters; due is ${due}`,
    ],
  ])('is refused as %s', async (written, message) => {
    const { problems } = await withQuestions(written)
    expect(problems.map(line)).toEqual([
      `site.yaml:8:12 error bad-settings: \`questions\`: ${message}`,
    ])
  })
})
