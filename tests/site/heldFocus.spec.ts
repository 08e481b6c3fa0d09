import { expect, settle, test } from './site.ts'

test('a field keeps the focus, and its height on the screen, while typing into it moves its margin', async ({ page, site }) => {
  await page.goto(`${site.url}margins/`)
  await settle(page)
  const margin = page.locator('#m-differential-torque')
  await margin.locator('summary').click()
  const field = margin.getByLabel(/^Differential rating/)
  const place = () => margin.evaluate((item) => [...item.parentElement!.children].indexOf(item))
  const before = await place()
  await field.fill('200')
  await expect(margin).toHaveAttribute('data-state', 'short')
  expect(await place()).not.toBe(before)
  await expect(field).toBeFocused()
  await expect(field).toBeInViewport()
})
