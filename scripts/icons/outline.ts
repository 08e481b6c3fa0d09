// The housing's two-lobed bore, and the rotor in it with its three sides drawn as arcs. Generating radius 1, y downwards.

/** As a share of the generating radius: about what such engines have (common practice, no source). */
export const eccentricity = 1 / 7

// Whole numbers: every page fetches the icon, and none of it is seen finer than a five-hundredth of its width.
const point = (x: number, y: number, scale: number) => `${Math.round(x * scale)} ${Math.round(-y * scale)}`

/** The bore: the path of an apex over one turn of the rotor, `x = cos a + e cos 3a`, `y = sin a + e sin 3a`. */
export function bore(scale: number, steps = 60): string {
  const points = Array.from({ length: steps }, (_, i) => {
    const a = (2 * Math.PI * i) / steps
    return point(Math.cos(a) + eccentricity * Math.cos(3 * a), Math.sin(a) + eccentricity * Math.sin(3 * a), scale)
  })
  return `M${points.join('L')}Z`
}

/** The rotor at a rotor angle: its middle stands at three times that angle, its apexes a third of a turn apart. */
export function rotor(scale: number, angle: number): string {
  const apexes = [0, 1, 2].map((k) => {
    const a = angle + (2 * Math.PI * k) / 3
    return point(Math.cos(a) + eccentricity * Math.cos(3 * angle), Math.sin(a) + eccentricity * Math.sin(3 * angle), scale)
  })
  const radius = Math.round(2 * scale)
  const arc = (to: string) => `A${radius} ${radius} 0 0 0 ${to}`
  return `M${apexes[0]}${arc(apexes[1])}${arc(apexes[2])}${arc(apexes[0])}Z`
}
