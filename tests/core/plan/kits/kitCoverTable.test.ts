import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { LOOKED_AT_MINUTES } from "../../../../src/core/kits/awayThroughDay.ts";
import { valueIn } from "../../../../src/core/outcome.ts";
import { plan } from "../../../../src/core/plan/plan.ts";
import { rowsOf } from "../../../../src/core/plan/rowsOf.ts";
import {
	CURVE_BEYOND,
	CURVE_NEAREST,
	kitCoverSheet,
	MOST_ROWS,
} from "../../../../src/core/sheets/kitCover.ts";
import { unitWith } from "../../smallUnit.ts";

const rowOfEach = (kinds: number, header: string, row: string) =>
	[header, ...Array.from({ length: kinds }, (_, i) => row.replaceAll("#", `${i}`))].join("\n");

/** By kind, the numbers of kits that have a row, and those that are needed. */
function curves(kinds: number, spares: number, usesPer100 = 5, settings = {}) {
	const made = plan(
		unitWith(settings, {
			"kinds.csv": rowOfEach(kinds, "kind,piece,count", "kind #,bag,1"),
			"kits.csv": rowOfEach(kinds, "kit,kind,status,ready_since,note", "K#,kind #,in_service,,"),
			"kind-use.csv": rowOfEach(
				kinds,
				"kind,uses_per_100_births,beds,spares",
				`kind #,${usesPer100},1,${spares}`,
			),
		}),
	);
	const byKind = new Map<string, { numbers: number[]; needed: number[] }>();
	for (const row of rowsOf(made, kitCoverSheet)) {
		const kind = valueIn(row.kind) ?? "";
		const of = byKind.get(kind) ?? { numbers: [], needed: [] };
		byKind.set(kind, of);
		const kits = valueIn(row.kits) as number;
		of.numbers.push(kits);
		expect(valueIn(row.enough)).toBe(of.needed.length > 0 || valueIn(row.deciding) ? "yes" : "no");
		if (valueIn(row.deciding)) of.needed.push(kits);
	}
	return byKind;
}

const busy = {
	births_per_day: "300",
	workers_per_round: "20",
	soak_capacity_kits: "50",
	soak_container_litres: "100",
	ready_life_days: "30",
};

const from = (first: number, last: number) =>
	Array.from({ length: last - first + 1 }, (_, i) => first + i);

// Of 6 births a day with 5 kits of a kind for 100 of them the risk asks for 3 kits. At most 60 rows.
test.each<[string, Parameters<typeof curves>, number, number[]]>([
	["as many as the risk asks for", [1, 0], 3, from(1, 6)],
	["some more by beds and spares", [6, 5], 6, from(1, 9)],
	["many more: none in between", [1, 30], 31, [...from(1, 6), ...from(28, 34)]],
	["of ten kinds, sixty rows", [10, 0], 3, from(1, 6)],
	["of eleven, one to either side", [11, 0], 3, from(2, 4)],
	["and of those needed", [11, 30], 31, [...from(2, 4), ...from(30, 32)]],
	["sixty rows of one kind", [1, 0, 27, busy], 57, from(1, 60)],
	["one more: three to either side", [1, 0, 27.4, busy], 58, from(55, 61)],
])("the numbers of kits in the curve: %s", (_, of, needed, numbers) => {
	const all = curves(...of);
	expect(all.size).toBe(of[0]);
	for (const curve of all.values()) expect(curve).toEqual({ needed: [needed], numbers });
});

test("curves that would be too long begin three below what the risk asks for", () => {
	const rare = { births_per_day: "6", unmet_per_1000_uses: "0.001" };
	const [few] = curves(1, 0, 5, rare).values();
	const [needed = 0] = few?.needed ?? [];
	expect(needed).toBeGreaterThan(4);
	expect(few?.numbers).toEqual(from(1, needed + 3));
	const [many] = curves(8, 0, 5, rare).values();
	expect(8 * (needed + 3)).toBeGreaterThan(MOST_ROWS);
	expect(many?.numbers).toEqual(from(needed - 3, needed + 3));
});

test("the kits in service are among them", () => {
	const kits = from(1, 15).map((n) => `K${n},kind 0,in_service,,`);
	const made = plan(
		unitWith(
			{ delivery_beds: "30" },
			{
				"kinds.csv": "kind,piece,count\nkind 0,bag,1",
				"kits.csv": ["kit,kind,status,ready_since,note", ...kits].join("\n"),
			},
		),
	);
	const numbers = rowsOf(made, kitCoverSheet).map((row) => valueIn(row.kits) as number);
	expect(numbers.slice(0, numbers.indexOf(28))).toEqual([...from(1, 7), 15]);
});

test("the columns' help and the manual name the limits", () => {
	expect(kitCoverSheet.columns.kits.help).toContain(
		`from 1 to ${CURVE_BEYOND} more than the risk asks for, those in service, and ${CURVE_BEYOND} to either side of the number needed. Where that would be more than ${MOST_ROWS} rows for all kinds together, from ${CURVE_BEYOND} fewer than the risk asks for on; where it still is, ${CURVE_NEAREST} to either side of both`,
	);
	expect(kitCoverSheet.columns.unmet_per_1000_uses.help).toContain(
		`in less than ${LOOKED_AT_MINUTES} minutes of work, the day is looked at about every ${LOOKED_AT_MINUTES} minutes`,
	);
	const manual = readFileSync("docs/manual/kits-and-rounds.md", "utf8");
	expect(manual).toContain(
		`in less than ${LOOKED_AT_MINUTES} minutes of work, the day is looked at about every ${LOOKED_AT_MINUTES} minutes`,
	);
	expect(manual).toContain(
		`from 1 to ${CURVE_BEYOND} more than the risk asks for, with those in service and ${CURVE_BEYOND} to either side of the number needed; where that would be more than ${MOST_ROWS} rows for all kinds together, they begin ${CURVE_BEYOND} kits below what the risk asks for, and where it still is, they are ${CURVE_NEAREST} to either side of both`,
	);
});

test("more kits in service than the curve shows add no row to it, one between its parts does", () => {
	const numbers = (inService: number, beds: number) => {
		const kits = Array.from({ length: inService }, (_, i) => `K${i},bag set,in_service,,`);
		const made = plan(
			unitWith(
				{ delivery_beds: beds, spare_kits: 0 },
				{ "kits.csv": ["kit,kind,status,ready_since,note", ...kits].join("\n") },
			),
		);
		return rowsOf(made, kitCoverSheet).map((row) => valueIn(row.kits));
	};
	const few = numbers(3, 0);
	expect(numbers(20, 0)).toEqual(few);
	expect(numbers(20, 40)).toEqual([...few, 20, ...from(37, 43)]);
});
