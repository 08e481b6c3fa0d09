import { type Page } from '@playwright/test'

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
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null)
}
