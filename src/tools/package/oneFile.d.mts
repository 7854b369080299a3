/** Path of the built command line. */
export declare const oneFile: string;

/** An entry of the project and all that it imports as the text of one module, and the names of the packages in it. */
export declare function bundled(
  entry?: string,
): Promise<{ readonly text: string; readonly packages: string[] }>;

/** Whether the built file is there and no source is newer. */
export declare function isFresh(): boolean;

/** Puts the text of the built file in its place, whole or not at all; an Error of the system where it can't. */
export declare function keep(text: string): void;
