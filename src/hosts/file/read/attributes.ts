/** Attributes of an element of a part, by name. */
export type Attributes = Readonly<Record<string, string>>;
