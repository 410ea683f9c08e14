/**
 * The site to compare with: the same notes and the same layout on Astro and MDX alone, without the kit.
 * Run as a program it builds the site in the folder given; imported, it writes that folder.
 */
import { mkdir, readFile, readdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import mdx from '@astrojs/mdx'
import { unified } from '@astrojs/markdown-remark'
import { build } from 'astro'

const styles = fileURLToPath(new URL('../../src/styles/', import.meta.url))

const layout = `---
import '../styles/index.css'
const { title } = Astro.props
---
<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <title>{title} – Notes of a benchmark</title>
    <meta name="description" content={title} />
  </head>
  <body>
    <a class="skip" href="#main">Skip to the page</a>
    <div class="page">
      <header>
        <div class="masthead">
          <a class="site" href="/">Notes of a benchmark</a>
          <nav aria-label="Site"><ul><li><a href="/">Notes</a></li></ul></nav>
        </div>
      </header>
      <main id="main"><slot /></main>
      <footer class="colophon"><p class="strip">an invented van. {title}.</p></footer>
    </div>
  </body>
</html>
`

const notePage = `---
import Page from '../../layouts/Page.astro'
const modules = import.meta.glob('../../notes/*.mdx')
export async function getStaticPaths() {
  const modules = import.meta.glob('../../notes/*.mdx')
  return Object.keys(modules).map((path) => ({ params: { slug: path.slice(path.lastIndexOf('/') + 1, -4) } }))
}
const load = modules['../../notes/' + Astro.params.slug + '.mdx']
const { Content, frontmatter } = await load()
---
<Page title={frontmatter.title}>
  <div class="note-layout">
    <article class="prose">
      <p class="over"><time datetime={frontmatter.date}>{frontmatter.date}</time></p>
      <h1>{frontmatter.title}</h1>
      <Content />
    </article>
  </div>
</Page>
`

const startPage = `---
import Page from '../layouts/Page.astro'
const notes = Object.entries(import.meta.glob('../notes/*.mdx', { eager: true }))
---
<Page title="Notes of a benchmark">
  <h1>Notes</h1>
  <ul>{notes.map(([path, { frontmatter }]) => <li><a href={'/notes/' + path.slice(path.lastIndexOf('/') + 1, -4) + '/'}>{frontmatter.title}</a></li>)}</ul>
</Page>
`

/** A Markdown picture in the widths and formats that the kit makes of a photo. */
const photoElement = `---
import { Picture } from 'astro:assets'
const { src, alt } = Astro.props
---
<Picture src={src} alt={alt} formats={['avif']} fallbackFormat="webp" widths={WIDTHS} sizes="(min-width: 720px) 680px, 100vw" />
`

const notePageWithPhotos = notePage
  .replace('\nconst modules', "\nimport Photo from '../../components/Photo.astro'\nconst modules")
  .replace('<Content />', '<Content components={{ img: Photo }} />')

/** `photoWidths`: how wide the copies of the notes' photos are. */
export async function writePlainSite(
  folder: string,
  notes: ReadonlyMap<string, string>,
  photoWidths: readonly number[] = [],
): Promise<void> {
  const files = new Map([
    ['src/layouts/Page.astro', layout],
    ['src/pages/notes/[slug].astro', photoWidths.length === 0 ? notePage : notePageWithPhotos],
    ['src/components/Photo.astro', photoElement.replace('WIDTHS', JSON.stringify(photoWidths))],
    ['src/pages/index.astro', startPage],
    ...[...notes].map(([slug, text]) => [`src/notes/${slug}.mdx`, text] as const),
  ])
  for (const name of await readdir(styles))
    files.set(`src/styles/${name}`, await readFile(join(styles, name), 'utf8'))
  for (const [name, text] of files) {
    await mkdir(join(folder, name, '..'), { recursive: true })
    await writeFile(join(folder, name), text)
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  await build({
    root: process.argv[2] ?? '.',
    configFile: false,
    logLevel: 'warn',
    mode: 'production',
    trailingSlash: 'always',
    devToolbar: { enabled: false },
    markdown: { syntaxHighlight: false, processor: unified({ smartypants: false }) },
    integrations: [mdx()],
    image: {
      service: {
        entrypoint: 'astro/assets/services/sharp',
        config: { avif: { quality: 55, effort: 0 }, webp: { quality: 78, effort: 3 } },
      },
    },
  })
}
