import temml from 'temml'

/** TeX as MathML for the page, without the style attributes that the content security policy refuses. */
export function mathml(tex: string, display: boolean): string {
  return temml.renderToString(tex, { displayMode: display, trust: true, throwOnError: true })
    .replace(/ style="[^"]*"/g, '').replace(/ class="tml-display"/, '').replace(/<mspace><\/mspace>/g, '')
    // What every browser takes a bracket for by itself.
    .replace(/<mo fence="true" form="(?:pre|post)fix" stretchy="true">(?=[()[\]])/g, '<mo>')
}

/** TeX whose slots, `\data{v=…}{\text{0}}`, hold these texts and say how they are written. */
export const filled = (markup: string, text: (place: string) => string, carried: (place: string) => string): string =>
  markup.replace(/<mtext data-v="([\w.]+)">0(<\/mtext>)/g, (_, place: string, close: string) => `<mtext data-v="${escaped(carried(place))}">${escaped(text(place))}${close}`)

const escaped = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;')
