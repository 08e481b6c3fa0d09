import { brotliCompressSync } from 'node:zlib'
import { type Sent } from '../../scripts/serve/serve.ts'
import { budgets, owing } from './budgets.ts'
import { useEveryControl } from './controls.ts'
import { expect, ownSite, pages, settle, test } from './site.ts'

const most = 10
const kilobytes = (sent: readonly Sent[]) => sent.reduce((total, { bytes }) => total + bytes, 0) / 1000
const listed = (sent: readonly Sent[]) => sent.map(({ path, bytes }) => `${bytes} ${path}`).join('\n')

for (const { name, of, cold, allIn, alike } of budgets) {
  const all = pages.filter(of)
  const bySize = all.map((page) => ({ page, size: brotliCompressSync(page.html).length })).sort((a, b) => b.size - a.size).map(({ page }) => page)
  // Pages of one form differ in their text alone: the largest tell whether any comes near the limit.
  const chosen = alike ? bySize.slice(0, most) : all
  // Using every control of a page takes long: the largest, and those that owe something.
  const used = new Set([...bySize.slice(0, most), ...all.filter(({ path }) => path in owing)].map(({ path }) => path))
  test.describe(name, () => {
    if (chosen.length === 0) test.skip('has no page yet', () => undefined)

    for (const { path } of chosen) {
      test.describe('with everything that runs by itself', () => {
        test.use({ serviceWorkers: 'allow' })
        test(`/${path} sends at most ${cold} kB by a second after loading`, async ({ page }) => {
          const site = await ownSite()
          await page.goto(site.url + path, { waitUntil: 'load' })
          await page.waitForTimeout(1000)
          const sent = [...site.sent]
          await site.close()
          expect(kilobytes(sent), listed(sent)).toBeLessThanOrEqual(cold)
        })
      })

      if (allIn === undefined || !used.has(path)) continue
      const limit = owing[path] ?? allIn
      test(`/${path} sends at most ${limit} kB when all of it is used`, async ({ page }) => {
        test.setTimeout(240_000)
        const site = await ownSite()
        await page.goto(site.url + path)
        await settle(page)
        await useEveryControl(page)
        await page.waitForTimeout(500)
        const sent = [...site.sent]
        await site.close()
        expect(kilobytes(sent), listed(sent)).toBeLessThanOrEqual(limit)
      })
    }
  })
}
