import { cp, mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from '@playwright/test'
import { outDir } from '../../scripts/root.ts'
import { serve, type Sent } from '../../scripts/serve/serve.ts'
import { expect, ownSite, pages, settle, test, watch } from './site.ts'

test.use({ serviceWorkers: 'allow' })

const most = { requests: 600, sent: 6e6, stored: 25e6 }
const isPack = ({ path }: Sent) => path.includes('/assets/kept-')
const ready = (page: Page) => expect(page.locator('html')).toHaveAttribute('data-offline', 'ready', { timeout: 60_000 })

test('once kept, everything works with no server at all: each page, each calculator, search, saving and export', async ({ page }) => {
  test.setTimeout(60_000 + pages.length * 3000)
  const site = await ownSite()
  await page.goto(site.url)
  await ready(page)
  expect(site.sent.length).toBeLessThanOrEqual(most.requests)
  expect(site.sent.reduce((sum, { bytes }) => sum + bytes, 0)).toBeLessThanOrEqual(most.sent)
  expect((await page.evaluate(() => navigator.storage.estimate())).usage).toBeLessThanOrEqual(most.stored)
  await site.close()

  const faults = watch(page, new URL(site.url).host)
  for (const { path, kind } of pages) {
    await page.goto(site.url + path, { waitUntil: 'domcontentloaded' })
    await expect(page.locator('body'), path).toHaveAttribute('data-page', kind)
    if (kind === 'calculator') await useCalculator(page)
  }
  await page.goto(`${site.url}search/#apex seal`)
  await expect(page.locator('[data-search] a').first()).toBeVisible()

  await page.goto(`${site.url}build/`)
  await settle(page)
  const field = page.locator('main input[inputmode=decimal]').first()
  await field.fill('0.5')
  await field.blur()
  const [saved] = await Promise.all([page.waitForEvent('download', { timeout: 5000 }), page.getByRole('button', { name: 'Save as a file' }).click()])
  expect(JSON.parse(await readFile(await saved.path(), 'utf8'))).toMatchObject({ format: 'trochoid-build' })

  await page.goto(`${site.url}no/such/page/`)
  await expect(page.locator('body')).toHaveAttribute('data-page', 'not-found')
  expect(faults).toEqual([])
})

/** Moves a number of a calculator, and has its working written anew. */
async function useCalculator(page: Page): Promise<void> {
  const card = page.locator('[data-calculator]')
  await card.dispatchEvent('pointerover')
  await expect(card).toHaveAttribute('data-live', '')
  await card.locator('[data-working-fold] > summary').click()
  const field = card.locator('input[inputmode=decimal]').first()
  if (await field.count() > 0) await field.press('ArrowUp')
  await expect(card.locator('.steps > .step').first()).toBeVisible()
}

test('a download that is cut off never says it is complete, and goes on where it stopped', async ({ page }) => {
  const sent: Sent[] = []
  const closing = { at: 8, done: false }
  const first = await serve({ dir: outDir, onSent: (one) => {
    sent.push(one)
    if (sent.filter(isPack).length < closing.at || closing.done) return
    closing.done = true
    void first.close()
  } })
  await page.goto(first.url)
  await expect(page.locator('html')).toHaveAttribute('data-offline', 'failed', { timeout: 60_000 })
  const before = sent.filter(isPack).map(({ path }) => path)

  const again: Sent[] = []
  const second = await serve({ dir: outDir, port: first.port, onSent: (one) => again.push(one) })
  expect(second.port).toBe(first.port)
  await page.evaluate(() => dispatchEvent(new Event('online')))
  await ready(page)
  // The last one may have been cut in two.
  const twice = again.filter((one) => isPack(one) && before.includes(one.path))
  expect(twice.length).toBeLessThanOrEqual(1)
  await second.close()
})

test('under data saver nothing is fetched before the reader agrees; what was kept can be removed', async ({ page }) => {
  await page.addInitScript(() => Object.defineProperty(Navigator.prototype, 'connection', { get: () => ({ saveData: true }) }))
  const site = await ownSite()
  await page.goto(`${site.url}on-this-device/`)
  const notice = page.locator('#newer')
  await expect(notice).toContainText(/It takes [\d.]+ MB/, { timeout: 20_000 })
  expect(site.sent.filter(isPack)).toEqual([])
  await notice.getByRole('button', { name: 'Keep it' }).click()
  await ready(page)
  await expect(page.locator('[data-part=size]')).toContainText(/\d+ files, [\d.]+ MB/)
  await page.getByRole('button', { name: 'Remove it' }).click()
  await expect(page.locator('[data-part=state]')).toContainText('Not kept')
  expect(await page.evaluate(async () => (await caches.keys()).length + (await navigator.serviceWorker.getRegistrations()).length)).toBe(0)
  await site.close()
})

test('a site that could not be kept whole does not say it is', async ({ page }) => {
  const dir = await mkdtemp(join(tmpdir(), 'handbook-'))
  await cp(outDir, dir, { recursive: true })
  await rm(join(dir, 'kept.json'))
  const site = await ownSite(dir)
  await page.goto(site.url)
  await expect(page.locator('html')).toHaveAttribute('data-offline', 'failed', { timeout: 60_000 })
  await site.close()
  await rm(dir, { recursive: true })
})
