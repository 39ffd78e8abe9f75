/**
 * A program for the terminal: its arguments, where its lines go, and what it ends with.
 *
 * 0: done. 1: something could not be used. 2: wrong arguments.
 */
export type Command = (args: string[], lines: Pick<Console, "log" | "error">) => Promise<0 | 1 | 2>;
