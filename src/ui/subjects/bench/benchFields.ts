import { readTable } from "../../../core/read/readTable.ts";
import { say } from "../../../core/say.ts";
import { checksSheet } from "../../../core/sheets/checks.ts";
import { roundsDoneSheet } from "../../../core/sheets/roundsDone.ts";
import { usesSheet } from "../../../core/sheets/uses.ts";
import { writeClock } from "../../../core/values/clock.ts";
import type { LocalTime } from "../../../core/values/dateTime.ts";
import { type Child, el } from "../../dom/el.ts";
import type { State } from "../../state/store.ts";
import { type EntryField, entryField } from "../store/entryField.ts";

/** Names that are offered, so that they need not be typed each time. */
const MOST_NAMES = 12;

/** Fields of one form; every key is of one column, and no two forms are open at once. */
export const benchFields = {
	moment(key: string, label: string, { date, minutes }: LocalTime): EntryField<HTMLInputElement> {
		const value = `${date}T${writeClock(minutes)}`;
		const field = entryField(`bench-${key}`, label, el("input", { type: "datetime-local", value }));
		field.spell();
		return field;
	},
	time(key: string, label: string, value = ""): EntryField<HTMLInputElement> {
		return entryField(`bench-${key}`, label, el("input", { type: "time", value }));
	},
	text(key: string, label: string, props = {}, ...unit: Child[]): EntryField<HTMLInputElement> {
		const input = el("input", { type: "text", autocomplete: "off", ...props });
		return entryField(`bench-${key}`, label, input, ...unit);
	},
	/** A person's name; those that the record knows are offered. */
	who(key: string, label: string, state: State): EntryField<HTMLInputElement> {
		const list = `bench-${key}-names`;
		const input = el("input", { type: "text", autocomplete: "off", list });
		const field = entryField(`bench-${key}`, label, input);
		const names = namesIn(state).map((value) => el("option", { value }));
		field.element.append(el("datalist", { id: list }, ...names));
		return field;
	},
	choice(
		key: string,
		label: string,
		options: readonly (readonly [value: string, words: string])[],
		value: string,
	): EntryField<HTMLSelectElement> {
		const select = el(
			"select",
			{},
			...options.map(([of, words]) => el("option", { value: of, selected: of === value }, words)),
		);
		return entryField(`bench-${key}`, label, select);
	},
};

/** A moment of a field as the record writes it: with a space for the T. */
export function momentText({ control }: EntryField): string {
	return control.value.replace("T", " ");
}

/** No name or number of a mother or a baby, said where a note is typed. */
export const NO_NAMES = say`No name or number of a mother or a baby.`;

/** Who wrote in the record, the latest first. */
function namesIn({ workbook }: State): string[] {
	const rows = <S extends Parameters<typeof readTable>[0]>(sheet: S) =>
		readTable(sheet, workbook.tables[sheet.file]).rows;
	const names = [
		...rows(usesSheet).map(({ value }) => String(value.by ?? "")),
		...rows(roundsDoneSheet).flatMap(({ value }) => [
			String(value.done_by ?? ""),
			String(value.released_by ?? ""),
		]),
		...rows(checksSheet).map(({ value }) => String(value.checked_by ?? "")),
	].map((name) => name.trim());
	return [...new Set(names.filter(Boolean).reverse())].slice(0, MOST_NAMES);
}
