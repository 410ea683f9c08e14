/** A reader's form: filled with the builder's figures, faults in the words of the build. */
import { describe, expect, it } from 'vitest'
import { formHtml } from '../../src/live/form.ts'
import { judge } from '../../src/live/judge.ts'
import { textsOf, type Texts } from '../../src/live/texts.ts'
import { blockNamed, calculator, context } from '../card/fixture.ts'

const ctx = context()
const block = blockNamed('pump')
const texts = textsOf(block, calculator.inputs, (id) => ctx.number(id))
const changed = (more: Texts): Texts => ({ ...texts, ...more })

describe('textsOf', () => {
  it('gives what the builder typed, and what was worked as it is shown', () => {
    expect(texts).toEqual({
      heat: '1100 W',
      inlet: '65.0 °C',
      bore: '19 mm',
      coolant: 'glycol-50',
      hoses: [{ name: 'supply <front>', length: '2.4 m' }],
    })
  })
  it('gives texts that the reader of inputs takes', () => {
    expect(
      [...judge(calculator.inputs, texts).values()].filter(({ level }) => level === 'error'),
    ).toEqual([])
  })
})

describe('formHtml', () => {
  it('labels and describes every control', () => {
    const html = formHtml(calculator, texts, 'Try-pump')
    for (const [, id = ''] of html.matchAll(/<(?:input|select)[^>]* id="([^"]+)"/g)) {
      expect(html).toContain(`<label for="${id}">`)
      expect(html).toContain(`id="${id}-help"`)
      expect(html).toContain(`id="${id}-said"`)
    }
    expect(html).toContain('value="supply &lt;front&gt;"')
    expect(html).toContain('<option value="glycol-50" selected>half water, half glycol</option>')
  })
})

describe('judge', () => {
  const said = (more: Texts) => Object.fromEntries(judge(calculator.inputs, changed(more)))
  it('refuses what is out of range, in another dimension, without unit, or empty', () => {
    expect(said({ bore: '900 mm' }).bore?.level).toBe('error')
    expect(said({ bore: '900 mm' }).bore?.text).toContain('4\u00a0mm to 60\u00a0mm')
    expect(said({ bore: '3 kg' }).bore?.level).toBe('error')
    expect(said({ bore: '19' }).bore?.level).toBe('error')
    expect(said({ bore: ' ' }).bore?.level).toBe('error')
    expect(said({ bore: '1/2 in' }).bore).toBeUndefined()
  })
  it('remarks on what is unusual, and takes it', () => {
    expect(said({ bore: '50 mm' }).bore?.level).toBe('remark')
  })
  it('lets an input with a default be empty', () => {
    expect(said({ coolant: '' }).coolant).toBeUndefined()
  })
  it('names the cell of a list', () => {
    expect(
      Object.keys(
        said({
          hoses: [
            { name: 'a', length: '2 m' },
            { name: 'b', length: '2 kg' },
          ],
        }),
      ),
    ).toEqual(['hoses.1.length'])
  })
})
