import { bore, eccentricity, rotor } from './outline.ts'

const ink = '#1d2733'
const paper = '#fbfaf6'

/** The sign of the handbook: a rotor in its bore. `room` is the share of the half width that the bore fills. */
export function icon(room: number, corner: number): string {
  const scale = 256 * room
  const width = (20 * room).toFixed(1)
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="-256 -256 512 512">
  <rect x="-256" y="-256" width="512" height="512" rx="${corner}" fill="${paper}"/>
  <path d="${bore(scale)}" transform="rotate(-90)" fill="none" stroke="${ink}" stroke-width="${width}"/>
  <path d="${rotor(scale * 0.96, 0)}" transform="rotate(-90)" fill="${ink}"/>
  <circle cy="${(-scale * eccentricity).toFixed(2)}" r="${(scale * 0.3).toFixed(2)}" fill="${paper}"/>
  <circle cy="0" r="${(scale * 0.12).toFixed(2)}" fill="${ink}"/>
</svg>
`
}

/** As a browser shows it in a tab. */
export const plainIcon = (): string => icon(0.78, 96)

/** With room around it, for systems that cut their own outline. */
export const maskableIcon = (): string => icon(0.6, 0)
