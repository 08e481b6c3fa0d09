import { execFileSync } from 'node:child_process'
import { accessSync, constants, existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import { chromium } from '@playwright/test'

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome', 'chromium.exe', 'chrome.exe']
const usualPlaces = ['/Applications/Chromium.app/Contents/MacOS/Chromium', '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome']

function isProgram(file: string): boolean {
  try {
    accessSync(file, constants.X_OK)
    return true
  } catch {
    return false
  }
}

function inPath(): string | undefined {
  const dirs = (process.env.PATH ?? '').split(delimiter).filter((dir) => dir !== '')
  return names.flatMap((name) => dirs.map((dir) => join(dir, name))).find(isProgram)
}

/** The browser to drive: what CHROMIUM names, else one in the path or a usual place, else the one Playwright keeps. */
export function findChromium(): string | undefined {
  const named = process.env.CHROMIUM
  if (named) {
    if (!isProgram(named)) throw new Error(`CHROMIUM names ${named}, which is no program.`)
    return named
  }
  const kept = chromium.executablePath()
  return inPath() ?? usualPlaces.find(isProgram) ?? (existsSync(kept) ? kept : undefined)
}

/** As `findChromium`, with a message that says what to do when there is none. */
export function chromiumPath(): string {
  const found = findChromium()
  if (!found) throw new Error('No Chromium found: install one, or name it in the environment variable CHROMIUM.')
  return found
}

function attempt(command: string, ...args: string[]): boolean {
  try {
    execFileSync(command, args, { stdio: ['ignore', process.stderr, process.stderr], env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } })
    return true
  } catch {
    return false
  }
}

const isDebianRoot = () => process.getuid?.() === 0 && existsSync('/etc/debian_version')

/** Finds a browser, or brings one in: from Debian where that is possible, else the build that Playwright offers. */
export function obtainChromium(): string | undefined {
  const found = findChromium()
  if (found) return found
  console.log('No Chromium here: bringing one in ...')
  if (isDebianRoot()) {
    attempt('apt-get', 'update', '-qq')
    attempt('apt-get', 'install', '-y', '-qq', '--no-install-recommends', 'chromium')
    const installed = findChromium()
    if (installed) return installed
  }
  attempt('npx', 'playwright', 'install', 'chromium')
  return findChromium()
}
