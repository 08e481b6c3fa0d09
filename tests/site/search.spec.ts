import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from '@playwright/test'
import { brotliCompressSync } from 'node:zlib'
import { outDir } from '../../scripts/root.ts'
import { expect, test } from './site.ts'

const read = <T>(file: string): T => JSON.parse(readFileSync(join(import.meta.dirname, 'search', file), 'utf8')) as T
const { queries } = read<{ queries: { query: string; fits: string[] }[] }>('queries.json')
const { pages } = read<{ pages: Record<string, string> }>('subjects.json')

/** Types a question, and gives what is shown once the full text has answered: kind, title and address of each, in order. */
async function answers(page: Page, field: string, text: string): Promise<string[]> {
  await page.locator(field).fill('')
  await page.locator(field).fill(text)
  await page.locator('[data-search][data-answered=whole]').waitFor()
  return page.locator('[data-found] li').evaluateAll((items) => items.map((item) => `${item.querySelector('span')?.textContent ?? ''} ${item.querySelector('a')!.textContent} ${item.querySelector('a')!.getAttribute('href')}`))
}

test('what people type finds a page that fits among the first three, and mostly first', async ({ page, site }) => {
  test.setTimeout(180_000)
  await page.goto(`${site.url}search/`)
  const missed: string[] = []
  let first = 0
  for (const { query, fits } of queries) {
    const found = await answers(page, '#query', query)
    const place = found.findIndex((one) => fits.some((subject) => new RegExp(pages[subject]!, 'i').test(one)))
    if (place === 0) first++
    if (place < 0 || place > 2) missed.push(`${query}: ${found.slice(0, 4).join(' | ')}`)
  }
  console.log(`${first} of ${queries.length} first, ${queries.length - missed.length} among three${missed.map((one) => `\n  missed: ${one}`).join('')}`)
  expect(missed).toEqual([])
  expect(first).toBeGreaterThanOrEqual(64)
})

test('what is found holds for slips, both spellings, plurals and names with a hyphen; nothing found says where to look', async ({ page, site }) => {
  await page.goto(`${site.url}search/`)
  const best = async (text: string) => (await answers(page, '#query', text)).slice(0, 3).join(' | ')
  for (const [text, wanted] of [['wastgate', '#wastegate'], ['vapor lock', '#vapour-lock'], ['flywheels', 'flywheel'], ['tipin', 'tip-in'], ['intercoler', 'charge-cooler'], ['aluminum bolt warm', 'thermal-preload']] as const) {
    expect.soft(await best(text), text).toContain(wanted)
  }
  const none = await answers(page, '#query', 'qqzzxx')
  expect(none.join(' ')).toContain('symptoms/')
  await expect(page.locator('[data-search] [role=status]')).toContainText('Nothing was found')
})

test('search opens on every page by key, is used without a mouse, and opens the place that matched', async ({ page, site }) => {
  await page.goto(`${site.url}articles/the-order-of-decisions/`)
  await page.keyboard.press('/')
  const field = page.locator('#find')
  await expect(field).toBeFocused()
  await page.keyboard.type('apex seal')
  await expect(page.locator('dialog [role=status]')).toContainText(/\d+ found\. Best: /)
  await page.keyboard.press('ArrowDown')
  await expect(page.locator('dialog a').first()).toBeFocused()
  await page.keyboard.press('ArrowUp')
  await expect(field).toBeFocused()
  await page.keyboard.press('Escape')
  await expect(page.locator('dialog')).toBeHidden()
  // The field that had the focus is hidden now: the key is the page's again.
  await page.keyboard.press('/')
  await expect(page.locator('dialog')).toBeVisible()
  await field.fill('dead time')
  await page.locator('[data-answered=whole]').waitFor()
  // The best answer may be a whole page: the nearest that is a place on one is opened.
  const place = page.locator('dialog a[href*="#"]').first()
  for (let at = 0; at < 24 && !(await place.evaluate((link) => link === document.activeElement)); at++) await page.keyboard.press('ArrowDown')
  await page.keyboard.press('Enter')
  await page.waitForURL(/#/)
  await expect(page.locator(':target')).toBeVisible()
})

test('the first key is answered from a small list at once, on a slow phone too', async ({ page, site }) => {
  expect(brotliCompressSync(readFileSync(join(outDir, 'search', 'titles.json'))).length).toBeLessThanOrEqual(12_000)
  const cdp = await page.context().newCDPSession(page)
  await cdp.send('Emulation.setCPUThrottlingRate', { rate: 4 })
  await page.goto(`${site.url}margins/`)
  await page.keyboard.press('/')
  await page.waitForLoadState('networkidle')
  await page.evaluate(() => {
    const dialog = document.querySelector<HTMLElement>('dialog')!
    const seen = { typed: 0, shown: 0 }
    Object.assign(window, { seen })
    dialog.addEventListener('input', () => { seen.typed ||= performance.now() }, { capture: true })
    new MutationObserver(() => { seen.shown ||= performance.now() }).observe(dialog.querySelector('[data-found]')!, { childList: true })
  })
  await page.keyboard.press('c')
  const took = await page.waitForFunction(() => { const { typed, shown } = (window as unknown as { seen: { typed: number; shown: number } }).seen; return shown > 0 ? shown - typed : false })
  expect(await took.jsonValue()).toBeLessThan(150)
})
