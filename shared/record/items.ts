import { crankingSpeed, endFloat, facePressure, rotorMass, sealClearance } from '../engine/quantities.ts'
import { boltTorque, ringMass } from '../driveline/quantities.ts'
import { railPressure } from '../fuel/quantities.ts'
import { diametralClearance, oilPressure } from '../oil/quantities.ts'
import { bar, mm, rpm, um } from '../quantity/si.ts'
import { type Quantity } from '../quantity/quantity.ts'
import { lineOfStep, startStages } from './startSteps.ts'

/** What a measurement should come to: a field of the sheet, give or take, or a range of common practice. */
export type Expected = { readonly field: string; readonly within: number; readonly share?: true } | { readonly range: readonly [number, number] } | null
export type Measured = { readonly id: string; readonly name: string; readonly quantity: Quantity; readonly expected: Expected }
export type Group = { readonly id: string; readonly title: string; readonly says?: string; readonly measured?: readonly Measured[]; /** Written in words. */ readonly chosen?: readonly { readonly id: string; readonly name: string }[]; /** Ticked when done. */ readonly steps?: readonly { readonly id: string; readonly name: string }[] }

const both = (id: string, name: string, quantity: Quantity, expected: Expected): Measured[] => [{ id: `${id}-front`, name: `${name}, front`, quantity, expected }, { id: `${id}-rear`, name: `${name}, rear`, quantity, expected }]

/** Every line of the record, in the order in which an engine is built. Ranges without a field are common practice, no source: the maker’s come first. */
export const groups: readonly Group[] = [
  {
    id: 'clearances', title: 'Clearances', measured: [
      ...both('rotor-bearing', 'Rotor bearing, diametral', diametralClearance, { field: 'oil.rotorBearing.clearance', within: um(10) }),
      ...both('main-bearing', 'Main bearing, diametral', diametralClearance, { field: 'oil.mainBearing.clearance', within: um(10) }),
      { id: 'end-float', name: 'End float of the shaft', quantity: endFloat, expected: { range: [mm(0.04), mm(0.09)] } },
      ...both('apex-groove', 'Apex seal in its groove', sealClearance, { range: [mm(0.05), mm(0.1)] }),
      ...both('side-seal', 'Side seal at its end', sealClearance, { range: [mm(0.05), mm(0.15)] }),
      ...both('corner-seal', 'Corner seal in its bore', sealClearance, { range: [mm(0.02), mm(0.06)] }),
    ],
  },
  {
    id: 'weights', title: 'Weights', measured: [
      ...both('rotor-mass', 'Rotor with seals and springs', rotorMass, { field: 'engine.rotorMass', within: 0.05, share: true }),
      { id: 'flywheel-mass', name: 'Flywheel', quantity: ringMass, expected: null }, { id: 'counterweight-mass', name: 'Counterweight', quantity: ringMass, expected: null },
    ],
  },
  {
    id: 'torques', title: 'Torques', says: 'The figure of the bolt’s maker counts; none is assumed here. Write down what was put on, and with which lubricant.', measured: [
      { id: 'tension-bolts', name: 'Tension bolts of the housings', quantity: boltTorque, expected: null }, { id: 'flywheel-nut', name: 'Flywheel nut or bolts', quantity: boltTorque, expected: null },
      { id: 'clutch-cover', name: 'Clutch cover', quantity: boltTorque, expected: null }, { id: 'hot-studs', name: 'Exhaust manifold and turbocharger', quantity: boltTorque, expected: null },
    ],
  },
  {
    id: 'compression', title: 'Compression of each face', says: 'Throttle open, plugs out, engine warm if it ran before. Write the cranking speed beside it: a face reads by it.', measured: [
      { id: 'cranking', name: 'Cranking speed', quantity: crankingSpeed, expected: { range: [rpm(220), rpm(300)] } },
      ...(['front', 'rear'] as const).flatMap((rotor) => [1, 2, 3].map((face): Measured => ({ id: `face-${rotor}-${face}`, name: `${rotor === 'front' ? 'Front' : 'Rear'} rotor, face ${face}`, quantity: facePressure, expected: { range: [bar(6), bar(10)] } }))),
    ],
  },
  {
    id: 'pressures', title: 'Pressures at the first start', measured: [
      { id: 'rail', name: 'Rail pressure, pump running, manifold open to the air', quantity: railPressure, expected: { field: 'fuel.regulator.setting', within: 0.05, share: true } },
      { id: 'oil-cranking', name: 'Oil pressure while cranking, plugs out', quantity: oilPressure, expected: { range: [bar(0.5), bar(4)] } },
      { id: 'oil-idle', name: 'Oil pressure at hot idle', quantity: oilPressure, expected: { range: [bar(0.8), bar(3.5)] } },
      { id: 'oil-hot', name: 'Oil pressure, hot, at the speed of the sheet', quantity: oilPressure, expected: { field: 'oil.hotPressure', within: 0.15, share: true } },
    ],
  },
  { id: 'parts', title: 'Parts chosen', chosen: [['turbo', 'Turbocharger'], ['injectors', 'Injectors, primary and secondary'], ['seals', 'Apex, side and corner seals'], ['bearings', 'Bearings'], ['oil', 'Oil'], ['coolant', 'Coolant'], ['plugs', 'Spark plugs'], ['clutch', 'Clutch and flywheel']].map(([id, name]) => ({ id: `part-${id}`, name: name! })) },
  {
    id: 'first-start', title: 'Before and at the first start', steps: startStages.flatMap(({ steps }) => steps.map(([id, name]) => ({ id: lineOfStep(id), name }))),
  },
  {
    id: 'break-in', title: 'Break-in and looking again', says: 'Distances are common practice, no source: the makers of seals and bearings have theirs.', steps: [
      ['oil-50', 'Oil and filter changed after the first hour, oil looked at for metal'], ['load-500', 'No full load before 500 km; speed raised in steps'], ['oil-500', 'Oil and filter changed at 500 km'], ['faces-1000', 'Compression of every face again at 1,000 km'],
      ['pull-log', 'First full pull logged and laid over the sheet'], ['bolts-1000', 'Mounts, driveline and hot-side fasteners again at 1,000 km'],
    ].map(([id, name]) => ({ id: `again-${id}`, name: name! })),
  },
]

export const measuredItems: readonly Measured[] = groups.flatMap((g) => g.measured ?? [])
export const lineIds: ReadonlySet<string> = new Set(groups.flatMap((g) => [...(g.measured ?? []), ...(g.chosen ?? []), ...(g.steps ?? [])].map((line) => line.id)))
