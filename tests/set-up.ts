/** Before the tests: finds the browser once, and makes the folder where sites are built once for all. */
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import type { TestProject } from 'vitest/node'
import { findBrowser } from './browser/find-browser.ts'

export default async function setUp(project: TestProject): Promise<() => Promise<void>> {
  project.provide('browser', await findBrowser(resolve(import.meta.dirname, '..')))
  const builds = await mkdtemp(join(tmpdir(), 'sites-'))
  project.provide('builds', builds)
  return () => rm(builds, { recursive: true, force: true })
}

declare module 'vitest' {
  interface ProvidedContext {
    browser: string
    builds: string
  }
}
