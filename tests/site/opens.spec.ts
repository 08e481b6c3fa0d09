import AxeBuilder from '@axe-core/playwright'
import { expect, pages, settle, test, watch } from './site.ts'

for (const { path, kind } of pages) {
  test.describe(`/${path}`, () => {
    test('opens without a fault, and comes alive without one', async ({ page, site }) => {
      const faults = watch(page, site.host)
      await page.goto(site.url + path)
      await settle(page)
      expect(faults).toEqual([])
      expect(kind, 'every page says what kind it is').not.toBe('')
    })

    test('can be read by everyone, by day and by night', async ({ page, site }) => {
      await page.emulateMedia({ reducedMotion: 'reduce' })
      await page.goto(site.url + path)
      await settle(page)
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme })
        const { violations } = await new AxeBuilder({ page }).analyze()
        const told = violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)
        expect(told, colorScheme).toEqual([])
      }
    })

    test('fits a phone without sideways scrolling', async ({ page, site }) => {
      await page.setViewportSize({ width: 390, height: 844 })
      await page.goto(site.url + path)
      await settle(page)
      const { scrollWidth, clientWidth } = await page.evaluate(() => {
        const { scrollWidth, clientWidth } = document.documentElement
        return { scrollWidth, clientWidth }
      })
      expect(scrollWidth).toBeLessThanOrEqual(clientWidth)
    })
  })
}

test('an address without a page gets our own answer', async ({ page, site }) => {
  const response = await page.goto(`${site.url}no/such/page/`)
  expect(response?.status()).toBe(404)
  await expect(page.locator('body')).toHaveAttribute('data-page', 'not-found')
})
