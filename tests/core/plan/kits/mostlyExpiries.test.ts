import { describe, expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import type { Measure } from "../../../../src/core/sheets/planMeasures.ts";
import { numberIn, rowsOf, totalOf, valueIn } from "../../planCells.ts";
import { unitWith } from "../../smallUnit.ts";

const kits = (count: number) =>
	[
		"kit,kind,status,ready_since,note",
		...Array.from({ length: count }, (_, i) => `K${i},bag set,in_service,2027-02-28,`),
	].join("\n");
const few = (count: number, beds = 1) =>
	plan(
		unitWith(
			{ births_per_day: 0.5, delivery_beds: beds, spare_kits: 1 },
			{ "kits.csv": kits(count) },
		),
	);
const words = (count: number, beds?: number) =>
	few(count, beds).problems.find(({ code }) => code === "mostly-expiries")?.message;

describe("advice where most kits to reprocess went out of date", () => {
	test("names the number that the cover needs", () => {
		const made = few(8);
		const needed = rowsOf(made, "kit-cover.csv").find((row) => valueIn(row.deciding) !== null);
		expect(words(8)).toContain(`8 kits are in service; ${numberIn(needed, "kits")} are enough`);
	});

	test("does not speak of fewer where all are needed", () => {
		expect(words(5, 4)).toContain("keep them all");
	});
});

test("kits to reprocess are never set aside below kits used, nor kits gone out of date beyond the kits there are", () => {
	for (const births of [0, 0.5, 6, 60])
		for (const register of ["", "\n2027-02-20,0,", "\n2027-02-20,9,"]) {
			const made = plan(
				unitWith(
					{ births_per_day: births, plan_confidence: 0.99 },
					{ "records.csv": `date,births,kits_used${register}` },
				),
			);
			const of = (measure: Measure) => numberIn(totalOf(made, measure), "set_aside") as number;
			expect(of("kits_to_reprocess")).toBeGreaterThanOrEqual(of("kits_used"));
			// Three kits, each once in four days.
			expect(of("kits_expired")).toBeLessThanOrEqual(6);
			expect(of("kits_to_reprocess")).toBeLessThanOrEqual(of("kits_used") + 6);
		}
});
