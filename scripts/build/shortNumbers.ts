const places = / (?:x|y|x1|x2|y1|y2|cx|cy|r|width|height|d|points|transform)="[^"]*"/g

/**
 * Shortens what nobody sees of the numbers in a page: places in a drawing to a hundredth of its unit, values behind a number in a text to
 * seven figures. Random digits do not compress. Values that a calculator begins with stay whole: they are compared.
 */
export const withShortNumbers = (html: string): string => html
  .replace(/<svg[^>]*>.*?<\/svg>/gs, (drawing) => drawing.replace(places, (attribute) => attribute.replace(/-?\d+\.\d{3,}(?:e-?\d+)?/g, (number) => String(Number(Number(number).toFixed(2))))))
  .replace(/<data value="(-?\d[\d.e+-]*)"/g, (_, number: string) => `<data value="${Number(Number(number).toPrecision(7))}"`)
