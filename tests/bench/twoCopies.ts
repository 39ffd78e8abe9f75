import { withLineIds } from "../../src/core/edit/withLineIds.ts";
import { withRow } from "../../src/core/edit/withRow.ts";
import type { Copy, Descent, SheetDescent } from "../../src/core/merge/descent.ts";
import { rootDescent } from "../../src/core/merge/rootDescent.ts";
import { withSave } from "../../src/core/merge/withSave.ts";
import type { Workbook } from "../../src/core/workbook.ts";
import { clearForm } from "../../src/io/history/clearForm.ts";

const LINES_OF_A_VISIT = 8;

/** A long record of which every line was entered in the page, saved so many times on its way. */
export function rememberedCopy(record: Workbook, saves: number): Copy {
	let seed = 1;
	const newId = (length = 6) => {
		seed = (seed * 48271) % 0x7fffffff;
		return (seed % 32 ** length).toString(32).padStart(length, "0");
	};
	let [visit, lines] = ["", 0];
	const lineMark = () => {
		if (lines % LINES_OF_A_VISIT === 0) visit = newId(5);
		lines++;
		return visit;
	};
	const marked = clearForm(withLineIds({ tables: {} }, record, lineMark));
	const root = rootDescent(marked);
	const all = Array.from({ length: saves }, (_, at) => ({
		id: newId(),
		at: new Date(Date.UTC(2025, 0, 1) + at * 9.7e6).toISOString().slice(0, 16),
		by: at % 3 === 0 ? "Amina" : "",
	}));
	const sheets = Object.entries(root.sheets).map(([file, sheet]): [string, SheetDescent] => {
		const of = (row: number) => all[Math.floor((row * saves) / sheet.origins.length)]?.id ?? "";
		const first = new Map<string, number>();
		const origins = sheet.origins.map((_, row) => {
			if (!first.has(of(row))) first.set(of(row), row);
			return `${of(row)}.${row - (first.get(of(row)) ?? 0)}`;
		});
		return [file, { ...sheet, origins }];
	});
	return { workbook: marked, descent: { saves: all, sheets: Object.fromEntries(sheets) } };
}

/** What one person does with a copy: lines entered in every log, and some of old put right. */
export function worked({ workbook }: Copy, who: string): Workbook {
	let next = workbook;
	for (let at = 0; at < 40; at++) {
		const clock = `${String(at % 24).padStart(2, "0")}:${who === "A" ? "15" : "45"}`;
		next = withRow(next, "uses.csv", {
			at: `2027-02-28 ${clock}`,
			kit: "A",
			what: "used",
			by: who,
			id: `u${who}${at}`,
		});
		next = withRow(next, "journal.csv", {
			day: "2027-02-28",
			item: "liquid",
			lot: "L1",
			entry: "issue",
			quantity: "0.5",
			note: who,
			id: `j${who}${at}`,
		});
		next = withRow(
			next,
			"journal.csv",
			{ note: `seen by ${who}` },
			at * 200 + (who === "A" ? 3 : 90),
		);
	}
	return next;
}

/** The copy as the page has it when it brings it together: what was edited counts as a save of now. */
export function copyOf(workbook: Workbook, before: Descent, id: string): Copy {
	const now = clearForm(workbook);
	return { workbook: now, descent: withSave(before, now, { id, at: "2027-02-28T12:00", by: id }) };
}
