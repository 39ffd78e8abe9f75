import type { Calculation } from "./calculation.ts";
import type { Source } from "./source.ts";
import type { ValueKind } from "./values/valueKind.ts";

/**
 * Everything the program knows about one column, said once.
 *
 * From it follow the row schema and type, the grid's column, the CSV header and
 * codec, the Table Schema, the help page and the printed form. The key of the
 * column is its place in the sheet's `columns`.
 */
export interface Column<T> {
	/** Short name in the user's language. */
	readonly label: string;
	/** Unit of the values, "" where they have none. */
	readonly unit: string;
	/** "typed": a person enters it. "computed": the plan gives it. */
	readonly role: "typed" | "computed";
	readonly value: ValueKind<T>;
	/** What the column is for, in a sentence. */
	readonly help: string;
	/** Decimals on screen and paper; files keep up to six. */
	readonly decimals?: number;
	/** Set where each row has a measure of its own: whole numbers are then shown without decimals. */
	readonly mixed?: boolean;
	/** Set where the number must be enough: it is rounded up wherever a person reads it. */
	readonly rounds?: "up";
	/** Set where the text is a number with its sign. */
	readonly signed?: boolean;
	/** Set where a text holds words of the files, beside a closed list: people read other words for them. */
	readonly coded?: boolean;
	/** Set where a blank or absent cell means this value. */
	readonly fallback?: NoInfer<T>;
	/** For a computed column: how its values come about. */
	readonly calculation?: Calculation;
	readonly source?: Source;
	/** Added after the first edition of the format: an older file may lack it. */
	readonly added?: boolean;
	/** Set where it is blank in every row or in none: where it is, it stands in the file and on no page. */
	readonly ifAny?: boolean;
	/** Set where the program fills the column in for itself: it is in the file, and on no page. */
	readonly behind?: boolean;
}

// biome-ignore lint/suspicious/noExplicitAny: a record of columns holds columns of many types
export type Columns = Record<string, Column<any>>;

/** Whether a person may leave its cells blank: they then mean something usual, or nothing. */
export function mayBeBlank({ role, fallback, value }: Column<unknown>): boolean {
	return role === "typed" && (fallback !== undefined || value.schema.safeParse("").success);
}

type Said<T> = Omit<Column<T>, "role">;

/** A column that a person fills in. */
export function typed<T>(column: Said<T>): Column<T> {
	return { ...column, role: "typed" };
}

/** A column that the plan fills in. */
export function computed<T>(column: Said<T>): Column<T> {
	return { ...column, role: "computed" };
}
