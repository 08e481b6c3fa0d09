import { hotSideLimitOf } from '@trochoid/compute/boost/hotSideLimitOf.ts'
import { hotMaterial } from '@trochoid/compute/boost/quantities.ts'
import { materialConductivity } from '@trochoid/compute/cooling/materialConductivity.ts'
import { spacerMaterial } from '@trochoid/compute/cooling/quantities.ts'
import { proofStressOf } from '@trochoid/compute/driveline/proofStressOf.ts'
import { propertyClass } from '@trochoid/compute/driveline/quantities.ts'
import { figure, type ReferenceTable } from './table.ts'

type Hot = keyof typeof hotMaterial.choices
type Spacer = keyof typeof spacerMaterial.choices
type Class = keyof typeof propertyClass.choices
const fahrenheit = (kelvin: number): string => figure(((kelvin - 273.15) * 9) / 5 + 32)

export const materials: ReferenceTable = {
  id: 'materials', title: 'Materials', also: 'stainless 304 321 347 309 310 exhaust manifold temperature conductivity aluminium phenolic bolt class 10.9 proof',
  says: 'How hot stainless steels are meant to run in air, how well materials carry heat, and what bolts of each class stand.',
  parts: [
    {
      id: 'hot-side', title: 'Stainless steels heated and cooled over and over, in air',
      head: ['Material', 'At most, °C', 'At most, °F'],
      rows: Object.entries(hotMaterial.choices).map(([id, name]) => { const limit = hotSideLimitOf({ material: id as Hot }); return [name, figure(limit - 273.15), fahrenheit(limit)] }),
    },
    {
      id: 'conductivity', title: 'Conductivity, for spacers, bolts and housings',
      head: ['Material', 'W/(m K)'],
      rows: Object.entries(spacerMaterial.choices).map(([id, name]) => { const k = materialConductivity({ material: id as Spacer }); return [name, figure(k, k < 1 ? 2 : 0)] }),
    },
    {
      id: 'bolts', title: 'Stress under proof load of bolts',
      head: ['Property class', 'Thread 10 mm, MPa', 'Thread 20 mm, MPa'],
      rows: Object.keys(propertyClass.choices).map((id) => [id, ...[0.01, 0.02].map((diameter) => figure(proofStressOf({ propertyClass: id as Class, diameter }) / 1e6))]),
    },
  ],
  notes: [
    'The first table is about scaling in air, not about strength: a turbocharger that hangs on hot pipes asks for a bracket.',
    'Cast aluminium and laminates vary by a third either way with alloy and filling.',
  ],
  sources: ['asm-stainless', 'en-12524', 'iso-898-1'], cautions: ['hot-metal', 'exhaust-gas', 'rotating-burst'], calculators: ['hot-side-temperature', 'spacer-conduction', 'bolt-preload'],
}
