import { expect, settle, test } from './site.ts'

test('every page opens where the browser forbids keeping', async ({ page, site }) => {
  const faults: string[] = []
  page.on('pageerror', (error) => faults.push(error.message))
  await page.addInitScript(() => Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('not here', 'SecurityError') } }))
  for (const path of ['', 'margins/', 'build/', 'sweep/', 'calculators/injector-duty/']) {
    await page.goto(site.url + path)
    await settle(page)
  }
  expect(faults).toEqual([])
})
