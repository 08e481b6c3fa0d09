import { expect, test } from './site.ts'

test('the path of a first build keeps its ticks on this device, by keyboard too', async ({ page, site }) => {
  await page.goto(`${site.url}first-build/`)
  const said = page.locator('[data-progress]')
  await expect(said).toContainText('0 of 10 done. Next: Say what the car is for.')
  await page.getByLabel('Done: say what the car is for').focus()
  await page.keyboard.press('Space')
  await expect(said).toContainText('1 of 10 done. Next: Describe the engine as it is.')
  await page.reload()
  await expect(page.getByLabel('Done: say what the car is for')).toBeChecked()
  await page.evaluate(() => localStorage.setItem('trochoid.first-build', '{"version":1,"value":["<img>"]}'))
  await page.reload()
  await expect(said).toContainText('0 of 10 done')
})
