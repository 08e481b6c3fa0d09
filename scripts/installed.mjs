// Runs a script of the project under the project's own Node, installing first what is not there yet:
//
//   node scripts/installed.mjs scripts/start.ts [arguments]
//
// This is the one file that must work before anything is installed, on any Node >= 20, so it is plain JavaScript
// and uses nothing but what Node brings. Everything after it may be TypeScript and take the pinned Node for granted.

import { spawn, spawnSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { delimiter, dirname, join, resolve, sep } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'

const root = dirname(dirname(fileURLToPath(import.meta.url)))
const bin = join(root, 'node_modules', '.bin')
const windows = process.platform === 'win32'
const pinnedNode = join(root, 'node_modules', 'node', 'bin', windows ? 'node.exe' : 'node')
const installedLock = join(root, 'node_modules', '.package-lock.json')

/**
 * Whether what is installed is what package-lock.json asks for. npm notes in a lock file of its own, at the end of each
 * installation, what it has put in place; packages for other systems are rightly absent from it.
 */
function isInstalled() {
  if (!existsSync(pinnedNode) || !existsSync(installedLock)) return false
  const asked = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')).packages
  const present = JSON.parse(readFileSync(installedLock, 'utf8')).packages
  return Object.entries(asked).every(([path, { version, integrity, optional }]) => {
    if (!path.startsWith('node_modules/')) return true
    const there = present[path]
    return there ? there.version === version && there.integrity === integrity : optional === true
  })
}

/**
 * The environment with our own `.bin` taken out of the path: npm must not run on the very Node it is about to replace.
 * `NODE_ENV=production` would make npm leave out the tools that build the site.
 */
function outsideEnvironment() {
  const path = (process.env.PATH ?? process.env.Path ?? '').split(delimiter)
  const outside = path.filter((entry) => !resolve(entry).startsWith(join(root, 'node_modules') + sep))
  const { Path: _path, NODE_ENV: _mode, ...rest } = process.env
  return { ...rest, PATH: outside.join(delimiter) }
}

function npm(...args) {
  const env = outsideEnvironment()
  return spawnSync('npm', args, { cwd: root, env, shell: windows, stdio: ['ignore', process.stderr, process.stderr] }).status === 0
}

function install() {
  console.error('Installing the packages named in package-lock.json ...')
  if (!npm('ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error')) {
    console.error('npm could not install the packages. Is the registry reachable?')
    process.exit(1)
  }
  // Where install scripts are switched off, the pinned Node has not been put in place yet.
  if (!existsSync(pinnedNode)) npm('rebuild', 'node', '--ignore-scripts=false', '--loglevel=error')
  if (!existsSync(pinnedNode)) {
    console.error('The packages are in place, but the pinned Node is not: allow the install script of the package "node".')
    process.exit(1)
  }
}

function runInPinnedNode(file, args) {
  const env = { ...process.env, PATH: bin + delimiter + (process.env.PATH ?? '') }
  const child = spawn(pinnedNode, [file, ...args], { stdio: 'inherit', env })
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, () => child.kill(signal))
  child.on('exit', (code, signal) => process.exit(signal ? 1 : (code ?? 1)))
}

/**
 * Ends with the npm that started us. npm runs a script through a shell, and a signal to npm ends the two of them without
 * reaching what the shell runs: the server would go on holding its port.
 */
function endWithNpm() {
  if (!process.env.npm_lifecycle_event || windows) return
  const parent = process.ppid
  setInterval(() => {
    if (process.ppid !== parent) process.kill(process.pid, 'SIGTERM')
  }, 500).unref()
}

async function runInstalled(script, args) {
  const file = resolve(root, script)
  const fresh = !isInstalled()
  if (fresh) install()
  if (fresh || resolve(process.execPath) !== pinnedNode) return runInPinnedNode(file, args)
  process.argv = [process.argv[0], file, ...args]
  await import(pathToFileURL(file).href)
}

const [script, ...args] = process.argv.slice(2)
if (script) {
  endWithNpm()
  await runInstalled(script, args)
} else {
  console.error('Usage: node scripts/installed.mjs <script> [arguments]')
  process.exitCode = 2
}
