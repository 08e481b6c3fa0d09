import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { outDir } from '../../scripts/root.ts'
import { expect, ownSite, test } from './site.ts'

test.use({ serviceWorkers: 'allow' })

/** Publishes another edition of the first page, as a new build would: other words, and another revision in the worker. */
async function publish(dir: string, words: string): Promise<void> {
  const page = join(dir, 'index.html')
  const worker = join(dir, 'sw.js')
  await writeFile(page, (await readFile(page, 'utf8')).replace(/<h1[^>]*>/, `$&${words} `))
  const source = await readFile(worker, 'utf8')
  const changed = source.replace(/(url:"index\.html",revision:")[^"]*/, `$1${words}`)
  expect(changed).not.toBe(source)
  await writeFile(worker, changed)
}

test('a newer version waits until the reader asks for it', async ({ page }) => {
  const dir = await mkdtemp(join(tmpdir(), 'handbook-'))
  await cp(outDir, dir, { recursive: true })
  const site = await ownSite(dir)
  const kept = page.locator('html[data-offline=ready]')
  const notice = page.locator('#newer')

  await page.goto(site.url)
  await kept.waitFor({ timeout: 60_000 })
  await expect(notice).toBeHidden()

  await publish(dir, 'Second')
  await page.reload()
  await expect(notice).toBeVisible({ timeout: 20_000 })
  await expect(page.locator('h1').first()).not.toContainText('Second')

  let loads = 0
  page.on('load', () => loads++)
  await page.waitForTimeout(1500)
  expect(loads, 'nothing reloads by itself').toBe(0)

  await notice.getByRole('button').click()
  await expect(page.locator('h1').first()).toContainText('Second', { timeout: 20_000 })
  expect(loads).toBe(1)
  await site.close()
  await rm(dir, { recursive: true })
})
