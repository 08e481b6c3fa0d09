import { type Server } from 'node:http'
import { type AddressInfo } from 'node:net'

function tryPort(server: Server, port: number): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const refused = (error: NodeJS.ErrnoException) => (error.code === 'EADDRINUSE' ? resolve(false) : reject(error))
    server.once('error', refused)
    server.listen(port, () => {
      server.off('error', refused)
      resolve(true)
    })
  })
}

/** Listens on the wanted port, or on any free one when that is taken, and gives the port it got. */
export async function listen(server: Server, wanted: number): Promise<number> {
  if (!(await tryPort(server, wanted))) await tryPort(server, 0)
  return (server.address() as AddressInfo).port
}
