/** Nodes and weights of Gauss and Legendre, 16 points on -1 to 1, the positive half. Source: Abramowitz and Stegun, table 25.4. */
const nodes = [0.0950125098376374, 0.2816035507792589, 0.4580167776572274, 0.6178762444026438, 0.755404408355003, 0.8656312023878318, 0.9445750230732326, 0.9894009349916499]
const weights = [0.1894506104550685, 0.1826034150449236, 0.1691565193950025, 0.1495959888165767, 0.1246289712555339, 0.0951585116824928, 0.0622535239386479, 0.0271524594117541]

/** Length of a smooth arc from its speed over a parameter. Sixteen points give the trochoid's arcs to twelve digits. */
export function arcBetween(speed: (parameter: number) => number, from: number, to: number): number {
  const middle = (from + to) / 2
  const half = (to - from) / 2
  let sum = 0
  for (let i = 0; i < 8; i++) sum += weights[i]! * (speed(middle - half * nodes[i]!) + speed(middle + half * nodes[i]!))
  return half * sum
}
