/** What a page is, for tests that hold every page of a kind to the same rules, and for pictures of one page of each. */
export type PageKind =
  | 'home' | 'list' | 'article' | 'calculator' | 'tool' | 'sheet' | 'maps' | 'turbos' | 'margins' | 'sweep' | 'session' | 'log' | 'record' | 'report' | 'chance' | 'compare' | 'reference' | 'checked' | 'symptoms' | 'table' | 'device' | 'not-found'
