import type { IsoDate } from "../core/values/date.ts";

/**
 * A program for the terminal: its arguments, where its lines go, and what it ends with.
 *
 * 0: done. 1: something could not be used. 2: wrong arguments.
 *
 * @param today by the computer's clock; left out, nothing is held against a clock
 */
export type Command = (
	args: string[],
	lines: Pick<Console, "log" | "error">,
	today?: IsoDate,
) => Promise<0 | 1 | 2>;

/** What is said before what the program itself threw. */
export const PROGRAM_ERROR = "Program error; your data are safe. Please report what follows.";
