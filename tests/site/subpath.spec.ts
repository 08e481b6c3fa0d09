import { rmSync } from 'node:fs'
import { join } from 'node:path'
import { root } from '../../scripts/root.ts'
import { run } from '../../scripts/run.ts'
import { brokenLinks } from './links.ts'
import { expect, ownSite, test, watch } from './site.ts'

// The same site, built to live at https://host/shelf/handbook/.

const base = '/shelf/handbook/'
const dir = join(root, '.cache', 'under-a-path')

// In order and in one worker: the later tests read what the first one built.
test.describe.configure({ mode: 'default' })
test.use({ serviceWorkers: 'allow' })

test('the site can be built to live under a path', async () => {
  test.setTimeout(600_000)
  rmSync(dir, { recursive: true, force: true })
  expect(await run('node', ['scripts/build.ts'], { BASE: base, OUT: dir })).toBe(0)
})

test('there, every link stays under the path and leads somewhere', () => {
  expect(brokenLinks(dir, base)).toEqual([])
})

test('there, a page opens without a fault, and again without a network', async ({ page }) => {
  const site = await ownSite(dir, base)
  const faults = watch(page, new URL(site.url).host)
  await page.goto(site.url)
  await expect(page.locator('html')).toHaveAttribute('data-offline', 'ready', { timeout: 30_000 })
  expect(faults).toEqual([])
  await site.close()
  await page.reload()
  await expect(page.locator('body')).toHaveAttribute('data-page', 'home')
})
