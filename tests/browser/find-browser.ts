/**
 * Finds a browser for the tests, or brings one. Out: the path of a Chromium-like browser.
 *
 * Order: the one named in `BROWSER_PATH`; an installed Chromium, Chrome or Edge; on Debian as root its
 * package `chromium`; an npm package that ships one. When none can be had this throws: the tests that
 * need a browser fail, they are not skipped.
 */
import { execFileSync, spawnSync } from 'node:child_process'
import { accessSync, constants, existsSync } from 'node:fs'
import { createRequire } from 'node:module'
import { delimiter, join, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'

const commands = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'chrome',
  'microsoft-edge',
  'microsoft-edge-stable',
  'msedge',
]

const usualPlaces = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  ...[process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA].flatMap(
    (folder) =>
      folder === undefined
        ? []
        : [
            join(folder, 'Google/Chrome/Application/chrome.exe'),
            join(folder, 'Chromium/Application/chrome.exe'),
            join(folder, 'Microsoft/Edge/Application/msedge.exe'),
          ],
  ),
]

/** Ships a Chromium for Linux on x64 inside the package. */
const shipped = { name: '@sparticuz/chromium', version: '153.0.0' }

function runs(path: string): boolean {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}

export function installedBrowser(): string | undefined {
  const named = process.env.BROWSER_PATH
  if (named !== undefined && named !== '') {
    if (runs(named)) return named
    throw new Error(`BROWSER_PATH names ${named}, and nothing there can be run`)
  }
  const folders = (process.env.PATH ?? '').split(delimiter)
  return [
    ...commands.flatMap((command) => folders.map((folder) => join(folder, command))),
    ...usualPlaces,
  ].find(runs)
}

function fromDebian(): string | undefined {
  if (process.getuid?.() !== 0 || !existsSync('/etc/debian_version')) return undefined
  const quiet = {
    stdio: 'ignore',
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  } as const
  spawnSync('apt-get', ['update', '-q'], quiet)
  spawnSync('apt-get', ['install', '-y', '-q', '--no-install-recommends', 'chromium'], quiet)
  return installedBrowser()
}

async function fromNpm(root: string): Promise<string | undefined> {
  if (process.platform !== 'linux' || process.arch !== 'x64') return undefined
  const folder = resolve(root, '.worked-notes/browser')
  const installed = (): string | undefined => {
    try {
      return createRequire(join(folder, 'index.js')).resolve(shipped.name)
    } catch {
      return undefined
    }
  }
  if (installed() === undefined)
    spawnSync(
      'npm',
      [
        'install',
        '--prefix',
        folder,
        '--no-audit',
        '--no-fund',
        `${shipped.name}@${shipped.version}`,
      ],
      { stdio: 'ignore' },
    )
  const file = installed()
  if (file === undefined) return undefined
  const loaded: unknown = await import(pathToFileURL(file).href)
  if (typeof loaded !== 'object' || loaded === null || !('default' in loaded)) return undefined
  const { default: chromium } = loaded as { default: { executablePath: () => Promise<string> } }
  return chromium.executablePath()
}

export async function findBrowser(root: string): Promise<string> {
  for (const find of [installedBrowser, fromDebian, () => fromNpm(root)]) {
    const path = await find()
    if (path !== undefined && answers(path)) return path
  }
  throw new Error(
    'no browser: install Chromium, Chrome or Edge, or name one in BROWSER_PATH; the tests that need it cannot run',
  )
}

function answers(path: string): boolean {
  try {
    execFileSync(path, ['--version'], { stdio: 'ignore', timeout: 30_000 })
    return true
  } catch {
    return false
  }
}
