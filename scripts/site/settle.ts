import { type Page } from '@playwright/test'

/** What has yet to come alive: it does so when the reader reaches for it, and is then marked as live. */
const asleep = 'astro-island[ssr], [data-wakes]:not([data-live])'

/** Scrolls through a page and reaches for all that comes alive, waits until it has, and goes back to the top. */
export async function settle(page: Page): Promise<void> {
  await page.evaluate(async (selector) => {
    for (let y = 0; y < document.documentElement.scrollHeight; y += innerHeight / 2) {
      scrollTo(0, y)
      await new Promise((resolve) => setTimeout(resolve, 30))
    }
    scrollTo(0, 0)
    for (const one of document.querySelectorAll(selector)) one.dispatchEvent(new Event('pointerover', { bubbles: true }))
  }, asleep)
  await page.waitForLoadState('networkidle')
  await page.waitForFunction((selector) => document.querySelector(selector) === null, asleep)
}
