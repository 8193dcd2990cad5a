declare namespace App {
  interface Locals {
    /** Terms that the page has explained, by key. */
    explained?: Set<string>;
  }
}
