import { spawnSync } from 'node:child_process'
import { mkdtempSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { emptySheet, setEntry } from '@trochoid/compute/build/sheet.ts'
import { calc } from '@trochoid/compute/cli/commands.ts'
import { openWorkshop } from '@trochoid/compute/cli/workshop.ts'
import { buildCode } from '@trochoid/compute/link/buildLink.ts'

const workshop = await openWorkshop()
async function* linesOf(input: string): AsyncGenerator<string> { yield* input.split('\n') }
/** A command as the process would run it, its answers through JSON as they are printed. */
const run = async (args: readonly string[], input = '') => {
  const lines: Record<string, unknown>[] = []
  const status = await calc(workshop, args, linesOf(input), (answer) => lines.push(JSON.parse(JSON.stringify(answer)) as Record<string, unknown>))
  return { status, lines, out: lines[0]! }
}

describe('the headless commands', { timeout: 60_000 }, () => {
  test('list names every calculation with inputs and outputs', async () => {
    const list = (await run(['list'])).out as unknown as { id: string; inputs: { id: string; label: string; dimension: string; unit: string; default: unknown; kind: string }[]; outputs: unknown[] }[]
    expect(list.length).toBeGreaterThan(20)
    for (const c of list) {
      expect(c.inputs.length, c.id).toBeGreaterThan(0)
      expect(c.outputs.length, c.id).toBeGreaterThan(0)
      for (const i of c.inputs) expect(Object.keys(i), c.id).toEqual(expect.arrayContaining(['id', 'label', 'dimension', 'unit', 'default', 'kind']))
    }
  })
  test('describe adds formulas with source and range, cautions and article', async () => {
    const { out } = await run(['describe', 'clutch-torque'])
    expect(out).toMatchObject({ id: 'clutch-torque', cautions: expect.any(Array) as unknown, article: expect.any(String) as unknown })
    for (const f of out['formulas'] as Record<string, unknown>[]) expect(f).toMatchObject({ id: expect.any(String) as unknown, source: expect.any(Object) as unknown, range: expect.anything() as unknown })
  })
  test('run takes SI numbers and text with units', async () => {
    const a = (await run(['run', 'clutch-torque', '{"clamp": 9000}'])).out['outputs'] as Record<string, number>
    const b = (await run(['run', 'clutch-torque', '{"clamp": "9 kN"}'])).out['outputs'] as Record<string, number>
    expect(b['bedded']).toBeCloseTo(a['bedded']!, 9)
    const c = (await run(['run', 'clutch-torque', '{"clamp": "2 * 4500 N"}'])).out['outputs'] as Record<string, number>
    expect(c['bedded']).toBeCloseTo(a['bedded']!, 9)
  })
  test('run - answers each line, and goes on after a bad one', async () => {
    const { lines, status } = await run(['run', '-'], '{"id":"clutch-torque","inputs":{}}\n{"id":"nothing"}\nnot json\n{"id":"clutch-torque","inputs":{"clamp":"12 bananas"}}\n')
    expect(status).toBe(0)
    expect(lines.map((l) => ('error' in l ? (l['error'] as { field: string }).field : 'fine'))).toEqual(['fine', 'id', 'line', 'clamp'])
  })
  test('the process prints the same and exits with the same code', () => {
    const spawned = (args: string[]) => spawnSync(process.execPath, ['shared/cli/calc.ts', ...args], { encoding: 'utf8' })
    const bad = spawned(['run', 'clutch-torque', '{"nope":1}'])
    expect([bad.status, (JSON.parse(bad.stdout) as { error: { field: string } }).error.field, bad.stderr]).toEqual([2, 'nope', ''])
    const good = spawned(['run', 'clutch-torque'])
    expect([good.status, Object.keys(JSON.parse(good.stdout) as object)]).toEqual([0, ['inputs', 'outputs', 'notes', 'trace']])
  })
  test('solve finds the input that gives a wanted output', async () => {
    const { out } = await run(['solve', 'clutch-torque', 'clamp', '{"bedded": 533.25}'])
    expect((out['values'] as number[])[0]).toBeCloseTo(9000, 3)
  })
  test('build takes the address of a build, and refuses a cut one', async () => {
    const address = `https://example.invalid/margins/#build=${await buildCode(setEntry(emptySheet(), 'engine.compressionRatio', { value: 9.4 }), workshop.fields, 'to look at')}`
    const { out, status } = await run(['build', address, '--speeds', '5000'])
    expect([status, out['name']]).toEqual([0, 'Build from a link'])
    expect(await run(['build', address.slice(0, -3)])).toMatchObject({ status: 2, out: { error: { field: 'link' } } })
  })
  test('bad input exits with 2 and says which field', async () => {
    for (const [args, field] of [
      [['run', 'no-such'], 'id'], [['run', 'clutch-torque', '{"nope":1}'], 'nope'], [['run', 'clutch-torque', '{'], 'inputs'], [['run', 'clutch-torque', '[]'], 'inputs'],
      [['run', 'clutch-torque', '{"constructor": 2}'], 'constructor'], [['run', 'clutch-torque', '{"__proto__":1}'], '__proto__'], [['run', 'clutch-torque', '{"clamp": 1e300}'], 'clamp'], [['run', 'clutch-torque', '{"clamp": "9^9^9^9"}'], 'clamp'],
      [['run', 'clutch-torque', `{"clamp": "${'('.repeat(10000)}"}`], 'clamp'], [['build', 'no-such-file.json'], 'file'], [['build', 'street', '--set', 'no.such=1'], 'no.such'], [['nonsense'], 'command'],
    ] as const) {
      const { status, out } = await run([...args])
      expect(status, args.join(' ').slice(0, 60)).toBe(2)
      expect((out['error'] as { field: string }).field).toBe(field)
      expect((out['error'] as { message: string }).message.length).toBeGreaterThan(5)
    }
  })
  test('build solves a file and takes changes', async () => {
    const file = join(mkdtempSync(join(tmpdir(), 'build-')), 'build.json')
    writeFileSync(file, JSON.stringify(setEntry(emptySheet('Mine'), 'site.airPressure', { value: 90000, from: 'measured' })))
    const a = (await run(['build', file, '--speeds', '6000,7000'])).out
    const b = (await run(['build', file, '--speeds', '6000,7000', '--set', 'site.airPressure=101.325 kPa'])).out
    const power = (x: Record<string, unknown>) => (x['sweep'] as { values: Record<string, number> }[])[0]!.values['engine.power']!
    expect(power(b)).toBeGreaterThan(power(a))
    for (const key of ['idle', 'sweep', 'residuals', 'margins', 'remedies']) expect(a).toHaveProperty(key)
  })
})
