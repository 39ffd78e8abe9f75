import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Conflict } from "../../src/core/merge/conflict.ts";
import type { Copy } from "../../src/core/merge/descent.ts";
import { mergeCopies } from "../../src/core/merge/mergeCopies.ts";
import { rootDescent } from "../../src/core/merge/rootDescent.ts";
import { withSave } from "../../src/core/merge/withSave.ts";
import { plan } from "../../src/core/plan/plan.ts";
import type { Workbook } from "../../src/core/workbook.ts";
import { unitWith } from "../core/smallUnit.ts";
import { always } from "./workbooks.ts";

/*
 * Two people edit two copies of one workbook. The edits are told apart by what they are
 * about, so that what has to come out is known without any merging: a table of the cells
 * that each changed, the rows that each deleted and added.
 */

const journal = Array.from(
	{ length: 6 },
	(_, at) =>
		`2027-02-1${at},vinegar,V1,count,${at + 1},${at % 2 ? "" : "Amina"},${at < 3 ? `j${at}` : ""}`,
);
const base: Workbook = unitWith(
	{ plan_days: 2, soak_minutes: 20, ready_life_days: 7 },
	{
		"records.csv":
			"date,births,kits_used\n2027-02-20,4,1\n2027-02-21,5,\n2027-02-22,6,2\n2027-02-23,7,0",
		"journal.csv": ["day,item,lot,entry,quantity,note,id", ...journal].join("\n"),
		"kits.csv":
			"kit,kind,status,ready_since,note\nA,bag set,in_service,2027-02-27,\nB,bag set,in_service,2027-02-28,\nC,bag set,in_service,,",
	},
);

/** Columns that may be changed without making another row of it, and texts for them. */
const free: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
	"records.csv": { births: ["3", "8", ""], kits_used: ["1", "2", ""] },
	"journal.csv": { quantity: ["1", "7.5", "2"], note: ["Amina", "Joseph", ""] },
	"kits.csv": { status: ["in_service", "out_of_service"], note: ["torn", ""] },
	"unit.csv": { value: ["5", "9"] },
	"usage.csv": { quantity: ["3", "4"], note: ["counted", ""] },
};
const DELETABLE = ["records.csv", "journal.csv", "kits.csv"];
const ADDED: Readonly<Record<string, (who: string, n: number) => string[]>> = {
	"records.csv": (who, n) => [`2027-01-${who === "A" ? "0" : "1"}${n}`, String(n), ""],
	"journal.csv": (who, n) => ["2027-02-25", "vinegar", "V1", "loss", String(n), who, who],
	"kits.csv": (who, n) => [`${who}${n}`, "bag set", "in_service", "", ""],
};
/** Settings whose value may be changed: not the unit's name and first day. */
const FIRST_SETTING = 2;

interface Act {
	readonly kind: "set" | "delete" | "add";
	readonly file: string;
	/** Which row; of an added one, its number. */
	readonly row: number;
	readonly column: string;
	readonly text: string;
}

const rowsOf = (file: string) => base.tables[file]?.rows.length ?? 0;
const settings = Object.entries(free).flatMap(([file, columns]) =>
	Object.entries(columns).flatMap(([column, texts]) =>
		texts.map((text) => ({ kind: "set" as const, file, column, text })),
	),
);
const deletings = DELETABLE.map((file) => ({
	kind: "delete" as const,
	file,
	column: "",
	text: "",
}));
const addings = Object.keys(ADDED).map((file) => ({ ...deletings[0], kind: "add" as const, file }));
const act: fc.Arbitrary<Act> = fc
	.tuple(
		fc.oneof(
			{ weight: 5, arbitrary: fc.constantFrom(...settings) },
			{ weight: 1, arbitrary: fc.constantFrom(...deletings) },
			{ weight: 2, arbitrary: fc.constantFrom(...addings) },
		),
		fc.nat(1000),
	)
	.map(([chosen, any]) => {
		const first = chosen.file === "unit.csv" ? FIRST_SETTING : 0;
		const row =
			chosen.kind === "add" ? 1 + (any % 9) : first + (any % (rowsOf(chosen.file) - first));
		return { column: "", text: "", ...chosen, row };
	});
const acts = fc.array(act, { minLength: 3, maxLength: 12 });

