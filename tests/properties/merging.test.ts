import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Copy } from "../../src/core/merge/descent.ts";
import { mergeCopies } from "../../src/core/merge/mergeCopies.ts";
import { withSave } from "../../src/core/merge/withSave.ts";
import { plan } from "../../src/core/plan/plan.ts";
import {
	ADDED,
	acts,
	copyOf,
	doneBy,
	edited,
	expectedConflicts,
	found,
	rowsIn,
	two,
} from "./twoPeople.ts";
import { always } from "./workbooks.ts";

describe("two copies of one workbook brought together", () => {
	test("hold all that either side added", () => {
		fc.assert(
			fc.property(two, ([a, b]) => {
				const { workbook } = mergeCopies(copyOf("A", a), copyOf("B", b));
				const together = rowsIn(workbook);
				for (const [who, { added }] of [
					["A", a],
					["B", b],
				] as const)
					for (const place of added) {
						const [file = "", n] = place.split("|");
						expect(together[file]).toContain(ADDED[file]?.(who, Number(n)).join("|"));
					}
			}),
			always(100),
		);
	});

	test("have a conflict where both changed one cell differently, and nowhere else", () => {
		let met = 0;
		fc.assert(
			fc.property(two, ([a, b]) => {
				const expected = expectedConflicts(a, b);
				if (expected.length > 0) met++;
				expect(found(mergeCopies(copyOf("A", a), copyOf("B", b)).conflicts)).toEqual(expected);
			}),
			always(150),
		);
		expect(met).toBeGreaterThan(20);
	});

	test("are the same rows in either order, and those of all edits in one copy, where nothing conflicts", () => {
		let met = 0;
		fc.assert(
			fc.property(two, ([a, b]) => {
				if (expectedConflicts(a, b).length > 0) return;
				met++;
				const one = mergeCopies(copyOf("A", a), copyOf("B", b)).workbook;
				expect(rowsIn(mergeCopies(copyOf("B", b), copyOf("A", a)).workbook)).toEqual(rowsIn(one));
				expect(rowsIn(edited(["A", a], ["B", b]))).toEqual(rowsIn(one));
			}),
			always(150),
		);
		expect(met).toBeGreaterThan(20);
	});

	test("and so is their plan", () => {
		fc.assert(
			fc.property(two, ([a, b]) => {
				fc.pre(expectedConflicts(a, b).length === 0);
				const together = plan(mergeCopies(copyOf("A", a), copyOf("B", b)).workbook);
				const inOne = plan(edited(["A", a], ["B", b]));
				expect(figures(together)).toEqual(figures(inOne));
			}),
			always(2),
		);
	});

	test("are one of them where both are the same", () => {
		fc.assert(
			fc.property(acts, (all) => {
				const copy = copyOf("A", doneBy(all));
				const { workbook, conflicts, changes, descent } = mergeCopies(copy, copy);
				expect(workbook).toEqual(copy.workbook);
				expect([conflicts, changes]).toEqual([[], []]);
				expect(descent).toEqual(copy.descent);
			}),
			always(60),
		);
	});

	test("that met once and went on apart ask nothing that was settled, and lose nothing that came since", () => {
		const since = (copy: Copy, who: string): Copy => {
			const { header = [], rows = [] } = copy.workbook.tables["journal.csv"] ?? {};
			const line = ADDED["journal.csv"]?.(who, 9) ?? [];
			const table = { header, rows: [...rows, header.map((_, at) => line[at] ?? "")] };
			const workbook = { tables: { ...copy.workbook.tables, "journal.csv": table } };
			const save = { id: `later-${who}`, at: "2027-03-02T10:00", by: who };
			return { workbook, descent: withSave(copy.descent, workbook, save) };
		};
		fc.assert(
			fc.property(two, fc.constantFrom("ours" as const, "theirs" as const), ([a, b], side) => {
				const [ours, theirs] = [copyOf("A", a), copyOf("B", b)];
				const { conflicts } = mergeCopies(ours, theirs);
				const met = mergeCopies(ours, theirs, new Map(conflicts.map(({ key }) => [key, side])));
				const [one, other] = [since(met, "C"), since(theirs, "D")];
				const again = mergeCopies(one, other);
				expect(again.conflicts).toEqual([]);
				const lines = rowsIn(again.workbook)["journal.csv"] ?? [];
				expect(lines).toHaveLength((rowsIn(met.workbook)["journal.csv"]?.length ?? 0) + 2);
				expect(rowsIn(again.workbook)["kits.csv"]).toEqual(rowsIn(met.workbook)["kits.csv"]);
			}),
			always(60),
		);
	});

	test("brought together again change nothing more, whichever side was chosen", () => {
		fc.assert(
			fc.property(two, fc.constantFrom("ours" as const, "theirs" as const), ([a, b], side) => {
				const [ours, theirs] = [copyOf("A", a), copyOf("B", b)];
				const { conflicts } = mergeCopies(ours, theirs);
				const choices = new Map(conflicts.map(({ key }) => [key, side]));
				const once = mergeCopies(ours, theirs, choices);
				for (const other of [ours, theirs, once]) {
					const again = mergeCopies(once, other);
					expect(again.workbook).toEqual(once.workbook);
					expect(again.conflicts).toEqual([]);
				}
			}),
			always(60),
		);
	});
});

/** Every figure of a plan; lines of the files may differ, because rows may stand in another order. */
function figures({ tables, made }: ReturnType<typeof plan>) {
	const all = Object.entries(tables).map(([file, { rows }]) => [
		file,
		rows.map((row) =>
			Object.entries(row).map(([column, { outcome }]) => [column, outcome.ok ? outcome.value : ""]),
		),
	]);
	return { all, made };
}
