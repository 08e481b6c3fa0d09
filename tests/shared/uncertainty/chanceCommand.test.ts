import { expect, test } from 'vitest'
import { calc } from '@trochoid/compute/cli/commands.ts'
import { openWorkshop } from '@trochoid/compute/cli/workshop.ts'

const workshop = await openWorkshop()
const none = (async function* () { /* nothing is read */ })()
const run = async (...args: string[]) => {
  const told: unknown[] = []
  const status = await calc(workshop, ['chance', ...args], none, (answer) => told.push(JSON.parse(JSON.stringify(answer))))
  return { status, out: told[0] as { chances: { id: string; enough: { share: number; low: number; high: number } | null }[]; inputs: { id: string; half: number }[]; knock: string; error: { field: string } } }
}

test('chance tells every link, knock as not known, and the tolerances it used', { timeout: 60_000 }, async () => {
  const { status, out } = await run('faulty', '--samples', '40', '--seed', '5', '--tolerance', 'fuel.driver.rating=0.5 A')
  expect(status).toBe(0)
  expect(out.knock).toBe('not known')
  expect(out.chances[0]!.enough!.share).toBeLessThan(0.3)
  expect(out.inputs.find((i) => i.id === 'fuel.driver.rating')!.half).toBe(0.5)
  expect((await run('faulty', '--samples', '40', '--seed', '5', '--tolerance', 'fuel.driver.rating=0.5 A')).out).toEqual(out)
})
test('chance refuses what it cannot take and says which', async () => {
  for (const [args, field] of [
    [[], 'file'], [['street', '--samples', '0'], 'samples'], [['street', '--samples', '1e9'], 'samples'], [['street', '--seed', 'x'], 'seed'], [['street', '--tolerance', 'nope=1'], 'nope'],
    [['street', '--tolerance', 'engine.quality'], 'tolerance'], [['street', '--tolerance', 'engine.quality=-2 %'], 'engine.quality'], [['street', '--nope', '1'], '--nope'],
  ] as const) {
    const { status, out } = await run(...args)
    expect([status, out.error?.field], args.join(' ')).toEqual([2, field])
  }
})
