/** How the findings of some rules are said, by nothing but their values. */
export type Sayings<V> = {
  readonly [K in keyof V]: (fact: { readonly values: V[K] }) => string;
};
