import { expect, test } from 'vitest'
import { NoAnswer, run } from '../../../shared/calculation/calculation.ts'
import { openWorkshop } from '../../../shared/cli/workshop.ts'
import { valuesFor } from '../../../shared/build/demo.ts'
import { isQuantity, type Quantity } from '../../../shared/quantity/quantity.ts'
import { weigh } from '../../../shared/quantity/read.ts'
import { shownUnit } from '../../../shared/quantity/write.ts'

const shop = await openWorkshop()
/** Numbers that a field takes, from its sensible range to the far ends of what it does not refuse. */
const far = (of: Quantity): number[] => {
  const [low, high] = of.range
  return [low, high, low / 10, low / 999, high * 10, high * 999, 0, -high].map((n) => (of.whole ? Math.round(n) : n)).filter((n) => weigh(n, shownUnit(of), of).ok)
}

test.each([...shop.registry.calculations.values()].map((of) => [of.id, of] as const))('%s gives numbers or says why it cannot, whatever a field takes', (_, of) => {
  const base = valuesFor(of, shop.demo, shop.demoPoint())
  for (const [name, { shape }] of Object.entries(of.in)) {
    if (!isQuantity(shape)) continue
    for (const value of far(shape)) {
      try {
        const { outputs } = run(of, { ...base, [name]: value })
        for (const [out, number] of Object.entries(outputs)) if (!of.mayLack?.includes(out)) expect(Number.isFinite(number), `${out} at ${name} = ${value}`).toBe(true)
      } catch (error) { if (!(error instanceof NoAnswer)) throw error }
    }
  }
})
