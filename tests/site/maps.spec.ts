import { mapFile } from '@trochoid/compute/boost/mapFile.ts'
import { mediumMap } from '@trochoid/compute/data/maps/medium.ts'
import { readFile } from 'node:fs/promises'
import type { Page } from '@playwright/test'
import { mapFrame } from '../../src/article/figures/plot/MapPaper.tsx'
import { drawn } from '../../src/article/figures/plot/mapLines.ts'
import { expect, test, watch } from './site.ts'

const rpm = (speed: number): number => (speed * 30) / Math.PI

/** What a page hands over when it saves the map that is shown. */
async function saved(page: Page): Promise<string> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save as CSV' }).click()])
  return readFile((await download.path())!, 'utf8')
}
const points = (csv: string): number[][] => csv.trim().split('\n').slice(4).map((row) => row.split(';').map(Number))

test('a table is read, asked for what it lacks, checked, kept and put into the build', async ({ page, site }) => {
  const faults = watch(page, site.host)
  await page.goto(`${site.url}maps/`)
  await page.getByText('Bring a map as a table').click()
  const [, , , ...rows] = mapFile(mediumMap).split('\n')
  await page.getByLabel('The table').fill(rows.join('\n'))
  await expect(page.locator('#map-table-says')).toContainText('never assumed')
  await expect(page.getByRole('button', { name: 'Keep this map' })).toBeDisabled()
  await page.getByLabel('Reference temperature of the map').fill('25 °C')
  await page.getByLabel('Reference pressure of the map').fill('1 bar')
  await page.getByRole('button', { name: 'Keep this map' }).click()
  await expect(page.getByLabel('Map', { exact: true })).toHaveValue(/^map:/)
  await page.getByRole('button', { name: 'Use in my build' }).click()
  await expect(page.getByRole('status').filter({ hasText: 'compressor map of your build' })).toBeVisible()
  await page.reload()
  await expect(page.getByLabel('Map', { exact: true })).toContainText('Map from a table')
  expect(faults).toEqual([])
})

test('a picture of our own map, traced, gives its values back within 1 %', async ({ page, site }) => {
  test.setTimeout(120_000)
  const faults = watch(page, site.host)
  await page.goto(`${site.url}maps/`)
  const figure = page.locator('figure svg').first()
  const picture = await figure.screenshot()
  const box = (await figure.boundingBox())!

  await page.getByText('Trace a map from a picture').click()
  await page.locator('input[accept="image/*"]').setInputFiles({ name: 'map.png', mimeType: 'image/png', buffer: picture })
  const pad = page.getByRole('application')
  await pad.scrollIntoViewIfNeeded()
  await page.getByLabel('Reference temperature').fill('25 °C')
  await page.getByLabel('Reference pressure').fill('100 kPa')

  const frame = mapFrame(drawn(mediumMap), 'metric')
  // Where a value stands in the drawing, as a share of its width and height.
  const place = (flow: number, ratio: number): [number, number] => [frame.x.at(flow * 1000) / 640, frame.y.at(ratio) / frame.height]
  const press = async ([x, y]: [number, number]) => {
    const on = (await pad.boundingBox())!
    await page.mouse.click(on.x + x * on.width, on.y + y * on.height)
  }
  expect(box.width / box.height).toBeCloseTo(640 / frame.height, 1)
  const target = page.getByLabel('The next point belongs to')
  for (const [axis, flow, ratio, typed] of [['flow 0', 0.1, 1, '100 g/s'], ['flow 1', 0.5, 1, '500 g/s'], ['ratio 0', 0.1, 1, '1'], ['ratio 1', 0.1, 3, '3']] as const) {
    await target.selectOption(axis)
    await page.locator('#trace-value').fill(typed)
    await pad.scrollIntoViewIfNeeded()
    await press(place(flow, ratio))
  }
  for (const line of mediumMap.lines) {
    await page.getByRole('button', { name: 'Begin a speed line' }).click()
    await page.locator('#trace-stroke').fill(`${Math.round(rpm(line.speed))} rpm`)
    await pad.scrollIntoViewIfNeeded()
    for (const [i, flow] of line.flow.entries()) await press(place(flow, line.ratio[i]!))
  }
  for (const level of [0.56, 0.6, 0.63, 0.66, 0.68, 0.7, 0.72, 0.74, 0.755]) {
    await page.getByRole('button', { name: 'Begin a line of equal efficiency' }).click()
    await page.locator('#trace-stroke').fill(`${level * 100} %`)
    await pad.scrollIntoViewIfNeeded()
    for (const spot of drawn(mediumMap, [level]).islands.flatMap(({ spots }) => spots.filter((_, i) => i % 4 === 0 || i === spots.length - 1))) await press(place(...spot))
  }
  const keep = page.getByRole('button', { name: 'Keep this map' }).last()
  await expect(keep).toBeEnabled()
  // Kept in the same breath as the last letter: nothing that was entered is lost.
  await page.evaluate(async () => {
    const name = document.querySelector<HTMLInputElement>('#trace-name')!
    name.value = 'Traced from our own picture'
    name.dispatchEvent(new Event('input', { bubbles: true }))
    await Promise.resolve()
    ;[...document.querySelectorAll('button')].findLast((button) => button.textContent === 'Keep this map')!.click()
  })
  await expect(page.getByLabel('Map', { exact: true })).toContainText('Traced from our own picture')

  const got = points(await saved(page))
  const own = mediumMap.lines.flatMap((line) => line.flow.map((flow, i) => [rpm(line.speed), flow, line.ratio[i]!, line.efficiency[i]! * 100]))
  expect(got.length).toBe(own.length)
  const most = Math.max(...own.map((p) => p[1]!))
  for (const [i, [speed, flow, ratio, efficiency]] of own.entries()) {
    expect(got[i]![0]! / speed!, 'speed').toBeCloseTo(1, 3)
    expect(Math.abs(got[i]![1]! - flow!) / most, `flow of point ${i}`).toBeLessThan(0.01)
    expect(Math.abs(got[i]![2]! / ratio! - 1), `ratio of point ${i}`).toBeLessThan(0.01)
    // Beyond the outermost traced line there is nothing to read an efficiency from.
    if (efficiency! > 56) expect(Math.abs(got[i]![3]! - efficiency!), `efficiency of point ${i}`).toBeLessThan(1)
  }
  expect(faults).toEqual([])
})

test('points are set, and taken away, by keys alone', async ({ page, site }) => {
  await page.goto(`${site.url}maps/`)
  const fold = page.locator('summary', { hasText: 'Trace a map from a picture' })
  await fold.focus()
  await page.keyboard.press('Enter')
  const picture = await page.locator('figure svg').first().screenshot()
  await page.locator('input[accept="image/*"]').setInputFiles({ name: 'map.png', mimeType: 'image/png', buffer: picture })
  await page.getByRole('button', { name: 'Begin a speed line' }).click()
  const pad = page.getByRole('application')
  await pad.focus()
  for (const key of ['ArrowLeft', 'Shift+ArrowUp', 'Enter', 'ArrowRight', 'Enter']) await page.keyboard.press(key)
  await expect(pad.locator('.line circle')).toHaveCount(2)
  await page.keyboard.press('Backspace')
  await expect(pad.locator('.line circle')).toHaveCount(1)
  await expect(page.getByRole('status').filter({ hasText: 'taken away' })).toBeVisible()
})
