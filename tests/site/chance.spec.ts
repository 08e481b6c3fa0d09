import { expect, settle, test } from './site.ts'

test('chances are worked out by keyboard beside the page: progress, stop, a tolerance changed, and no script over 100 ms', async ({ page, site }) => {
  test.setTimeout(120_000)
  await page.goto(`${site.url}chance/`)
  await settle(page)
  const told = page.locator('[data-part=chances] [role=status]')
  await page.getByLabel('Samples').selectOption('10000')
  const start = page.getByRole('button', { name: 'Work out the chances' })
  await start.focus()
  await page.keyboard.press('Enter')
  await expect(page.getByRole('progressbar')).toBeVisible()
  await page.getByRole('button', { name: 'Stop' }).press('Enter')
  await expect(told).toContainText('Stopped.')

  // What the page's own scripts take: on a busy machine a frame may wait long for a core without anything of ours running.
  await page.evaluate(() => {
    const long: number[] = []
    Object.assign(window, { long })
    new PerformanceObserver((list) => { for (const frame of list.getEntries() as (PerformanceEntry & { scripts: readonly { duration: number }[] })[]) long.push(...frame.scripts.map((s) => s.duration)) }).observe({ type: 'long-animation-frame' })
  })
  await page.getByLabel('Samples').selectOption('500')
  await start.press('Enter')
  await expect(told).toContainText('500 samples in', { timeout: 60_000 })
  const rail = page.locator('tr[data-link=last-injector-pressure]')
  await expect(rail).toContainText('regulator setting')
  expect(await page.evaluate(() => (window as unknown as { long: number[] }).long.filter((ms) => ms > 100))).toEqual([])

  await page.locator('summary', { hasText: /^Fuel/ }).press('Enter')
  await page.getByLabel(/^Regulator setting/).fill('0')
  await expect(told).toContainText('has changed since')
  await start.press('Enter')
  await expect(told).not.toContainText('has changed since', { timeout: 60_000 })
  await expect(rail).not.toContainText('regulator setting')
})
