/** Parts of the sheet under which tolerances are folded, by the first word of a field’s path. */
export const groups: readonly { readonly id: string; readonly title: string; readonly of: readonly string[] }[] = [
  { id: 'engine', title: 'Engine, air and idle', of: ['engine', 'idle', 'site'] },
  { id: 'spark', title: 'Spark and electrics', of: ['spark', 'electric'] },
  { id: 'boost', title: 'Turbo matching', of: ['boost'] },
  { id: 'fuel', title: 'Fuel', of: ['fuel'] },
  { id: 'oil', title: 'Oil', of: ['oil'] },
  { id: 'cooling', title: 'Heat and cooling', of: ['cooling'] },
  { id: 'driveline', title: 'Clutch, driveline and car', of: ['driveline', 'car'] },
]
export const groupOf = (path: string): string => groups.find(({ of }) => of.includes(path.split('.')[0]!))?.id ?? 'engine'
