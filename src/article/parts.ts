import Calculator from './Calculator.astro'
import Cite from './Cite.astro'
import Equation from './Equation.astro'
import Figure from './Figure.astro'
import Live from './Live.astro'
import Side from './Side.astro'
import Table from './Table.astro'
import Term from './Term.astro'

/** What an article may use without importing it. */
export const parts = { Calculator, Cite, Equation, Figure, Live, Side, Term, table: Table }
