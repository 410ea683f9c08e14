/**
 * The order of the test files: those known to take long first, so that every core is busy to the end; then
 * as the runner would have it. Nothing else depends on the order.
 */
import { BaseSequencer, type TestSpecification } from 'vitest/node'

const long = [
  'browser/pages',
  'browser/quality',
  'browser/links',
  'browser/',
  'publish/',
  'build/',
  'writing/',
  'ledger/matters',
  'live/',
] as const

function rank({ moduleId }: TestSpecification): number {
  const found = long.findIndex((part) => moduleId.includes(`/tests/${part}`))
  return found < 0 ? long.length : found
}

export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files)).toSorted((a, b) => rank(a) - rank(b))
  }
}
