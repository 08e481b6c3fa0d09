import AxeBuilder from '@axe-core/playwright'
import { expect, pages, settle, test, watch } from './site.ts'

for (const { path, kind } of pages) {
  // One visit answers all of it: opening each page three times took longer than everything else together.
  test(`/${path} opens and comes alive without a fault, fits a phone, and can be read by everyone by day and by night`, async ({ page, site }) => {
    test.slow()
    const faults = watch(page, site.host)
    await page.emulateMedia({ reducedMotion: 'reduce' })
    await page.goto(site.url + path)
    await settle(page)
    expect.soft(faults).toEqual([])
    expect.soft(kind, 'every page says what kind it is').not.toBe('')

    // By night only the colours differ, and calculators share theirs.
    const night = kind === 'calculator' && path.length % 8 !== 0 ? [] : [['dark', new AxeBuilder({ page }).withRules('color-contrast')]] as const
    for (const [colorScheme, axe] of [['light', new AxeBuilder({ page })] as const, ...night]) {
      await page.emulateMedia({ colorScheme })
      const { violations } = await axe.analyze()
      const told = violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)
      expect.soft(told, colorScheme).toEqual([])
    }

    await page.setViewportSize({ width: 390, height: 844 })
    const { scrollWidth, clientWidth } = await page.evaluate(() => {
      const { scrollWidth, clientWidth } = document.documentElement
      return { scrollWidth, clientWidth }
    })
    expect.soft(scrollWidth, 'no sideways scrolling on a phone').toBeLessThanOrEqual(clientWidth)
  })
}

test('an address without a page gets our own answer', async ({ page, site }) => {
  const response = await page.goto(`${site.url}no/such/page/`)
  expect(response?.status()).toBe(404)
  await expect(page.locator('body')).toHaveAttribute('data-page', 'not-found')
})
