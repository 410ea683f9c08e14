/** Before the tests: finds the browser once, and hands its path to every test file. */
import { resolve } from 'node:path'
import type { TestProject } from 'vitest/node'
import { findBrowser } from './find-browser.ts'

export default async function setUp(project: TestProject): Promise<void> {
  project.provide('browser', await findBrowser(resolve(import.meta.dirname, '../..')))
}

declare module 'vitest' {
  interface ProvidedContext {
    browser: string
  }
}
