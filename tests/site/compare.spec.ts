import { readFileSync } from 'node:fs'
import { expect, settle, test } from './site.ts'

test('two builds by keyboard, with a remedy, a file and an address that is kept; nothing of the reader’s own is touched', async ({ page, site }) => {
  await page.goto(`${site.url}compare/#first=demo:street&second=demo:faulty`)
  await settle(page)
  const words = page.locator('.said')
  await expect(words).toContainText('Faulty build (invented) differs from Street build (invented)')
  await expect(words).toContainText('does not hang together')
  await page.getByRole('button', { name: 'Turn them round' }).press('Enter')
  await expect(words).toContainText('It mends')
  await expect(page).toHaveURL(/first=demo:faulty&second=demo:street/)

  await page.locator('summary', { hasText: 'From a link' }).press('Enter')
  await page.getByLabel('A link to a build').fill('https://example.test/#build=!!')
  await page.getByLabel('A link to a build').press('Enter')
  await expect(page.getByText('Nothing here was changed.')).toBeVisible()
  await page.getByLabel('A link of the first that wants a remedy').selectOption({ label: 'Clutch torque: short' })
  await page.getByRole('listitem').filter({ hasText: 'Clutch rating' }).getByRole('button').press('Enter')
  await expect(words).toContainText('in one number: clutch rating')
  await expect(words).toContainText('It mends clutch torque')

  const file = { format: 'trochoid-build', version: 1, name: 'From a file', note: '', entries: { 'boost.turbineCapacity': { value: 0.3, from: 'maker' } } }
  await page.getByLabel('Open a file').setInputFiles({ name: 'b.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(file)) })
  await expect(words).toContainText('From a file differs from Faulty build (invented)')
  expect(await page.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith('trochoid.build.')))).toEqual([])

  const saved = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save as CSV' }).press('Enter')
  expect(readFileSync(await (await saved).path(), 'utf8')).toMatch(/^link,Faulty build \(invented\),From a file/)
})
