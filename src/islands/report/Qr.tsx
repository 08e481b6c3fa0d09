import { encode } from 'uqr'

/** Most characters that one code can hold in letters of an address, at the least correction. */
const most = 2900

/** The address as a code to be read by a camera, drawn here; too long, it says so. */
export function Qr({ address }: { address: string }) {
  if (address.length > most) return <p class="small">The address is too long for a code to be read by a camera: the build’s file carries it.</p>
  const { data, size } = encode(address, { ecc: 'L', border: 2 })
  const path = data.flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1z`] : []))).join('')
  return <svg class="qr" viewBox={`0 0 ${size} ${size}`} width="220" height="220" role="img" aria-label="Code of the address of this build" shape-rendering="crispEdges"><rect width={size} height={size} fill="#fff" /><path d={path} fill="#000" /></svg>
}
