import type { Weighed } from '@trochoid/compute/build/margins.ts'
import { clears } from '@trochoid/compute/build/remedies.ts'

/** One decision of the order: the links that tell whether it holds, and where in the sheet its numbers stand. */
export type Decision = { readonly name: string; readonly links: readonly string[]; readonly fields: RegExp }

/** The order of the article: each decision rests on those above it. */
export const decisions: readonly Decision[] = [
  { name: 'Purpose, power, highest speed', links: [], fields: /^(site\.|engine\.speedLimit|fuel\.session)/ },
  { name: 'Air and displacement', links: ['manifold-sensor-range'], fields: /^engine\./ },
  { name: 'Boost and compressor', links: ['surge', 'choke', 'compressor-overspeed'], fields: /^boost\.(target|compressorMap|topSpeed|inletLoss|wantedBySpeed)/ },
  { name: 'Turbine and wastegate', links: ['boost-by-wanted-speed', 'back-pressure', 'exhaust-temperature', 'wastegate-passes', 'actuator-opens', 'actuator-holds'], fields: /^boost\.(turbine|exhaust|wastegate|actuator|hot|max|mechanical)/ },
  { name: 'Charge cooling', links: ['charge-temperature'], fields: /^boost\.cooler/ },
  { name: 'Fuel: injectors, pump, lines', links: ['primary-pulse-idle', 'secondary-pulse-handover', 'primary-duty-handover', 'injector-closing-window', 'fuel-pump-flow', 'regulator-bypass-idle', 'last-injector-pressure', 'vapour-hot-stop', 'session-fuel'], fields: /^fuel\./ },
  { name: 'Spark and electrics', links: ['coil-charge-time', 'charging-budget-idle', 'injector-driver-current'], fields: /^(spark|electric)\./ },
  { name: 'Oil and bearings', links: ['rotor-bearing-inertia', 'rotor-bearing-gas', 'main-bearing-film', 'shaft-oil-pressure', 'seal-oil'], fields: /^oil\.(?!cooler|temperature)/ },
  { name: 'Heat', links: ['oil-temperature', 'coolant-temperature', 'boil-margin'], fields: /^(cooling\.|oil\.(cooler|temperature))/ },
  { name: 'Clutch, flywheel, driveline', links: ['clutch-torque', 'flywheel-speed', 'gearbox-torque', 'differential-torque', 'half-shaft-torque'], fields: /^(driveline|car)\./ },
]

/** What the margins say of one decision: its links, worst first, and the decisions above that would mend those which do not hold. */
export type Standing = { readonly links: readonly Weighed[]; readonly worst: Weighed | null; readonly reaches: readonly number[] }

/** The worst first. A link that can never be called holding, such as one that a log must prove, is no fault of its decision. */
const rank = (w: Weighed): number => (w.state === 'short' ? 0 : clears(w) ? 3 : w.state === 'tight' ? 1 : 2)
export const unsettled = (w: Weighed): boolean => rank(w) < 3

export function standings(weighed: readonly Weighed[]): readonly Standing[] {
  return decisions.map(({ links }, mine) => {
    const own = weighed.filter((w) => links.includes(w.id)).sort((a, b) => rank(a) - rank(b))
    const wanting = own.filter((w) => rank(w) < 2)
    const places = wanting.flatMap((w) => w.margin.remedies.map((r) => decisions.findIndex(({ fields }) => fields.test(r.field.path))))
    return { links: own, worst: own[0] ?? null, reaches: [...new Set(places)].filter((place) => place >= 0 && place < mine).sort((a, b) => a - b) }
  })
}
