/** Why a link cannot be read. `newer`: most likely made by a later handbook, so that bringing this one up to date would help. */
export class LinkFault extends Error {
  readonly newer: boolean
  constructor(says: string, newer = false) { super(says); this.newer = newer }
}
export const damaged = (): LinkFault => new LinkFault('The link is damaged: most often its end was cut off by the program that carried it. Ask for it again, or for the build as a file.')
