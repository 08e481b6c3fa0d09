import { valuesFor } from '@trochoid/compute/build/demo.ts'
import type { AnyCalculation } from '@trochoid/compute/calculation/calculation.ts'
import fuelBlend from '@trochoid/compute/fuel/fuelBlend.calc.ts'
import { ethanolShare, fuelChange } from '@trochoid/compute/fuel/quantities.ts'
import { answered, steps } from './plot/answered.ts'
import { lineFigure, type Drawn } from './plot/lineFigure.tsx'

type Data = Drawn & { readonly ends: readonly [number, number, number] }

/** Air ratio, heating value and heat for each mass of air over ethanol share, as changes against the fuel without it. */
export default lineFigure<Data>({
  title: 'What ethanol changes, and what it hardly does',
  says: 'Change of stoichiometric ratio, heating value and heat per mass of air over ethanol share.',
  x: ethanolShare, y: fuelChange, named: { y: 'Change' },
  from({ sheet, point }) {
    const of: AnyCalculation = fuelBlend
    const given = valuesFor(of, sheet, point)
    const at = (share: number, out: string): number | null => answered(of, { ...given, ethanolShare: share }, out)
    const ratio = at(0, 'ratio'), heat = at(0, 'heat')
    if (ratio === null || heat === null) return null
    const x = steps(0, 1, 20)
    const ratios = x.map((s) => at(s, 'ratio')), heats = x.map((s) => at(s, 'heat'))
    const change = (list: readonly (number | null)[], base: number): (number | null)[] => list.map((v) => (v === null ? null : v / base - 1))
    const perAir = x.map((_, i) => (ratios[i] == null || heats[i] == null ? null : (heats[i] / ratios[i]) / (heat / ratio) - 1))
    if (ratios.at(-1) == null || heats.at(-1) == null || perAir.at(-1) == null) return null
    return { ends: [ratios.at(-1)! / ratio - 1, heats.at(-1)! / heat - 1, perAir.at(-1)!], x, lines: [{ name: 'Heat for each mass of air', y: perAir }, { name: 'Heat in each mass of fuel', y: change(heats, heat) }, { name: 'Air for each mass of fuel', y: change(ratios, ratio) }] }
  },
  summary: ({ ends: [ratio, heat, air] }) => `Pure ethanol against the petrol entered: air for each mass of fuel ${Math.round(100 * ratio)}\u202f%, heat in it ${Math.round(100 * heat)}\u202f%. Heat for each mass of air, which is what an engine makes work of, changes by ${(100 * air).toFixed(1)}\u202f%.`.replaceAll('-', '−'),
  without: 'The fuel of this build could not be worked out, so nothing is drawn.',
})
