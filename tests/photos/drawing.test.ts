/** Drawings: what draws is kept, what runs or reaches elsewhere refuses the drawing. */
import { describe, expect, it } from 'vitest'
import { readDrawing } from '../../src/photos/drawing.ts'

const svg = (inside: string, more = ''): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" viewBox="0 0 40 30"${more}>${inside}</svg>`

function ruleOf(text: string): string {
  const read = readDrawing(text, 'a.svg')
  return 'rule' in read ? read.rule : 'fine'
}

describe('a drawing is refused', () => {
  it.each([
    ['script', '<script>alert(1)</script>', 'drawing-with-script'],
    [
      'script by another prefix',
      '<x:script xmlns:x="http://www.w3.org/2000/svg">1</x:script>',
      'drawing-with-script',
    ],
    ['a handler', '<rect onclick="alert(1)"/>', 'drawing-with-script'],
    ['a handler on itself', '', 'drawing-with-script', ' onload="alert(1)"'],
    [
      'an address that runs',
      '<a xlink:href="javascript:alert(1)"><path d=""/></a>',
      'drawing-refers-elsewhere',
    ],
    [
      'an address that runs, disguised',
      '<use href="&#106;ava&#115;cript:alert(1)"/>',
      'drawing-with-script',
    ],
    ['HTML', '<foreignObject><body/></foreignObject>', 'drawing-with-script'],
    ['what changes attributes', '<set attributeName="href" to="x"/>', 'drawing-with-script'],
    [
      'a picture from elsewhere',
      '<image href="https://example.org/a.png"/>',
      'drawing-refers-elsewhere',
    ],
    [
      'a photo inside',
      '<image href="data:image/jpeg;base64,/9j/4AAQ"/>',
      'drawing-refers-elsewhere',
    ],
    ['another drawing', '<use href="other.svg#a"/>', 'drawing-refers-elsewhere'],
    [
      'a fill from elsewhere',
      '<rect fill="url(https://example.org/a.svg#b)"/>',
      'drawing-refers-elsewhere',
    ],
    [
      'a style that fetches',
      '<style>@import "https://example.org/a.css";</style>',
      'drawing-refers-elsewhere',
    ],
    [
      'a style that fetches, disguised',
      '<style>rect { fill: \\75 rl(https://example.org/) }</style>',
      'drawing-refers-elsewhere',
    ],
    [
      'a style attribute that fetches',
      '<rect style="fill: url( \'//example.org/a\' )"/>',
      'drawing-refers-elsewhere',
    ],
    [
      'an element that parts a style',
      '<style>rect { fill: u<g/>rl(https://example.org/) }</style>',
      'drawing-broken',
    ],
    ['letters that stand for more', '<text>&lol;</text>', 'drawing-broken'],
    ['a tag that is not closed', '<g><rect/>', 'drawing-broken'],
  ])('with %s', (_, inside, due, more = '') => {
    expect(ruleOf(svg(inside, more))).toBe(due)
  })

  it.each([
    '<style>rect { fill: u\\rl(https://example.org/) }</style>',
    '<rect fill="u\\rl(https://example.org/)"/>',
    '<style>@im\\port "https://example.org/a.css";</style>',
    '<style>@font-f\\ace { font-family: a }</style>',
    '<style>rect { fill: src("https://example.org/") }</style>',
    '<style>rect { fill: u<![CDATA[rl(https://example.org/)]]> }</style>',
    '<style>rect { fill: u<!-- -->rl(https://example.org/) }</style>',
    '<rect fill="url(#a) url(https://example.org/)"/>',
  ])('with a style that fetches, disguised: %s', (inside) => {
    expect(ruleOf(svg(inside))).toBe('drawing-refers-elsewhere')
  })

  it.each([
    '<g id="/home/anna/van/loop.svg"/>',
    '<g class="file:///srv/loop"/>',
    '<g id="C:\\Users\\anna\\loop"/>',
    '<title>/Users/anna/loop.svg</title>',
    '<style>.a { font-family: "/Volumes/anna/a" }</style>',
  ])('with a folder of a machine: %s', (inside) => {
    expect(ruleOf(svg(inside))).toBe('drawing-names-a-folder')
  })

  it('that makes a few letters into gigabytes', () => {
    const lol = '<!DOCTYPE svg [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;&a;&a;">]>'
    expect(ruleOf(`${lol}${svg('<text>&b;</text>')}`)).toBe('drawing-broken')
  })

  it('that does not say how large it is', () => {
    expect(ruleOf('<svg xmlns="http://www.w3.org/2000/svg"><rect/></svg>')).toBe(
      'drawing-without-size',
    )
  })

  it('in a builder’s words', () => {
    expect(readDrawing(svg('<rect onclick="alert(1)"/>'), 'loop.svg')).toEqual({
      rule: 'drawing-with-script',
      text: '`loop.svg` holds `onclick`: a drawing on the site runs nothing',
      hint: 'save it as plain SVG, or as PNG',
    })
    expect(readDrawing(svg('<style>a{b:u\\rl(x)}</style>'), 'loop.svg')).toEqual({
      rule: 'drawing-refers-elsewhere',
      text: '`loop.svg` holds `\\` in a style or an attribute: a drawing on the site asks for no other file and holds none',
      hint: 'take it out and save as plain SVG, or save the drawing as PNG',
    })
    expect(readDrawing(svg('<g id="/home/anna/loop"/>'), 'loop.svg')).toEqual({
      rule: 'drawing-names-a-folder',
      text: '`loop.svg` names a folder of the machine it was drawn on: `/home/anna/loop`',
      hint: 'take it out and save as plain SVG, or save the drawing as PNG',
    })
    expect(readDrawing(svg('\n<g>\n<path d="M0 0">\n</g>'), 'loop.svg')).toEqual({
      rule: 'drawing-broken',
      text: '`loop.svg` is not a whole drawing: </g> closes nothing in line 4',
      hint: 'open it in the program it was drawn with and save it once more',
    })
  })
})

