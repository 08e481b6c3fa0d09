import { type LaunchOptions } from '@playwright/test'
import { chromiumPath } from './find.ts'

/** The browser as all tests and pictures start it: alone, quiet, and the same on a desk, as root and in a container. */
export const launchOptions = (): LaunchOptions => ({
  executablePath: chromiumPath(),
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
})
