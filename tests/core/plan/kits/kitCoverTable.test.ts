import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { LOOKED_AT_MINUTES } from "../../../../src/core/kits/awayThroughDay.ts";
import { valueIn } from "../../../../src/core/outcome.ts";
import { plan } from "../../../../src/core/plan/plan.ts";
import { rowsOf } from "../../../../src/core/plan/rowsOf.ts";
import {
	CURVE_BEYOND,
	kitCoverSheet,
	MOST_KITS_FROM_ONE,
	MOST_WHOLE_CURVES,
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

// Of 6 births a day with 5 kits of a kind for 100 of them the risk asks for 3 kits.
test.each<[string, Parameters<typeof curves>, number, number[]]>([
	["as many as the risk asks for", [1, 0], 3, from(1, 6)],
	["some more by beds and spares", [8, 5], 6, from(1, 9)],
	["many more: none in between", [1, 30], 31, [...from(1, 6), ...from(28, 34)]],
	["of very many kinds too", [9, 30], 31, [...from(1, 6), ...from(28, 34)]],
	["as many as have a whole curve by the risk", [1, 0, 23.5, busy], 50, from(1, 53)],
	["one more", [1, 0, 24, busy], 51, from(48, 54)],
])("the numbers of kits in the curve: %s", (_, of, needed, numbers) => {
	const all = curves(...of);
	expect(all.size).toBe(of[0]);
	for (const curve of all.values()) expect(curve).toEqual({ needed: [needed], numbers });
});

test("of very many kinds the curve begins three below what the risk asks for, of few with one", () => {
	const rare = { births_per_day: "6", unmet_per_1000_uses: "0.001" };
	const [many] = curves(9, 0, 5, rare).values();
	const [few] = curves(8, 0, 5, rare).values();
	const [needed = 0] = many?.needed ?? [];
	expect(needed).toBeGreaterThan(4);
	expect(many?.numbers).toEqual(from(needed - 3, needed + 3));
	expect(few?.numbers).toEqual(from(1, needed + 3));
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
		`from 1 to ${CURVE_BEYOND} more than the risk asks for, those in service, and ${CURVE_BEYOND} to either side of the number needed. With more than ${MOST_WHOLE_CURVES} kinds of kit, or where the risk asks for more than ${MOST_KITS_FROM_ONE}, from ${CURVE_BEYOND} fewer`,
	);
	expect(kitCoverSheet.columns.unmet_per_1000_uses.help).toContain(
		`in less than ${LOOKED_AT_MINUTES} minutes of work, the day is looked at about every ${LOOKED_AT_MINUTES} minutes`,
	);
	const manual = readFileSync("docs/manual/kits-and-rounds.md", "utf8");
	expect(manual).toContain(
		`in less than ${LOOKED_AT_MINUTES} minutes of work, the day is looked at about every ${LOOKED_AT_MINUTES} minutes`,
	);
	expect(manual).toContain(
		`from 1 to ${CURVE_BEYOND} more than the risk asks for, with those in service and ${CURVE_BEYOND} to either side of the number needed; with more than ${MOST_WHOLE_CURVES} kinds, or where the risk asks for more than ${MOST_KITS_FROM_ONE}, they begin ${CURVE_BEYOND} kits below`,
	);
});