/** What one person did, as it stands in the end. */
interface Done {
	readonly texts: ReadonlyMap<string, string>;
	readonly deleted: ReadonlySet<string>;
	readonly added: ReadonlySet<string>;
}

const placeOf = ({ file, row, column }: Act) => `${file}|${row}|${column}`;
const rowOf = ({ file, row }: Act) => `${file}|${row}`;

function doneBy(all: readonly Act[]): Done {
	const of = (kind: Act["kind"]) => all.filter((one) => one.kind === kind);
	const was = (place: string) => {
		const [file = "", row = "", column = ""] = place.split("|");
		const table = base.tables[file];
		return table?.rows[Number(row)]?.[table.header.indexOf(column)] ?? "";
	};
	const texts = of("set").map((one) => [placeOf(one), one.text] as const);
	return {
		texts: new Map([...new Map(texts)].filter(([place, text]) => was(place) !== text)),
		deleted: new Set(of("delete").map(rowOf)),
		added: new Set(of("add").map(rowOf)),
	};
}

/** The workbook that one or several people made of the base. */
function edited(...all: readonly (readonly [who: string, done: Done])[]): Workbook {
	const tables = Object.entries(base.tables).map(([file, { header, rows }]) => {
		const kept = rows.flatMap((cells, row) => {
			if (all.some(([, { deleted }]) => deleted.has(`${file}|${row}`))) return [];
			const texts = header.map((column, at) => {
				const own = all.find(([, done]) => done.texts.has(`${file}|${row}|${column}`));
				return own?.[1].texts.get(`${file}|${row}|${column}`) ?? cells[at] ?? "";
			});
			return [texts.every((text, at) => text === cells[at]) ? cells : texts];
		});
		const added = all.flatMap(([who, done]) =>
			[...done.added].flatMap((row) => {
				const [in_, n] = row.split("|");
				return in_ === file ? [ADDED[file]?.(who, Number(n)) ?? []] : [];
			}),
		);
		return [file, { header, rows: [...kept, ...added] }];
	});
	return { tables: Object.fromEntries(tables) };
}

const root = rootDescent(base);
function copyOf(who: string, done: Done): Copy {
	const workbook = edited([who, done]);
	const save = { id: `save-${who}`, at: "2027-03-01T10:00", by: who };
	return { workbook, descent: withSave(root, workbook, save) };
}

/** The conflicts that there must be: both changed one cell differently, or one the row that the other deleted. */
function expectedConflicts(a: Done, b: Done): string[] {
	const isDeleted = (place: string, { deleted }: Done) =>
		deleted.has(place.split("|").slice(0, 2).join("|"));
	const cells = [...a.texts].flatMap(([place, text]) => {
		const other = b.texts.get(place);
		const stands = !isDeleted(place, a) && !isDeleted(place, b);
		return stands && other !== undefined && other !== text ? [named(place)] : [];
	});
	const rows = ([one, other]: [Done, Done]) =>
		[...other.texts.keys()].flatMap((place) =>
			isDeleted(place, one) && !isDeleted(place, other)
				? [named(place.split("|").slice(0, 2).join("|"))]
				: [],
		);
	return [...new Set([...cells, ...rows([a, b]), ...rows([b, a])])].sort();
}

/** A place by what its row is called, as a conflict has it. */
function named(place: string): string {
	const [file = "", row = "", column = ""] = place.split("|");
	const cells = base.tables[file]?.rows[Number(row)] ?? [];
	const length = file === "journal.csv" ? 3 : file === "usage.csv" ? 2 : 1;
	return `${file}|${cells.slice(0, length).join(", ")}|${column}`;
}

const found = (conflicts: readonly Conflict[]) =>
	conflicts.map(({ file, row, column }) => `${file}|${row}|${column}`).sort();

/** The rows of each sheet, whatever their order. */
function rowsIn({ tables }: Workbook) {
	return Object.fromEntries(
		Object.entries(tables).map(([file, { header, rows }]) => [
			file,
			[header.join(), ...rows.map((row) => row.join("|")).sort()],
		]),
	);
}

const two = fc.tuple(acts, acts).map(([a, b]) => [doneBy(a), doneBy(b)] as const);

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
