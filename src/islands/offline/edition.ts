import { url } from '../../url.ts'

/** What is kept, or would be. */
export type Edition = { readonly edition: string; readonly version: string; readonly files: number; /** In bytes. */ readonly stored: number; readonly sent: number }

export const editionKept = async (): Promise<Edition> => (await fetch(url('/kept.json'))).json() as Promise<Edition>
export const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`
