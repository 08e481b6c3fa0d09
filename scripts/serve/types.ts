import { extname } from 'node:path'

const byExtension: Record<string, string> = {
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml; charset=utf-8',
}

/** The media type of a file by its name. */
export const typeOf = (file: string): string => byExtension[extname(file)] ?? 'application/octet-stream'

/** Whether compressing a file of this type is worth it: pictures, fonts and packed indexes are compressed already. */
export const isText = (type: string): boolean => /^text\/|json|javascript|xml|wasm/.test(type)
