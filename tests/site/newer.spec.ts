import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { outDir } from '../../scripts/root.ts'
import { expect, ownSite, settle, test } from './site.ts'

test.use({ serviceWorkers: 'allow' })

/** Publishes another edition of the first page, as a new build would: other words, in another pack, which the worker lists under another revision. */
async function publish(dir: string, words: string, { whole }: { whole: boolean }): Promise<void> {
  const edited = (html: string) => html.replace(/<h1[^>]*>/, `$&${words} `)
  await writeFile(join(dir, 'index.html'), edited(await readFile(join(dir, 'index.html'), 'utf8')))
  for (const name of (await readdir(join(dir, 'assets'))).filter((file) => file.startsWith('kept-'))) {
    const pack = JSON.parse(await readFile(join(dir, 'assets', name), 'utf8')) as Record<string, { text?: string }>
    const page = pack['index.html']
    if (!page) continue
    page.text = edited(page.text!)
    const renamed = `kept-${words}.json`
    if (whole) await writeFile(join(dir, 'assets', renamed), JSON.stringify(pack))
    const worker = join(dir, 'sw.js')
    const source = await readFile(worker, 'utf8')
    const changed = source.replaceAll(`assets/${name}`, `assets/${renamed}`).replace(/(url:"index\.html",revision:")[^"]*/, `$1${words}`)
    expect(changed).not.toBe(source)
    await writeFile(worker, changed)
    return
  }
  throw new Error('No pack holds the first page.')
}

test('a newer version waits until the reader asks for it, keeps what was half typed, and where it was cut off leaves the old one whole', async ({ page }) => {
  test.setTimeout(120_000)
  const dir = await mkdtemp(join(tmpdir(), 'handbook-'))
  await cp(outDir, dir, { recursive: true })
  const site = await ownSite(dir)
  const notice = page.locator('#newer')
  const kept = page.locator('html[data-offline=ready]')
  const title = () => page.locator('h1').first()

  await page.goto(site.url)
  await kept.waitFor({ timeout: 60_000 })
  await expect(notice).toBeHidden()

  await publish(dir, 'Broken', { whole: false })
  await page.reload()
  await expect.poll(() => site.sent.some(({ path, status }) => path.includes('kept-Broken') && status === 404), { timeout: 20_000 }).toBe(true)
  await page.waitForTimeout(500)
  await expect(notice).toBeHidden()
  await page.reload()
  await expect(title()).not.toContainText('Broken')
  await kept.waitFor({ timeout: 20_000 })

  await rm(dir, { recursive: true })
  await cp(outDir, dir, { recursive: true })
  await publish(dir, 'Second', { whole: true })
  await page.goto(`${site.url}calculators/injector-duty/`)
  await settle(page)
  const field = page.locator('[data-calculator] input[inputmode=decimal]').first()
  await field.fill('12 foo')
  await expect(notice).toBeVisible({ timeout: 20_000 })
  let loads = 0
  page.on('load', () => loads++)
  await page.waitForTimeout(1500)
  expect(loads, 'nothing reloads by itself').toBe(0)

  await notice.getByRole('button', { name: 'Change to it' }).click()
  await expect.poll(() => loads, { timeout: 20_000 }).toBe(1)
  await expect(field).toHaveValue('12 foo')
  await expect(field).toHaveAttribute('aria-invalid', 'true')
  await page.goto(site.url)
  await expect(title()).toContainText('Second')
  await site.close()
  await rm(dir, { recursive: true })
})
