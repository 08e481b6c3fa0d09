import { expect, settle, test } from './site.ts'

declare global { interface Window { asked: number } }

test('bench mode makes type and controls large on every page, keeps the screen awake, and is switched off again', async ({ page, site }) => {
  await page.addInitScript(() => {
    window.asked = 0
    Object.defineProperty(navigator, 'wakeLock', { value: { request: () => { window.asked++; return Promise.resolve({ release: () => Promise.resolve() }) } } })
  })
  await page.setViewportSize({ width: 320, height: 700 })
  await page.goto(site.url)
  await page.getByRole('contentinfo').getByRole('link', { name: 'Bench mode' }).click()
  const button = page.getByRole('button', { name: 'Bench mode' })
  await expect(button).toHaveAttribute('aria-pressed', 'false')
  await button.press('Enter')
  await expect(button).toHaveAttribute('aria-pressed', 'true')
  await expect(page.getByText('The screen stays awake')).toBeVisible()
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')))
  await expect.poll(() => page.evaluate(() => window.asked)).toBe(2)

  for (const path of ['', 'calculators/injector-duty/', 'margins/', 'articles/one-oil-two-jobs/', 'build/']) {
    await page.goto(site.url + path)
    await settle(page)
    await expect.poll(() => page.evaluate(() => getComputedStyle(document.documentElement).fontSize), path).toBe('20px')
    const found = await page.evaluate(() => ({
      sideways: document.documentElement.scrollWidth - document.documentElement.clientWidth,
      low: [...document.querySelectorAll<HTMLElement>('main :is(button, select, input[type=text])')].filter((one) => one.checkVisibility() && one.getBoundingClientRect().height < 64).map((one) => one.outerHTML.slice(0, 80)),
    }))
    expect.soft(found, path).toEqual({ sideways: 0, low: [] })
    expect.soft(await page.evaluate(() => window.asked), path).toBe(1)
  }
  await page.goto(`${site.url}on-this-device/`)
  await button.click()
  await expect(button).toHaveAttribute('aria-pressed', 'false')
  await page.goto(`${site.url}margins/`)
  expect(await page.evaluate(() => getComputedStyle(document.documentElement).fontSize)).toBe('16px')
})

test('a browser that does not keep the screen awake is told of', async ({ page, site }) => {
  await page.addInitScript(() => { Object.defineProperty(navigator, 'wakeLock', { value: { request: () => Promise.reject(new DOMException('no', 'NotAllowedError')) } }) })
  await page.goto(`${site.url}on-this-device/`)
  await page.getByRole('button', { name: 'Bench mode' }).click()
  await expect(page.getByText('does not keep the screen awake')).toBeVisible()
})
