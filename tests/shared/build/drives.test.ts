import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { calc } from '@trochoid/compute/cli/commands.ts'
import { openWorkshop } from '@trochoid/compute/cli/workshop.ts'
import { builds } from '@trochoid/compute/data/builds/index.ts'
import { exampleLog } from '@trochoid/compute/log/example.ts'

const workshop = await openWorkshop()
async function* none(): AsyncGenerator<string> { /* no lines */ }
const run = async (...args: string[]) => {
  const lines: Record<string, unknown>[] = []
  const status = await calc(workshop, args, none(), (answer) => lines.push(JSON.parse(JSON.stringify(answer)) as Record<string, unknown>))
  return { status, out: lines[0] as Record<string, never> }
}
const file = join(mkdtempSync(join(tmpdir(), 'log-')), 'drive.csv')
writeFileSync(file, exampleLog(builds.street, { separator: ';', decimalComma: true }))

test('log lays a file over a build and says what it points at', async () => {
  const { status, out } = await run('log', file, 'street')
  expect(status).toBe(0)
  expect((out['pointsAt'] as { field: string }[]).map((p) => p.field).sort()).toEqual(['boost.coolerRatedEffectiveness', 'fuel.regulator.setting'])
  expect(out['rows']).toMatchObject({ bad: 0 })
  expect((await run('log', file, 'street', '--pull', '45,50')).out['pull']).toMatchObject({ from: 45, to: 50 })
  expect((await run('log', file, 'street', '--map', 'Car speed (km/h)=carSpeed:mph')).out['columns']).toMatchObject({ 'Car speed (km/h)': { unit: 'mph' } })
})
test('session drives a circuit, and a logged drive', async () => {
  const circuit = await run('session', 'street', '--over', 'meadow', '--minutes', '10')
  expect(circuit.status).toBe(0)
  expect(Math.abs((circuit.out['energy'] as { open: number }).open)).toBeLessThan(1e-3)
  const logged = await run('session', 'street', '--over', file, '--minutes', '5', '--start', 'cold')
  expect((logged.out['moments'] as unknown[]).length).toBeGreaterThan(20)
})
test('what cannot be used is refused with its field', async () => {
  const faults = [
    await run('log'), await run('log', '/nowhere.csv', 'street'), await run('log', file, 'street', '--map', 'Nothing=boost'), await run('log', file, 'street', '--map', 'Lap=nothing'),
    await run('log', file, 'street', '--pull', '5'), await run('session'), await run('session', 'street', '--over', '/nowhere.csv'), await run('session', 'street', '--minutes', '900'),
  ]
  for (const { status, out } of faults) { expect(status).toBe(2); expect(out['error']).toMatchObject({ field: expect.any(String) as unknown, message: expect.any(String) as unknown }) }
})
