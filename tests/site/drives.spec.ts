import { expect, test } from './site.ts'

test('a session is driven beside the page, and says when it is done', async ({ page, site }) => {
  await page.goto(`${site.url}session/`)
  await page.locator('#over').hover()
  await page.locator('[data-session][data-live]').waitFor()
  await page.locator('#over').selectOption('meadow')
  await page.getByRole('button', { name: 'Drive it' }).click()
  await expect(page.locator('[data-part=asked] [role=status]')).toHaveText('Done.')
  await expect(page.locator('[data-part=session]')).toContainText('Long meadow')
})

test('a log is opened, what it points at is told, and no task of the page is long', async ({ page, site }) => {
  await page.goto(`${site.url}log/`)
  await page.locator('#log').hover()
  await page.locator('[data-log][data-live]').waitFor()
  await page.evaluate(() => {
    const seen = (window as unknown as { longest: number })
    seen.longest = 0
    new PerformanceObserver((list) => { for (const one of list.getEntries()) seen.longest = Math.max(seen.longest, one.duration) }).observe({ entryTypes: ['longtask'] })
  })
  const line = (i: number): string => `${(i / 100).toFixed(2).replace('.', ',')};${1500 + (i % 1000) * 6};95,0;180,5;0,86`
  const csv = ['Time (s);Engine speed (rpm);Throttle (%);Manifold pressure (kPa);Lambda', ...Array.from({ length: 3000 }, (_, i) => line(i)), 'broken;row'].join('\n')
  await page.locator('#log').setInputFiles({ name: 'own.csv', mimeType: 'text/csv', buffer: Buffer.from(csv) })
  await expect(page.locator('[data-part=log]')).toContainText('own.csv: 3000 rows')
  await expect(page.locator('[data-part=log]')).toContainText('One row could not be read')
  await page.getByRole('button', { name: 'Open the invented log' }).click()
  await expect(page.locator('#points ~ ol li')).toHaveCount(2)
  expect(await page.evaluate(() => (window as unknown as { longest: number }).longest)).toBeLessThan(100)
  // Another build is shown: the log is laid over that one, without being asked.
  const points = page.locator('#points ~ ol').first()
  const first = await points.textContent()
  await page.locator('#which').selectOption('demo:track')
  await expect(points).not.toHaveText(first!)
})

test('the record keeps what is written and tells a figure outside what the sheet expects', async ({ page, site }) => {
  await page.goto(`${site.url}record/`)
  await page.locator('#who').hover()
  await page.locator('[data-record][data-live]').waitFor()
  await page.locator('#r-rotor-bearing-front').fill('0.09')
  await expect(page.locator('#r-rotor-bearing-front-doubt')).toContainText('Outside what is expected')
  await page.reload()
  await expect(page.locator('#r-rotor-bearing-front')).toHaveValue('0.09')
  // The checklist of the first start is of the same record.
  await page.goto(`${site.url}before-first-start/`)
  await page.locator('#who').hover()
  await page.locator('[data-first-start][data-live]').waitFor()
  await expect(page.locator('[data-part=record] [role=status]')).toContainText('One figure in the record lies outside')
  await page.getByLabel('Oil filled, filter and cooler primed').check()
  await expect(page.locator('[data-part=record] [role=status]')).toContainText('1 of 19 done')
  await page.goto(`${site.url}record/`)
  await expect(page.getByLabel('Oil filled, filter and cooler primed')).toBeChecked()
})
