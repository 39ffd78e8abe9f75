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
function curves(kinds: number, spares = 5) {
	const made = plan(
		unitWith(
			{},
			{
				"kinds.csv": rowOfEach(kinds, "kind,piece,count", "kind #,bag,1"),
				"kits.csv": rowOfEach(kinds, "kit,kind,status,ready_since,note", "K#,kind #,in_service,,"),
				"kind-use.csv": rowOfEach(
					kinds,
					"kind,uses_per_100_births,beds,spares",
					`kind #,5,1,${spares}`,
				),
			},
		),
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

test("the curve begins with one kit; with more than 8 kinds with three below the kits needed", () => {
	const [whole] = curves(8).values();
	expect(whole?.needed).toEqual([6]);
	expect(whole?.numbers).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
	const short = curves(9);
	expect(short.size).toBe(9);
	for (const { numbers, needed } of short.values()) {
		expect(needed).toEqual([6]);
		expect(numbers).toEqual([3, 4, 5, 6, 7, 8, 9]);
	}
});

test("where 100 kits are needed the curve begins with one", () => {
	const [curve] = curves(1, 99).values();
	expect(curve?.needed).toEqual([100]);
	expect([curve?.numbers[0], curve?.numbers.at(-1)]).toEqual([1, 103]);
});

test("where beds and spares ask for more, it is there and around what the risk asks for", () => {
	const [byRisk = 0] = curves(1, 0).values().next().value?.needed ?? [];
	for (const [kinds, spares] of [
		[1, 100],
		[9, 100],
	] as const)
		for (const { numbers, needed } of curves(kinds, spares).values()) {
			expect(needed).toEqual([101]);
			const from = Math.max(1, byRisk - 3);
			const around = Array.from({ length: byRisk + 3 - from + 1 }, (_, i) => from + i);
			expect(numbers).toEqual([...around, 98, 99, 100, 101, 102, 103, 104]);
		}
});

test("the columns' help and the manual name the limits", () => {
	expect(kitCoverSheet.columns.kits.help).toContain(
		`with more than ${MOST_WHOLE_CURVES} kinds of kit, or more than ${MOST_KITS_FROM_ONE} kits needed, from ${CURVE_BEYOND} below`,
	);
	expect(kitCoverSheet.columns.unmet_per_1000_uses.help).toContain(
		`in less than ${LOOKED_AT_MINUTES} minutes of work, the day is looked at about every ${LOOKED_AT_MINUTES} minutes`,
	);
	const manual = readFileSync("docs/manual/kits-and-rounds.md", "utf8");
	expect(manual).toContain(
		`in less than ${LOOKED_AT_MINUTES} minutes of work, the day is looked at about every ${LOOKED_AT_MINUTES} minutes`,
	);
	expect(manual).toContain(
		`with more than ${MOST_WHOLE_CURVES} kinds, or more than ${MOST_KITS_FROM_ONE} kits needed, the rows of each begin ${CURVE_BEYOND} kits below`,
	);
});
