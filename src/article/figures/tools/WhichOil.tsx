import { shaftSpeed } from '@trochoid/compute/engine/quantities.ts'
import { run, type AnyCalculation, type Values } from '@trochoid/compute/calculation/calculation.ts'
import { gradeChart } from '@trochoid/compute/oil/gradeChart.ts'
import oilForClearance from '@trochoid/compute/oil/oilForClearance.calc.ts'
import { diametralClearance, filmThickness, oilTemperature, viscosityAt100 } from '@trochoid/compute/oil/quantities.ts'
import { degC, mm, rpm } from '@trochoid/compute/quantity/si.ts'
import type { System } from '@trochoid/compute/quantity/write.ts'
import { useMemo, useState } from 'preact/hooks'
import { frame } from '../plot/frame.ts'
import { Lines, long, type Named, type Spot } from '../plot/Lines.tsx'
import { Axes, round, Sheet, Words } from '../plot/Sheet.tsx'
import { shown } from '../plot/shown.ts'
import { Slide } from '../plot/Slide.tsx'

/** What the chart rests on besides the three answers: the inputs of the calculation, and the index for oils known by grade alone. */
export type OilAsked = { readonly given: Values; readonly index: number; readonly gasLoad: number }
export type Answers = { readonly clearance: number; readonly supply: number; readonly speed: number }

const grades = ['20', '30', '40', '50', '60'] as const
const looks = ['thin', 'line dash', 'line', 'line two', 'thin'] as const
const clearances = Array.from({ length: 13 }, (_, i) => mm(0.03 + 0.01 * i))

/** Films of the grades over clearance, and what the calculation answers, for three answers of the reader. */
export function answered({ given, index, gasLoad }: OilAsked, { clearance, supply, speed }: Answers) {
  const of: AnyCalculation = oilForClearance
  const n = given as Readonly<Record<string, number>>
  const cells = gradeChart({
    grades, clearances, speeds: [speed], supply, index, density15: n['density15']!, mass: n['mass']!, eccentricity: n['eccentricity']!, diameter: n['diameter']!, length: n['length']!, gasLoad,
  })
  try { return { cells, out: run(of, { ...given, diametral: clearance, supply, speed }).outputs } } catch { return { cells, out: null } }
}

/** Three questions, one chart, one paragraph. */
export function WhichOil({ asked, start, system }: { asked: OilAsked; start: Answers; system: System }) {
  const [answers, answer] = useState(start)
  const { cells, out } = useMemo(() => answered(asked, answers), [asked, answers])
  const c = shown(diametralClearance, system), t = shown(oilTemperature, system), s = shown(shaftSpeed, system), h = shown(filmThickness, system)
  const thinner = (cell: (typeof cells)[number]): number | null => (cell.inertia === null || cell.gas === null ? null : Math.min(cell.inertia, cell.gas))
  const lines: Named[] = grades.map((grade, i) => ({
    name: `SAE ${grade}, thinnest of the grade`, class: looks[i]!, dash: i === 3 ? long : i === 4 ? '2 3' : undefined,
    spots: cells.filter((x) => x.grade === grade && thinner(x) !== null).map((x): Spot => [c.of(x.clearance), h.of(thinner(x)!)]),
  }))
  const most = Math.max(...lines.flatMap((l) => l.spots.map(([, y]) => y)), out ? h.of(out['guide']!) : 0)
  const on = frame({ x: [c.of(clearances[0]!), c.of(clearances.at(-1)!)], y: [0, most], height: 400 })
  const here = round(on.x.at(c.of(answers.clearance)))
  return (
    <div>
      <div class="row">
        <Slide name="How wide is the rotor bearing, diametral?" low={30} high={150} step={1} at={Math.round(answers.clearance * 1e6)} says={c.say(answers.clearance)} onMove={(v) => answer({ ...answers, clearance: v * 1e-6 })} />
        <Slide name="How hot does the oil enter, at the worst?" low={70} high={140} step={1} at={Math.round(answers.supply - degC(0))} says={t.say(answers.supply)} onMove={(v) => answer({ ...answers, supply: degC(v) })} />
        <Slide name="How fast does it turn, at the worst?" low={2000} high={10000} step={100} at={Math.round(answers.speed / rpm(1) / 100) * 100} says={s.say(answers.speed)} onMove={(v) => answer({ ...answers, speed: rpm(v) })} />
      </div>
      <Sheet says="Film of each grade over clearance, the thinner of both load cases, with the film wanted and the clearance asked about." height={on.height} named={lines}>
        <Axes on={on} x={c.head()} y={h.head()} />
        {out && ([['wanted', 'clears the roughness'], ['guide', 'general machinery']] as const).map(([name, says]) => {
          const y = round(on.y.at(h.of(out[name]!)))
          return <g key={name}><line class="thin" stroke-dasharray="1 4" x1={on.left} x2={on.right} y1={y} y2={y} /><Words x={on.right} y={y - 6} anchor="end">{says}</Words></g>
        })}
        <Lines on={on} of={lines} />
        <line class="line dash" x1={here} x2={here} y1={on.top} y2={on.bottom} />
        <Words x={here + 6} y={on.top + 12}>yours</Words>
      </Sheet>
      <p aria-live="polite" class="readout">{paragraph(out, answers, cells, system)}</p>
    </div>
  )
}

/** The answer with its band and its doubt, in one paragraph. */
export function paragraph(out: Readonly<Record<string, number>> | null, { clearance, supply, speed }: Answers, cells: ReturnType<typeof answered>['cells'], system: System): string {
  const c = shown(diametralClearance, system), t = shown(oilTemperature, system), s = shown(shaftSpeed, system), h = shown(filmThickness, system), v = shown(viscosityAt100, system)
  if (!out) return 'No oil from a twentieth to twenty times as thick as yours gives these films: the answer lies outside what the bearing tables hold. Look at clearance and temperature first.'
  const film = (grade: string): number | null => {
    const near = cells.filter((x) => x.grade === grade).reduce<(typeof cells)[number] | null>((a, b) => (a === null || Math.abs(b.clearance - clearance) < Math.abs(a.clearance - clearance) ? b : a), null)
    return near?.inertia == null || near.gas === null ? null : Math.min(near.inertia, near.gas)
  }
  const least = grades.find((g) => (film(g) ?? 0) >= out['wanted']!)
  const guided = grades.find((g) => (film(g) ?? 0) >= out['guide']!)
  const band = `${least ? `an SAE ${least} at its thinnest already clears the roughness` : 'no grade at its thinnest clears the roughness'}, and ${guided ? `an SAE ${guided} reaches what general machinery is given` : 'none reaches what general machinery is given'}`
  const worst = out['forGas']! > out['forInertia']! ? 'the gas peak asks most, in a steady estimate that reads too thin' : 'inertia asks most'
  return `At ${c.say(clearance)}, ${t.say(supply)} and ${s.say(speed)} ${band}. Here ${worst}. The oil in the sump as it is would run on ${h.say(Math.min(out['inertia']!, out['gas']!))}; ${h.say(out['wanted']!)} want ${v.say(out['asked']!)} at 100 °C with its fuel in it, ${h.say(out['guide']!)} want ${v.say(out['guided']!)}. So take the thinnest grade that your engine’s maker allows at this temperature, and a thicker one only for what you measured: a wider clearance, hotter oil, fuel in the oil. The doubt: a grade is a band nearly as wide as the step to the next, grades from 40 up may shear to the same viscosity, and wear, dirt and bending are in no table. The data sheet’s high-shear figure says more than the number on the can.`
}
