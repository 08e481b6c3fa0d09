import { type Page } from '@playwright/test'

/** What has yet to come alive: an island before its script has run, a calculator before it is marked as live. */
const asleep = 'astro-island[ssr], [data-calculator]:not([data-live])'

/** Scrolls through a page, so that all of it that comes alive when seen has done so, and goes back to its top. */
export async function settle(page: Page): Promise<void> {
  await page.evaluate(async () => {
    for (let y = 0; y < document.documentElement.scrollHeight; y += innerHeight / 2) {
      scrollTo(0, y)
      await new Promise((resolve) => setTimeout(resolve, 30))
    }
    scrollTo(0, 0)
  })
  await page.waitForLoadState('networkidle')
  await page.waitForFunction((selector) => document.querySelector(selector) === null, asleep)
}
