import type { ReferenceTable } from './table.ts'

export const friction: ReferenceTable = {
  id: 'friction', title: 'Friction', also: 'clutch facing coefficient kevlar organic sintered bolt thread lubricant torque',
  says: 'Friction of clutch facings and of bolt threads as handbooks print it: wide bands, to be narrowed by a measurement.',
  parts: [
    {
      id: 'facings', title: 'Clutch facings on iron or steel, dry',
      head: ['Facing', 'Friction, from', 'to', 'Where from'],
      rows: [['Organic, woven or moulded', '0.25', '0.45', 'handbook table, from memory'], ['Aramid fibre', '0.3', '0.4', 'common practice, no source'], ['Sintered metal', '0.29', '0.33', 'handbook table, from memory'], ['Cast iron on steel, bare', '0.15', '0.20', 'handbook table, from memory']],
    },
    {
      id: 'threads', title: 'Steel threads and heads',
      head: ['State', 'Friction, from', 'to', 'Where from'],
      rows: [['Dry, as delivered', '0.14', '0.24', 'VDI 2230, from memory'], ['Light oil', '0.08', '0.16', 'VDI 2230, from memory'], ['Paste with molybdenum disulphide or graphite', '0.04', '0.10', 'VDI 2230, from memory']],
    },
  ],
  notes: ['Heat, wear and what got onto the surface move friction more than the name of a material does. A slip test of the clutch, or a load cell under the bolt, is worth more than any line here.', 'Every figure here is recalled from its book, or is practice without one; none was read at the source when this was written.'],
  sources: ['shigley-machine-design', 'vdi-2230-1', 'common-practice'], cautions: ['rotating-burst', 'model-only'], calculators: ['clutch-torque', 'clutch-capacity', 'bolt-preload', 'torque-of-preload'],
}