describe('a drawing is written anew', () => {
  it('without who drew it, where, and with which program', () => {
    const drawn = `<?xml version="1.0"?>
<!-- saved by Anna Example -->
<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">
<svg xmlns="http://www.w3.org/2000/svg" xmlns:p="http://example.org/program" viewBox="0 0 40 30" p:docname="/home/anna/loop.svg">
<metadata><creator>Anna Example</creator></metadata><desc>of Anna</desc><p:view zoom="2"><p:grid/></p:view>
<title>The loop</title><g id="a" p:label="Anna" data-file="/home/anna/loop.svg"><path d="M0 0L40 30" style='fill:none'/></g>
<style>/* Anna */<![CDATA[path > g { stroke: red }]]></style><use href="#a"/>
</svg>`
    const read = readDrawing(drawn, 'loop.svg')
    expect(read).toEqual({
      width: 40,
      height: 30,
      svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 40 30">

<title>The loop</title><g id="a"><path d="M0 0L40 30" style="fill:none"/></g>
<style> path &gt; g { stroke: red }</style><use href="#a"/>
</svg>
`,
    })
  })

  it.each([
    `<rect fill="url(#a)" stroke="url( '#b' )"/>`,
    '<style>rect { fill: url("#a") }</style>',
    '<a-b:note xmlns:a-b="http://example.org/home/anna"/>',
    '<text>/home/ is where the site lies</text>',
  ])('also with %s', (inside) => {
    expect(ruleOf(svg(inside))).toBe('fine')
  })

  it.each([
    ['viewBox="0 0 40 30"', 40, 30],
    ['width="520" height="312" viewBox="0 0 400 240"', 520, 312],
    ['width="100" viewBox="0 0 400 200"', 100, 50],
    ['width="100%" viewBox="0 0 400 200"', 400, 200],
    ['width="25.4mm" height="1in"', 96, 96],
  ])('with its size from %s', (attributes, width, height) => {
    const text = `<svg xmlns="http://www.w3.org/2000/svg" ${attributes}><rect/></svg>`
    expect(readDrawing(text, 'a.svg')).toMatchObject({ width, height })
  })
})
