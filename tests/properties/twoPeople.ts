import fc from "fast-check";
import type { Conflict } from "../../src/core/merge/conflict.ts";
import type { Copy } from "../../src/core/merge/descent.ts";
import { rootDescent } from "../../src/core/merge/rootDescent.ts";
import { withSave } from "../../src/core/merge/withSave.ts";
import type { Workbook } from "../../src/core/workbook.ts";
import { unitWith } from "../core/smallUnit.ts";

/*
 * Two people edit two copies of one workbook. The edits are told apart by what they are
 * about, so that what has to come out is known without any merging: a table of the cells
 * that each changed, the rows that each deleted and added.
 */

export const journal = Array.from(
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
export const ADDED: Readonly<Record<string, (who: string, n: number) => string[]>> = {
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
export const acts = fc.array(act, { minLength: 3, maxLength: 12 });

/** What one person did, as it stands in the end. */
interface Done {
	readonly texts: ReadonlyMap<string, string>;
	readonly deleted: ReadonlySet<string>;
	readonly added: ReadonlySet<string>;
}

const placeOf = ({ file, row, column }: Act) => `${file}|${row}|${column}`;
const rowOf = ({ file, row }: Act) => `${file}|${row}`;

export function doneBy(all: readonly Act[]): Done {
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
export function edited(...all: readonly (readonly [who: string, done: Done])[]): Workbook {
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
export function copyOf(who: string, done: Done): Copy {
	const workbook = edited([who, done]);
	const save = { id: `save-${who}`, at: "2027-03-01T10:00", by: who };
	return { workbook, descent: withSave(root, workbook, save) };
}

/** The conflicts that there must be: both changed one cell differently, or one the row that the other deleted. */
export function expectedConflicts(a: Done, b: Done): string[] {
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

export const found = (conflicts: readonly Conflict[]) =>
	conflicts.map(({ file, row, column }) => `${file}|${row}|${column}`).sort();

/** The rows of each sheet, whatever their order. */
export function rowsIn({ tables }: Workbook) {
	return Object.fromEntries(
		Object.entries(tables).map(([file, { header, rows }]) => [
			file,
			[header.join(), ...rows.map((row) => row.join("|")).sort()],
		]),
	);
}

export const two = fc.tuple(acts, acts).map(([a, b]) => [doneBy(a), doneBy(b)] as const);
