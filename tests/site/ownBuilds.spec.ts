import { type Page } from '@playwright/test'
import { expect, settle, test, watch } from './site.ts'

async function sheet(page: Page, url: string, hash = ''): Promise<void> {
  await page.goto(`${url}build/${hash}`)
  await settle(page)
  await page.locator('[data-sheet]').hover()
  await page.locator('[data-sheet][data-live]').waitFor()
}
const status = (page: Page, words: RegExp) => page.locator('[data-sheet] [role=status]').filter({ hasText: words })
const kept = (page: Page) => page.evaluate(() => Object.fromEntries(Object.entries(localStorage).filter(([key]) => key.startsWith('trochoid.build.'))) as Record<string, string>)
const which = (page: Page) => page.getByLabel('Build', { exact: true })

test('builds are begun, named, copied, removed and brought back by keyboard alone', async ({ page, site }) => {
  await sheet(page, site.url)
  await page.getByRole('button', { name: 'Begin a build of my own' }).press('Enter')
  await page.getByLabel('Name of the build').fill('Club car')
  await page.getByLabel('Name of the build').press('Tab')
  await page.getByRole('button', { name: 'Copy this one' }).press('Enter')
  await expect(which(page).locator('option:checked')).toHaveText('Copy of Club car')
  await page.getByRole('button', { name: 'Remove' }).press('Enter')
  await expect(status(page, /was removed.*Undo brings it back/)).toBeVisible()
  await expect(which(page).locator('option:checked')).toHaveText('Club car')
  await page.keyboard.press('Control+z')
  await expect(which(page).locator('option:checked')).toHaveText('Copy of Club car')
  await page.keyboard.press('Control+Shift+Z')
  await expect(which(page).locator('option:checked')).toHaveText('Club car')
  await page.reload()
  await settle(page)
  await expect(which(page).locator('option:checked')).toHaveText('Club car')
})

test('while a number is being typed, Ctrl+Z takes back typing; afterwards, the change', async ({ page, site }) => {
  await sheet(page, site.url)
  await page.getByRole('button', { name: 'Begin a build of my own' }).click()
  const field = page.locator('#f-engine-compressionRatio')
  const start = await field.inputValue()
  await field.fill('8.1')
  await field.press('Tab')
  await field.focus()
  await page.keyboard.press('End')
  await page.keyboard.type('55')
  await page.keyboard.press('Control+z')
  await expect(field).not.toHaveValue('8.155')
  await field.press('Tab')
  for (let i = 0; i < 4 && await field.inputValue() !== start; i++) await page.keyboard.press('Control+z')
  await expect(field).toHaveValue(start)
})

test('what two tabs change stays, and the second shows both values', async ({ context, page, site }) => {
  await sheet(page, site.url)
  await page.getByRole('button', { name: 'Begin a build of my own' }).click()
  const second = await context.newPage()
  await sheet(second, site.url)
  await page.locator('#f-engine-compressionRatio').fill('8.7')
  const told = second.locator('[data-elsewhere]')
  await expect(told).toContainText('now 8.7')
  await expect(second.locator('#f-engine-compressionRatio')).toHaveValue('8.7')
  await told.getByRole('button', { name: /as it was here/ }).press('Enter')
  await expect(told).toHaveCount(0)
  await expect(page.locator('[data-elsewhere]')).toContainText('as it was here')
  await expect(page.locator('#f-engine-compressionRatio')).not.toHaveValue('8.7')
})

test('with the storage full, editing goes on and the build can be saved as a file', async ({ page, site }) => {
  await sheet(page, site.url)
  await page.getByRole('button', { name: 'Begin a build of my own' }).click()
  await page.evaluate(() => { Storage.prototype.setItem = () => { throw new DOMException('no room', 'QuotaExceededError') } })
  await page.locator('#f-engine-compressionRatio').fill('8.7')
  await expect(status(page, /Not saved: the browser has no room left/)).toBeVisible()
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: /^Save My build as a file/ }).click()
  const file = await (await download).createReadStream()
  let text = ''
  for await (const part of file) text += String(part)
  expect(text).toContain('8.7')
})

test('a build damaged by hand is set aside and can be fetched; the others stay', async ({ page, site }) => {
  await sheet(page, site.url)
  for (let i = 0; i < 2; i++) await page.getByRole('button', { name: 'Begin a build of my own' }).click()
  await page.evaluate(() => { const key = Object.keys(localStorage).filter((k) => k.startsWith('trochoid.build.')).sort()[0]!; localStorage.setItem(key, localStorage.getItem(key)!.slice(0, -20)) })
  await sheet(page, site.url)
  await expect(status(page, /could not be read. It was set aside/)).toContainText('“My build”')
  await expect(page.getByRole('button', { name: 'Save what was set aside' })).toBeVisible()
  await expect(which(page).locator('option:checked')).toHaveText('My build (2)')
})

