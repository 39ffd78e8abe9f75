import { newId } from "./newId.ts";

let visit: string | undefined;

/**
 * The mark of the lines that are entered in this window until it is closed. It tells them
 * from those of every other one; among themselves their texts do, and thousands of lines
 * with a mark each of their own would make the saved file half as large again.
 */
export function lineMark(): string {
	visit ??= newId();
	return visit;
}
