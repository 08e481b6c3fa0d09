import temml from 'temml'

/** TeX as MathML for the page, without the style attributes that the content security policy refuses. */
export function mathml(tex: string, display: boolean): string {
  return temml.renderToString(tex, { displayMode: display, trust: true, throwOnError: true })
    .replace(/ style="[^"]*"/g, '').replace(/ class="tml-display"/, '').replace(/<mspace><\/mspace>/g, '')
}

/** TeX whose slots, `\data{v=…}{\text{0}}`, hold these texts. */
export const filled = (markup: string, text: (place: string) => string): string =>
  markup.replace(/(<mtext data-v="([\w.]+)">)0(<\/mtext>)/g, (_, open: string, place: string, close: string) => open + escaped(text(place)) + close)

const escaped = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;')
