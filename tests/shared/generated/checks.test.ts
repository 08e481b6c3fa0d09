import { describe, expect, test } from 'vitest'
import { loadRegistry } from '@trochoid/compute/registry.ts'
import { runCheck } from '@trochoid/compute/checks/runCheck.ts'

const registry = await loadRegistry()
const only = process.env['FOLDER']
const of = (id: string): string | undefined => registry.formulas.get(id)?.folder ?? registry.calculations.get(id)?.theme
const shown = registry.checks.filter((c) => !only || of(c.of) === only)

describe.each(shown.map((c) => [c.id, c] as const))('%s', (_, check) => {
  test(check.differs ? `still differs: ${check.differs}` : `agrees with ${check.source}`, () => {
    const { compared, passes } = runCheck(check, registry)
    const told = compared.map((c) => `${c.output}: ${c.computed} ${c.unit} for ${c.expected} ± ${c.tolerance}`).join('; ')
    expect(passes, told).toBe(check.differs === undefined)
  })
})
test('no id twice', () => expect(new Set(registry.checks.map((c) => c.id)).size).toBe(registry.checks.length))
