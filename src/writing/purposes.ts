/**
 * What each element is for, and what else can be written: the words before the examples. In: the heading
 * of an example in `example/notes/examples.mdx`. Out: its purpose, and for what is no element its title.
 */
import { words } from '../words/words.ts'

export const elementPurposes: ReadonlyMap<string, string> = new Map([
  [
    'Reading',
    words`What you measured, and with what. \`with\` takes the name of an instrument in \`site.yaml\`, or words.`,
  ],
  [
    'Rated',
    words`What a sheet, a standard or a handbook says. \`source\` takes the name of a source in \`site.yaml\`, or words; \`at\` is the page or the clause.`,
  ],
  ['Assumed', words`A guess, with its reason, and where you can with how it could be settled.`],
  ['Chosen', words`What you decided, and why.`],
  [
    'Calc',
    words`One use of a calculator. All else that it takes are the calculator's inputs: a text with a unit, a word, or a name in braces.`,
  ],
  ['Show', words`A number in another unit or with other digits, or a sum that gets a name.`],
  ['Nominal', words`The name of a size, on which nothing rests.`],
  ['Quoted', words`A figure that is only mentioned.`],
  ['Part', words`A part, once, where it is fitted. Its figures have names, too: \`pump.mass\`.`],
  [
    'Photo',
    words`A picture with its caption and with marks; each mark begins with its place, from the left and from the top.`,
  ],
  ['BeforeAfter', words`Two pictures of one place.`],
])

export const otherPurposes: ReadonlyMap<string, readonly [title: string, purpose: string]> =
  new Map([
    [
      'Names and sums',
      [
        words`Names and sums`,
        words`A name in braces is its number: in words, lists, tables and headings, and in the inputs of a \`<Calc>\`. Names and plain numbers may be added, taken away, multiplied and divided.`,
      ],
    ],
    [
      'Several numbers at once',
      [
        words`Several numbers at once`,
        words`A table inside an element makes a number of each row. Leave an empty line before and after it.`,
      ],
    ],
    [
      "A number that takes another's place",
      [
        words`A number that takes another's place`,
        words`From its date on it stands in for the other, and everything that rests on the other moves.`,
      ],
    ],
    [
      'Tasks',
      [
        words`Tasks`,
        words`Lists of tasks are gathered on a page of their own; a finished one has an \`x\`.`,
      ],
    ],
    [
      'Pictures',
      [
        words`Pictures`,
        words`The file lies beside the note. What it shows stands in the brackets, for those who cannot see it.`,
      ],
    ],
  ])
