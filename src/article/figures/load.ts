import type { AnyFigure } from './figure.ts'

/**
 * The figure drawn at a place: by the file of the browser's code, `engine-on-map.1a2b3c4d.js`, which a built page names and which lies
 * beside this one, or else by its id among all of them.
 */
export async function figureAt({ dataset: { file, figure } }: HTMLElement): Promise<AnyFigure> {
  if (!file!.endsWith('.js')) return (await import('./all.ts')).loadFigure(figure!)
  return ((await import(/* @vite-ignore */ `./${file!}`)) as { default: AnyFigure }).default
}
