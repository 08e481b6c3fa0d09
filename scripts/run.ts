import { spawn } from 'node:child_process'
import { delimiter, join } from 'node:path'
import { root } from './root.ts'

/** Runs a command of the project with its own `.bin` first in the path, shows what it prints, and gives its exit code. */
export function run(command: string, args: readonly string[] = [], env: Record<string, string> = {}): Promise<number> {
  const path = join(root, 'node_modules', '.bin') + delimiter + (process.env.PATH ?? '')
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd: root,
      env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', PATH: path, ...env },
      shell: process.platform === 'win32',
      stdio: 'inherit',
    })
    child.on('error', (error) => {
      console.error(`${command}: ${error.message}`)
      resolve(127)
    })
    child.on('exit', (code) => resolve(code ?? 1))
  })
}
