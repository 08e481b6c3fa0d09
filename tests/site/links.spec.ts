import { leadsOn } from '../../scripts/build/addresses.ts'
import { outDir } from '../../scripts/root.ts'
import { brokenLinks } from './links.ts'
import { expect, test } from './site.ts'

test('every link of every page leads somewhere', () => {
  expect(brokenLinks(outDir, '/')).toEqual([])
})

test('a retired address passes on the numbers that stand after its #', async ({ page, site }) => {
  await page.route(`${site.url}calculators/duty/`, (route) => route.fulfill({ contentType: 'text/html', body: leadsOn('/calculators/injector-duty/') }))
  await page.goto(`${site.url}calculators/duty/#speed=6123rpm`)
  await page.waitForURL(`${site.url}calculators/injector-duty/#speed=6123rpm`)
  await expect(page.getByLabel('Shaft speed').first()).toHaveValue(/6123/)
})
