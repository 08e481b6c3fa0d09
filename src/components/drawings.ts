/** Line drawings of the chapters, 72 by 72: paths, those that carry the accent marked with `+`. */
const round = (n: number): string => String(Math.round(n * 10) / 10)
const polyline = (points: readonly (readonly [number, number])[], close = false): string => `M${points.map(([x, y]) => `${round(x)} ${round(y)}`).join('L')}${close ? 'Z' : ''}`
const around = (count: number, at: (angle: number) => readonly [number, number]) => Array.from({ length: count }, (_, i) => at((i / count) * 2 * Math.PI))
const circle = (x: number, y: number, r: number): string => `M${round(x - r)} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`
const rays = (count: number, from: number, to: number): string => around(count, (a) => [Math.cos(a), Math.sin(a)]).map(([c, s]) => `M${round(36 + from * c)} ${round(36 + from * s)}L${round(36 + to * c)} ${round(36 + to * s)}`).join('')

/** Housing bore, an epitrochoid, and a rotor of three bowed flanks at one position of the shaft. */
function engine(): string[] {
  const R = 25, e = 4, turn = 0.5
  const bore = around(90, (a) => [36 + R * Math.cos(a) + e * Math.cos(3 * a), 36 + R * Math.sin(a) + e * Math.sin(3 * a)])
  const centre = [36 + e * Math.cos(3 * turn), 36 + e * Math.sin(3 * turn)] as const
  const apex = [0, 1, 2].map((k) => [centre[0] + R * Math.cos(turn + (k * 2 * Math.PI) / 3), centre[1] + R * Math.sin(turn + (k * 2 * Math.PI) / 3)] as const)
  const flanks = apex.map(([x, y], k) => { const [nx, ny] = apex[(k + 1) % 3]!; return `M${round(x)} ${round(y)}A46 46 0 0 1 ${round(nx)} ${round(ny)}` }).join('')
  return [polyline(bore, true), `+${flanks}`, circle(round2(centre[0]), round2(centre[1]), 8), circle(36, 36, 3)]
}
const round2 = (n: number): number => Math.round(n * 10) / 10
const spiral = (): string => polyline(Array.from({ length: 60 }, (_, i) => { const a = (i / 59) * 2 * Math.PI; const r = 15 + (i / 59) * 12; return [34 + r * Math.cos(a), 38 + r * Math.sin(a)] as const }))

const made: Readonly<Record<string, () => readonly string[]>> = {
  'start': () => ['M36 20C28 14 16 14 8 18V56C16 52 28 52 36 58C44 52 56 52 64 56V18C56 14 44 14 36 20Z', 'M36 20V58', '+M15 27C20 25 25 25 30 28M15 35C20 33 25 33 30 36M42 28C47 25 52 25 57 27M42 36C47 33 52 33 57 35'],
  engine,
  'spark': () => ['M30 6H42V20H46V30H26V20H30Z', 'M29 30V46H43V30M29 34H43M29 38H43M29 42H43', 'M36 46V51M43 46V62H34', '+M36 51L33.5 55L38 57L36 61', '+M24 56L18 54M25 62L20 65M47 56L53 54'],
  'turbo': () => [spiral(), 'M61 38V10H49V29', circle(34, 38, 12), `+${around(8, (a) => [a, 0]).map(([a]) => `M${round(34 + 3 * Math.cos(a))} ${round(38 + 3 * Math.sin(a))}Q${round(34 + 9 * Math.cos(a + 0.1))} ${round(38 + 9 * Math.sin(a + 0.1))} ${round(34 + 12 * Math.cos(a + 0.7))} ${round(38 + 12 * Math.sin(a + 0.7))}`).join('')}`],
  'fuel': () => ['M28 6H44V14H28ZM31 14V24H41V14M28 24H44V38H28ZM32 38V44H40V38', 'M44 27H54V33H44', '+M34 48L22 66M36 48V67M38 48L50 66M35 49L29 66M37 49L43 66'],
  'oil': () => [circle(36, 36, 27), circle(38.5, 39, 21), '+M11 34C10 25 15 16 24 12M24 12L19 12M24 12L22 17', 'M38.5 36V42M35.5 39H41.5'],
  'cooling': () => ['M10 14H62V58H10ZM10 22H62M10 50H62', 'M18 22V50M28 22V50M38 22V50M48 22V50M56 22V50', `+${[20, 30, 40].map((x) => `M${x} 24l6 2l-6 2l6 2l-6 2l6 2l-6 2l6 2l-6 2l6 2l-6 2l6 2l-6 2`).join('')}`],
  'driveline': () => [circle(36, 36, 29), circle(36, 36, 18), circle(36, 36, 7), `+${rays(6, 10, 15)}`, rays(12, 20, 27)],
  'hand-over': () => ['M14 8H50V64H14Z', 'M28 22H44M28 34H44M28 46H40', '+M18 22L20.5 25L24.5 18.5M18 34L20.5 37L24.5 30.5M18 46L20.5 49L24.5 42.5', 'M62 20L46 52L44 60L51 55L66 23Z'],
}

export const drawing = (theme: string): readonly { readonly path: string; readonly accent: boolean }[] =>
  (made[theme]?.() ?? []).map((path) => ({ path: path.replace(/^\+/, ''), accent: path.startsWith('+') }))
