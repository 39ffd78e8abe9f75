import fc from "fast-check";
import { expect, test } from "vitest";
import { type Plan, plan } from "../../src/core/plan/plan.ts";
import type { TextTable, Workbook } from "../../src/core/workbook.ts";
import { unitWith } from "../core/smallUnit.ts";
import { readDemo } from "../readDemo.ts";
import { always } from "./workbooks.ts";

/**
 * In which order rows are typed, pasted or merged says nothing, so it decides nothing. Steps
 * are done, and sources of water asked, in the order listed; entries of the journal for one
 * lot on one day happened in the order written.
 */
const IN_ORDER = ["steps.csv", "water-sources.csv"];
const JOURNAL = "journal.csv";

const mixed = fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true }));

function mixedUp({ tables }: Workbook, numbers: Iterator<number>): Workbook {
	const next = () => numbers.next().value as number;
	const turned = Object.entries(tables).map(([file, table]): [string, TextTable] => {
		if (IN_ORDER.includes(file)) return [file, table];
		const rows = table.rows
			.map((row) => ({ row, place: next() }))
			.sort((a, b) => a.place - b.place)
			.map(({ row }) => row);
		return [file, { ...table, rows: file === JOURNAL ? asWritten(table, rows) : rows }];
	});
	return { tables: Object.fromEntries(turned) };
}

/** The rows mixed up, but those of one lot and day as they were. */
function asWritten({ rows, header }: TextTable, turned: TextTable["rows"]): TextTable["rows"] {
	const at = ["day", "item", "lot"].map((column) => header.indexOf(column));
	const nameOf = (row: readonly string[]) => at.map((i) => row[i]).join();
	const waiting = new Map<string, (readonly string[])[]>();
	for (const row of rows) waiting.set(nameOf(row), [...(waiting.get(nameOf(row)) ?? []), row]);
	return turned.map((row) => waiting.get(nameOf(row))?.shift() as readonly string[]);
}

/** Every row of every sheet and every problem, in an order of their own; sums to ten digits. */
function said({ tables, problems }: Plan): string[] {
	const rows = Object.values(tables).flatMap(({ sheet, rows: all }) =>
		all.map((row) =>
			[
				sheet.file,
				...Object.entries(row).map(([column, { outcome }]) => {
					if (!outcome.ok) return `${column}: ${outcome.problems.map((p) => p.code).sort()}`;
					const { value } = outcome;
					return `${column} ${typeof value === "number" ? Number(value.toPrecision(10)) : value}`;
				}),
			].join("; "),
		),
	);
	const words = problems.map((p) => [p.file, p.column, p.code, p.received, p.message].join("; "));
	return [...rows, ...words].sort();
}

function expectSame(workbook: Workbook, numbers: Iterator<number>): void {
	expect(said(plan(mixedUp(workbook, numbers)))).toEqual(said(plan(workbook)));
}

const lines = (header: string, line: fc.Arbitrary<string>, most: number) =>
	fc
		.array(line, { minLength: most >> 1, maxLength: most })
		.map((rows) => [header, ...rows.map((row, i) => row.replaceAll("#", String(i)))].join("\n"));
const of = (...texts: (string | fc.Arbitrary<string>)[]) =>
	fc
		.tuple(...texts.map((text) => (typeof text === "string" ? fc.constant(text) : text)))
		.map((parts) => parts.join(","));
const any = (...texts: string[]) => fc.constantFrom(...texts);
const item = any("gauze squares", "clean gloves", "vinegar", "liquid", "powder");
const number = any("1", "2", "5", "7", "40");
const kit = any("A", "B", "C", "E", "F");
const march = any("2027-03-02", "2027-03-04", "2027-05-09");
const february = any("2027-02-20", "2027-02-26", "2027-02-27", "2027-02-28");
const clock = any("08:00", "11:30");
const at = fc.tuple(february, clock).map((parts) => parts.join(" "));

/** Much that is alike but for its name: lots that end on one day, kits of one day. */
const unit = fc
	.record({
		settings: fc.record({
			births_per_day: any("2", "6", "11"),
			reprocessing: any("in_rounds", "after_each_use"),
			renew_kits: any("in_time", "when_expired"),
		}),
		lots: lines(
			"item,lot,quantity,made_on,received_on,arrives_on,expires_on",
			of(item, "M#", number, any("", "2027-01-10"), any("2027-01-20", "2027-02-20"), "", march),
			8,
		),
		kits: lines(
			"kit,kind,status,ready_since,note",
			of("K#", any("bag set", "small set"), "in_service", any("2027-02-27", "2027-02-28"), ""),
			6,
		),
		usage: lines(
			"item,basis,quantity,note",
			of(item, any("day", "round", "load", "kit", "piece", "descale"), any("0.1", "0.7", "2"), ""),
			6,
		),
		uses: lines("at,kit,what,by,note", of(at, kit, "used", "", ""), 6),
		checks: lines("checked_at,kit,pieces_counted,clean", of(at, kit, number, any("yes", "no")), 6),
		journal: lines(
			"day,item,lot,entry,quantity",
			of(february, item, any("M0", "M1", "L1"), any("issue", "receipt", "count", "loss"), number),
			8,
		),
	})
	.map(({ settings, lots, kits, usage, uses, checks, journal }) =>
		unitWith(
			{ plan_days: 4, ...settings },
			{
				"lots.csv": lots,
				"kits.csv": kits,
				"kinds.csv": "kind,piece,count\nbag set,bag,1\nbag set,valve,2\nsmall set,bag,1",
				"usage.csv": usage,
				"uses.csv": uses,
				"checks.csv": checks,
				"journal.csv": journal,
				"births.csv": "date,births,note\n2027-03-02,9,\n2027-03-04,2,",
				"ward-solution.csv":
					"use,litres_per_day,strength_pct,note\nfloors,20,0.1,\nspills,2.3,0.5,",
			},
		),
	);

test("the demo's rows in another order: the same plan", () => {
	const { workbook } = readDemo();
	fc.assert(
		fc.property(mixed, (numbers) => {
			expectSame(workbook, numbers);
		}),
		always(1),
	);
});

test("the rows of a unit in another order: the same plan", () => {
	fc.assert(
		fc.property(unit, mixed, (workbook, numbers) => {
			expectSame(workbook, numbers);
		}),
		always(8),
	);
});
