import { chromium, type CDPSession, type Page } from '@playwright/test'
import { mkdtempSync, mkdirSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { outDir } from '../root.ts'
import { launchOptions } from '../browser/launch.ts'
import { serve } from '../serve/serve.ts'
import { builtPages } from '../site/pages.ts'
import { settle } from '../site/settle.ts'

/** Slow 4G as page tests commonly mean it: 150 ms there and back, 1.6 Mbit/s. */
const slow = { offline: false, latency: 150, downloadThroughput: 1.6e6 / 8, uploadThroughput: 750e3 / 8 }
const throttle = 4
const median = (list: readonly number[]): number => [...list].sort((a, b) => a - b)[list.length >> 1]!
const quarter = (list: readonly number[]): number => [...list].sort((a, b) => a - b)[Math.floor(list.length * 0.75)]!

const pages = builtPages()
const first = (kind: string) => pages.find((p) => p.kind === kind)!.path
const chosen = ['', first('article'), first('calculator'), 'margins/']

// A page as one would write it by hand: the same words, no style, no script.
const bareDir = mkdtempSync(join(tmpdir(), 'bare-'))
writeFileSync(join(bareDir, 'index.html'), '<!doctype html><title>.</title>')
writeFileSync(join(bareDir, '404.html'), '<!doctype html><title>.</title>')
const browser = await chromium.launch(launchOptions())
const site = await serve({ dir: outDir })
const bare = await serve({ dir: bareDir })
{
  const page = await browser.newPage({ javaScriptEnabled: false })
  for (const path of chosen) {
    await page.goto(site.url + path)
    const words = (await page.locator('body').innerText()).split('\n').map((line) => `<p>${line.replace(/&/g, '&amp;').replace(/</g, '&lt;')}</p>`).join('\n')
    mkdirSync(join(bareDir, path), { recursive: true })
    writeFileSync(join(bareDir, path, 'index.html'), `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>Bare</title>\n${words}</html>`)
  }
  await page.close()
}

async function fresh(act: (page: Page, cdp: CDPSession) => Promise<void>): Promise<void> {
  const context = await browser.newContext({ serviceWorkers: 'block', viewport: { width: 390, height: 844 } })
  const page = await context.newPage()
  await act(page, await context.newCDPSession(page))
  await context.close()
}

async function firstPaint(url: string): Promise<number> {
  let at = 0
  await fresh(async (page, cdp) => {
    await cdp.send('Network.enable')
    await cdp.send('Network.emulateNetworkConditions', slow)
    await page.goto(url, { waitUntil: 'load' })
    at = await page.evaluate(async () => {
      for (let i = 0; i < 50; i++) {
        const paint = performance.getEntriesByName('first-contentful-paint')[0]
        if (paint) return paint.startTime
        await new Promise((resolve) => setTimeout(resolve, 20))
      }
      return NaN
    })
  })
  return at
}

console.log('first paint on slow 4G, median of 9, ours over a bare page of the same words (limit 1.2)')
for (const path of chosen) {
  const ours: number[] = []
  const theirs: number[] = []
  for (let i = 0; i < 9; i++) { theirs.push(await firstPaint(bare.url + path)); ours.push(await firstPaint(site.url + path)) }
  console.log(`  /${path.padEnd(48)} ${(median(ours) / median(theirs)).toFixed(2)}   ${median(ours).toFixed(0)} ms to ${median(theirs).toFixed(0)} ms`)
}

console.log(`blocking time while loading at this processor's own speed and ${throttle} times slower, layout shift (limits 50 ms, none, 0)`)
for (const path of chosen) {
  const own = await loading(path, 1)
  const slowed = await loading(path, throttle)
  console.log(`  /${path.padEnd(48)} ${own.blocked.toFixed(0)} ms   ${slowed.blocked.toFixed(0)} ms   ${slowed.shift.toFixed(4)}`)
}
async function loading(path: string, rate: number): Promise<{ blocked: number; shift: number }> {
  let seen = { blocked: 0, shift: 0 }
  await fresh(async (page, cdp) => {
    await cdp.send('Emulation.setCPUThrottlingRate', { rate })
    await page.addInitScript(() => {
      const seen = { blocked: 0, shift: 0 }
      Object.assign(globalThis, { seen })
      new PerformanceObserver((list) => { for (const e of list.getEntries()) seen.blocked += Math.max(0, e.duration - 50) }).observe({ type: 'longtask', buffered: true })
      new PerformanceObserver((list) => { for (const e of list.getEntries() as (PerformanceEntry & { value: number; hadRecentInput: boolean })[]) if (!e.hadRecentInput) seen.shift += e.value }).observe({ type: 'layout-shift', buffered: true })
    })
    await page.goto(site.url + path, { waitUntil: 'networkidle' })
    await page.waitForTimeout(1500)
    seen = await page.evaluate(() => (globalThis as unknown as { seen: { blocked: number; shift: number } }).seen)
  })
  return seen
}

/** From a key to the frame in which the answer it changes has been painted, and the longest task meanwhile. What a fold shows of itself is no answer. */
async function keys(path: string, field: string, answer: string, fold?: string): Promise<void> {
  await fresh(async (page, cdp) => {
    await page.goto(site.url + path)
    await settle(page)
    if (fold) await page.locator(fold).first().click()
    const input = page.locator(field).first()
    await input.scrollIntoViewIfNeeded()
    await input.click()
    await page.waitForTimeout(500)
    await cdp.send('Emulation.setCPUThrottlingRate', { rate: throttle })
    await page.evaluate((selector) => {
      const kept = { times: [] as number[], longest: 0 }
      Object.assign(globalThis, { kept })
      new PerformanceObserver((list) => { for (const e of list.getEntries()) kept.longest = Math.max(kept.longest, e.duration) }).observe({ type: 'longtask' })
      let start = 0
      addEventListener('keydown', () => { start = performance.now() }, true)
      const watch = new MutationObserver((changes) => {
        const folded = (node: Node): boolean => (node instanceof Element ? node : node.parentElement)?.closest('details, .field') != null
        if (start === 0 || changes.every(({ target }) => folded(target))) return
        const from = start
        start = 0
        requestAnimationFrame(() => { const channel = new MessageChannel(); channel.port1.onmessage = () => kept.times.push(performance.now() - from); channel.port2.postMessage(0) })
      })
      watch.observe(document.querySelector(selector)!, { subtree: true, childList: true, characterData: true, attributes: true })
    }, answer)
    for (let i = 0; i < 24; i++) {
      await input.press(i % 2 === 0 ? 'End' : 'Home')
      await input.press(i % 4 < 2 ? '1' : 'Delete')
      await page.waitForTimeout(500)
    }
    const kept = await page.evaluate(() => (globalThis as unknown as { kept: { times: number[]; longest: number } }).kept)
    console.log(`  /${path.padEnd(48)} p75 ${kept.times.length > 0 ? quarter(kept.times).toFixed(0) : 'no change seen'} ms of ${kept.times.length}; longest task ${kept.longest.toFixed(0)} ms`)
  })
}
console.log(`key to painted answer, processor ${throttle} times slower (limit 100 ms, no task over 50 ms); a small calculator beside it`)
await keys('calculators/gear-speed/', 'main input[inputmode]', '[data-calculator]')
await keys('margins/', '.margin details[open] input[inputmode]', '[data-part=margins]', '.margin[data-state=tight] summary')

await browser.close()
await site.close()
await bare.close()