test('a link opens beside own work under a banner, also on reload, further on and on the way back, and is kept only by choice', async ({ page, site }) => {
  const faults = watch(page, site.host)
  await sheet(page, site.url)
  await page.getByRole('button', { name: 'Begin a build of my own' }).click()
  await page.locator('#f-engine-compressionRatio').fill('8.7')
  await page.getByText('Send it as a link').click()
  await page.getByLabel(/^A note to whoever opens it/).fill('<img src=x onerror=alert(1)> look at compression')
  await page.getByRole('button', { name: 'Make the address' }).click()
  const link = await page.getByLabel('This address opens the build').inputValue()
  expect(link.length).toBeLessThan(400)
  await page.locator('#f-engine-compressionRatio').fill('9.4')
  const before = await kept(page)

  const banner = page.locator('#notices')
  const look = async () => {
    await expect(banner).toContainText('You are looking at a build that was sent to you')
    await expect(banner).toContainText('8.7 against 9.4')
    await expect(banner.locator('[data-note]')).toHaveText('<img src=x onerror=alert(1)> look at compression')
    await expect(banner).toContainText('not the handbook’s')
  }
  await page.goto(link)
  await look()
  await expect(page.locator('#f-engine-compressionRatio')).toHaveValue('8.7')
  await page.reload()
  await look()
  await page.getByRole('link', { name: 'Its margins' }).click()
  await page.waitForURL(/margins\/#build=/)
  await look()
  await page.goBack()
  await look()
  expect(await kept(page)).toEqual(before)

  await banner.getByRole('button', { name: /^Close it/ }).press('Enter')
  await expect(banner).not.toContainText('sent to you')
  await expect(page.locator('#f-engine-compressionRatio')).toHaveValue('9.4')
  await page.goBack()
  await look()
  await banner.getByRole('button', { name: 'Keep it as a build of mine' }).press('Enter')
  await expect(page.locator('#f-engine-compressionRatio')).toHaveValue('8.7')
  expect(Object.keys(await kept(page))).toHaveLength(2)
  expect(await kept(page)).toMatchObject(before)
  expect(faults).toEqual([])
})

test('hostile addresses are refused in words on every kind of page, and nothing that is kept is touched', async ({ page, site }) => {
  const faults = watch(page, site.host)
  await sheet(page, site.url)
  await page.getByRole('button', { name: 'Begin a build of my own' }).click()
  const before = await kept(page)
  // Two hundred kilobytes of zeros, squeezed.
  const bomb = '1' + await page.evaluate(async () => {
    const small = await new Response(new Blob([new Uint8Array(200_000)]).stream().pipeThrough(new CompressionStream('deflate-raw'))).arrayBuffer()
    return btoa(String.fromCharCode(...new Uint8Array(small))).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '')
  })
  expect(bomb.length).toBeLessThan(400)
  for (const [path, code, says] of [
    ['margins/', bomb, 'unfolds into far more'], ['sweep/', '1%3Cscript%3E', 'damaged'], ['build/', '2AAAA', 'Update the handbook'], ['', `1${'A'.repeat(40_000)}`, 'characters long'],
    ['articles/one-oil-two-jobs/', '1AAAA', 'damaged'], ['calculators/injector-duty/', '', 'damaged'],
  ] as const) {
    await page.goto('about:blank')
    await page.goto(`${site.url}${path}#build=${code}`)
    await expect(page.locator('#notices')).toContainText(says)
    await expect(page.locator('#notices')).toContainText('Nothing of yours was touched')
  }
  expect(await kept(page)).toEqual(before)
  expect(faults).toEqual([])
})

test('a number put in the build from a calculator is followed by everything on the page, once wished, without loading it again', async ({ page, site }) => {
  await page.goto(`${site.url}calculators/injector-duty/`)
  await settle(page)
  const card = page.locator('[data-calculator]').first()
  const field = card.getByLabel(/^Rated flow/).first()
  await field.fill('700 cc/min')
  await expect(card).toContainText('Differs from the invented demo build')
  await card.getByRole('button', { name: 'Put in my build' }).press('Enter')
  await expect(card).not.toContainText('Differs from')
  await page.getByRole('button', { name: 'Show this page with my build' }).press('Enter')
  await expect(card).toContainText('Numbers of your build')
  await expect(card).not.toContainText('Differs from')
})
