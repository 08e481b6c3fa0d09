import { allFields as fields } from '@trochoid/compute/build/everything.ts'
import { expect, test } from 'vitest'
import { openFile } from '../../src/state/openFile.ts'

const file = (entries: unknown): File => new File([JSON.stringify({ format: 'trochoid-build', version: 1, name: 'x', note: '', entries })], 'mine.json')

test('a file that cannot be read is refused by the name its number has on the sheet', async () => {
  const read = await openFile(file({ 'fuel.primary.ratedFlow': { value: 'much' } }), fields)
  expect(read.ok ? '' : read.says).toMatch(/^mine\.json was not opened; nothing that is here was touched\. Rated flow of a primary \(fuel\.primary\.ratedFlow\): /i)
  const deep = await openFile(file({ 'fuel.primary.ratedFlow': { value: 1, from: 'hearsay' } }), fields)
  expect(deep.ok ? '' : deep.says).toMatch(/Rated flow of a primary \(entries\.fuel\.primary\.ratedFlow\.from\): /i)
})

test('a file with no fault is opened', async () => {
  expect((await openFile(file({ 'fuel.primary.ratedFlow': { value: 1e-5 } }), fields)).ok).toBe(true)
})
