declare namespace App {
  interface Locals {
    /** Ids of the sources of the article being written, in the order in which they are numbered. */
    sources?: readonly string[]
  }
}
