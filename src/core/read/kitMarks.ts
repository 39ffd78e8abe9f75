import type { ReadTable } from "./goodRow.ts";

/** The marks of every kit in the list, also of one whose line has another cell that cannot be read: it is known, though not how it stands. */
export function kitMarks({ rows, badRows }: ReadTable<{ readonly kit: string }>): string[] {
	return [...rows, ...badRows].flatMap(({ value }) => value.kit ?? []);
}
