import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { calc } from '@trochoid/compute/cli/commands.ts'
import { openWorkshop } from '@trochoid/compute/cli/workshop.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'

const workshop = await openWorkshop()
const none = (async function* () { /* nothing is read */ })()
const run = async (...args: string[]) => {
  const told: unknown[] = []
  const status = await calc(workshop, ['compare', ...args], none, (answer) => told.push(JSON.parse(JSON.stringify(answer))))
  return { status, out: told[0] as { says: string[]; differs: { path: string }[]; moved: { id: string; turn: string }[]; error: { field: string } } }
}

test('compare takes a name and a file, and tells what differs, what moved and what it means', async () => {
  const file = join(mkdtempSync(join(tmpdir(), 'compare-')), 'b.json')
  writeFileSync(file, JSON.stringify({ ...builds.street, name: 'B', entries: { ...builds.street.entries, 'driveline.clutch.rating': { value: 380, from: 'maker' } } }))
  const { status, out } = await run('street', file)
  expect(status).toBe(0)
  expect(out.differs.map((d) => d.path)).toEqual(['driveline.clutch.rating'])
  expect(out.moved.find((m) => m.id === 'clutch-torque')!.turn).toBe('worse')
  expect(out.says.join(' ')).toMatch(/clutch/)
})
test('compare refuses one build, three, and one that cannot be read', async () => {
  for (const args of [['street'], ['street', 'track', 'faulty'], ['street', 'no-such.json']]) {
    const { status, out } = await run(...args)
    expect([status, out.error.field], args.join(' ')).toEqual([2, 'file'])
  }
})
