import { endless, half, quarter, square, type BearingTable } from '../data/oilsBearings.ts'
import { formula, type About } from '../formula/formula.ts'
import { attitudeColumn, filmColumn, flowColumn, frictionColumn, pressureColumn, readColumn, ready, sideColumn } from './bearingTable.ts'
import { attitudeAngle, filmShare, flowVariable, frictionVariable, pressureShare, sideFlowShare, slenderness, sommerfeldNumber } from './quantities.ts'
import { slendernessWeights } from './slendernessWeights.ts'

const rad = Math.PI / 180
const nodesOf = ({ slenderness: shape, rows }: BearingTable) => rows.map(([e, sommerfeld, attitude, friction, flow, side, pressure]) => ({
  in: { sommerfeld, slenderness: shape },
  out: { film: 1 - e, friction, flow, side, pressure, attitude: attitude * rad },
}))

/** Film, friction, flow and pressure of a steadily loaded journal bearing, from its Sommerfeld number and shape. */
export const about = {
  name: 'Film of a journal bearing',
  in: { sommerfeld: sommerfeldNumber, slenderness },
  out: { film: filmShare, friction: frictionVariable, flow: flowVariable, side: sideFlowShare, pressure: pressureShare, attitude: attitudeAngle },
  table: 'Four tables (length over diameter endless, 1, 1/2, 1/4), each read by a monotone cubic in log10 S; other shapes by the weights of the four. Beyond a table: straight in S to the touching journal, or as 1/S to the centred one. Shorter than a quarter: the shortest table by short-bearing likeness.',
  nodes: [square, half, quarter].flatMap(nodesOf),
  source: ['raimondi-boyd', 'part III, full bearing with side leakage and a broken film'],
  notes: 'Steady load, rigid and parallel surfaces, one viscosity. At eccentricity ratio 0.97 the tables lie within about 3 % of a fresh numerical solution, elsewhere within about 1 %.',
} as const satisfies About

const tables = [ready(endless), ready(square), ready(half), ready(quarter)] as const

const share = (x: number): number => Math.min(1, Math.max(0, x))

export const raimondiBoyd = formula<typeof about>('raimondi-boyd', { sommerfeld: [0.00474, 16.2], slenderness: [0.25, 1000] }, ({ sommerfeld, slenderness }) => {
  // A bearing shorter than the shortest table carries as the cube of its length: that table at S (l/d)² alike.
  const short = slenderness < 0.25 ? (slenderness / 0.25) ** 2 : 1
  const number = sommerfeld * short
  const log = Math.log10(number)
  const w = slendernessWeights({ slenderness: Math.max(slenderness, 0.25) })
  const blend = (column: number): number => {
    let sum = 0
    // A table that does not count is not read: its weight may multiply a number without end.
    if (w.endless !== 0) sum += w.endless * readColumn(tables[0], column, number, log)
    if (w.square !== 0) sum += w.square * readColumn(tables[1], column, number, log)
    if (w.half !== 0) sum += w.half * readColumn(tables[2], column, number, log)
    if (w.quarter !== 0) sum += w.quarter * readColumn(tables[3], column, number, log)
    return sum
  }
  return {
    film: share(blend(filmColumn)), friction: blend(frictionColumn) / short, flow: blend(flowColumn),
    side: share(blend(sideColumn)), pressure: share(blend(pressureColumn)), attitude: blend(attitudeColumn) * rad,
  }
})
