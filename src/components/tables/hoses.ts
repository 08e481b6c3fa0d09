import { dashBore, dashSizes } from '@trochoid/compute/quantity/dash.ts'
import { figure, type ReferenceTable } from './table.ts'

const inch = 0.0254

export const hoses: ReferenceTable = {
  id: 'hoses', title: 'Hose sizes', also: 'AN dash number inside diameter bore PTFE fuel oil line fitting',
  says: 'The bore behind a dash number, its area, and how fast 200 L/h run in it.',
  parts: [{
    id: 'sizes', title: 'Dash sizes of flexible hose',
    head: ['Dash', 'Tube outside, in', 'Tube outside, mm', 'Bore, in', 'Bore, mm', 'Area, mm²', 'Speed at 200 L/h, m/s'],
    rows: dashSizes.map((size) => {
      const bore = dashBore(size)!
      const area = (Math.PI / 4) * bore ** 2
      return [String(size), figure(size / 16, 4), figure((size / 16) * inch * 1000, 2), figure(bore / inch, 4), figure(bore * 1000, 2), figure(area * 1e6, 1), figure(200 / 3.6e6 / area, 2)]
    }),
  }],
  notes: [
    'The dash number names the tube a hose replaces, in sixteenths of an inch outside. Hose of another standard, and smooth-bore PTFE hose above all, has another bore under the same number: ask for it, or measure it.',
    'The smallest bend radius is the maker’s figure. It differs with lining and braid, and no table here can stand for it.',
  ],
  sources: ['faa-ac43'], cautions: ['fuel-vapour', 'pressurised-fuel', 'hot-oil'], calculators: ['hose-bore', 'line-loss'],
}
