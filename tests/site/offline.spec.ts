import { cp, mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { outDir } from '../../scripts/root.ts'
import { expect, ownSite, pages, test, watch } from './site.ts'

test.use({ serviceWorkers: 'allow' })

test('once kept, every page opens with no server at all', async ({ page }) => {
  test.setTimeout(60_000 + pages.length * 3000)
  const site = await ownSite()
  await page.goto(site.url)
  await expect(page.locator('html')).toHaveAttribute('data-offline', 'ready', { timeout: 60_000 })
  await site.close()

  const faults = watch(page, new URL(site.url).host)
  for (const { path, kind } of pages) {
    await page.goto(site.url + path)
    await expect(page.locator('body'), path).toHaveAttribute('data-page', kind)
    await page.waitForLoadState('networkidle')
  }
  expect(faults).toEqual([])
})

test('with no server, a page that was never there gets our own answer', async ({ page }) => {
  const site = await ownSite()
  await page.goto(site.url)
  await expect(page.locator('html')).toHaveAttribute('data-offline', 'ready', { timeout: 60_000 })
  await site.close()
  await page.goto(`${site.url}no/such/page/`)
  await expect(page.locator('body')).toHaveAttribute('data-page', 'not-found')
})

test('a site that could not be kept whole does not say it is', async ({ page }) => {
  const dir = await mkdtemp(join(tmpdir(), 'handbook-'))
  await cp(outDir, dir, { recursive: true })
  await rm(join(dir, '404.html'))
  const site = await ownSite(dir)
  await page.goto(site.url)
  await expect(page.locator('html')).toHaveAttribute('data-offline', 'failed', { timeout: 60_000 })
  await site.close()
  await rm(dir, { recursive: true })
})

test('words are found without a network', async ({ page }) => {
  const site = await ownSite()
  await page.goto(site.url)
  await expect(page.locator('html')).toHaveAttribute('data-offline', 'ready', { timeout: 60_000 })
  await site.close()
  const faults = watch(page, new URL(site.url).host)
  await page.reload()
  const found = await page.evaluate(async (address) => {
    const search = await import(address)
    await search.init()
    const { results } = await search.search('two-rotor engine')
    return results.length
  }, `${site.url}pagefind/pagefind.js`)
  expect(found).toBeGreaterThan(0)
  expect(faults).toEqual([])
})
