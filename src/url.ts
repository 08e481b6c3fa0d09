/** Where the site lives on its host, with a slash at both ends. */
export const base: string = import.meta.env.BASE_URL

/** The address of a page or file of the site, given from its root: `url('/margins/')`. The only way to write a link. */
export const url = (path: string): string => base + path.replace(/^\/+/, '')
