import { expect, test } from './site.ts'

test('a margin is explained alone, on the numbers of the build, and its address opens on the same', async ({ page, site, context }) => {
  await page.goto(`${site.url}explain/#flywheel-speed`)
  const link = page.getByLabel('Link of the chain')
  await expect(link).toHaveValue('flywheel-speed')
  await expect(page.locator('[data-explain] section:visible')).toHaveCount(1)
  await expect(page.getByRole('heading', { level: 2, name: 'Flywheel against its stated speed' })).toBeVisible()

  await link.selectOption('surge')
  await expect(page.getByRole('heading', { level: 2, name: 'Surge' })).toBeVisible()
  expect(new URL(page.url()).hash).toBe('#surge')
  const said = page.locator('#surge [data-said] .answer')
  const ofFirst = await said.innerText()

  await page.getByLabel('Build', { exact: true }).selectOption({ index: 1 })
  await expect(said).not.toHaveText(ofFirst)
  const ofOther = await said.innerText()
  await page.getByText('Send it as a link').click()
  await page.getByRole('button', { name: 'Make the address' }).click()
  const address = await page.getByLabel('This address opens the build').inputValue()
  expect(address).toContain('&at=surge')

  const theirs = await context.newPage()
  await theirs.goto(address)
  await expect(theirs.getByLabel('Link of the chain')).toHaveValue('surge')
  await expect(theirs.locator('#surge [data-said] .answer')).toHaveText(ofOther)
  // Another link of the same build that was sent is named by the address too.
  await theirs.getByLabel('Link of the chain').selectOption('knock')
  expect(new URL(theirs.url()).hash).toMatch(/^#build=.*&at=knock$/)
  await expect(theirs.locator('#knock')).toContainText('Nobody can say from sums.')
  await theirs.reload()
  await expect(theirs.getByLabel('Link of the chain')).toHaveValue('knock')
})

test('with script off every margin is explained, with the invented build’s numbers', async ({ browser, site }) => {
  const context = await browser.newContext({ javaScriptEnabled: false })
  const page = await context.newPage()
  await page.goto(`${site.url}explain/`)
  await expect(page.locator('[data-explain] section:visible')).toHaveCount(await page.locator('[data-explain] section').count())
  await expect(page.getByLabel('Link of the chain')).toBeHidden()
  await context.close()
})
