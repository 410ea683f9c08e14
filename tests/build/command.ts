/** Runs a command of the kit as a builder does: its exit code and what it prints. */
import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { root } from './site.ts'

export function command(
  name: string,
  words: readonly string[],
  env: Readonly<Record<string, string>> = {},
): Promise<{ code: number | null; out: string; err: string }> {
  return new Promise((done) => {
    const child = spawn(process.execPath, [join(root, `src/cli/${name}.ts`), ...words], {
      cwd: root,
      env: { PATH: process.env.PATH, HOME: process.env.HOME, ...env },
    })
    let [out, err] = ['', '']
    child.stdout.on('data', (text: Buffer) => (out += text.toString()))
    child.stderr.on('data', (text: Buffer) => (err += text.toString()))
    child.on('close', (code) => done({ code, out, err }))
  })
}
