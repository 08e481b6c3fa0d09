import { test as base, expect, type Page } from '@playwright/test'
import { builtPages } from '../../scripts/site/pages.ts'
import { outDir } from '../../scripts/root.ts'
import { settle } from '../../scripts/site/settle.ts'
import { serve, type Sent } from '../../scripts/serve/serve.ts'

export { expect, settle }
export const pages = builtPages()

/** A server of the built site for one test alone: to be stopped, or to count what it sends. */
export async function ownSite(dir = outDir, under = '/') {
  const sent: Sent[] = []
  const site = await serve({ dir, base: under, onSent: (one) => sent.push(one) })
  return { ...site, sent }
}

/** What a page did that no page may do. */
export function watch(page: Page, host: string): string[] {
  const faults: string[] = []
  page.on('console', (message) => {
    // Said by the test's own browser where it keeps the service worker out.
    if (message.text().includes('registration blocked by Playwright')) return
    if (message.type() === 'error' || message.type() === 'warning') faults.push(`console: ${message.text()}`)
  })
  page.on('pageerror', (error) => faults.push(`error: ${error.message}`))
  page.on('request', (request) => {
    const url = new URL(request.url())
    if (/^https?:$/.test(url.protocol) && url.host !== host) faults.push(`foreign request: ${url.href}`)
  })
  page.on('response', (response) => {
    if (response.status() >= 400) faults.push(`${response.status()}: ${response.url()}`)
  })
  return faults
}

/** Tests of the built site. All tests of one worker share a server; the service worker stays out unless a test is about it. */
export const test = base.extend<object, { site: { url: string; host: string } }>({
  site: [async ({}, use) => {
    const site = await ownSite()
    await use({ url: site.url, host: new URL(site.url).host })
    await site.close()
  }, { scope: 'worker' }],
  serviceWorkers: 'block',
})
