import { describe, expect, test } from "vitest";
import { kitShare } from "../../../src/core/forecast/kitShare.ts";
import { registerFigures } from "../../../src/core/plan/births/registerFigures.ts";
import { readWorkbook } from "../../../src/core/read/readWorkbook.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf, refusalOf } from "../answerOf.ts";
import { valueIn } from "../planCells.ts";
import { unitWith } from "../smallUnit.ts";

describe("kits used per 100 births, learned", () => {
	test.each([
		["no records: what one starts from", 10, 0, 0, 100, 10],
		["nothing known at all", 10, 0, 0, 0, 10],
		["as many births as the start counts for: half way", 10, 100, 20, 100, 15],
		["no weight to the start: the records alone", 10, 200, 8, 0, 4],
		["many births", 10, 10_000, 440, 100, (100 * 450) / 10_100],
		["none used", 10, 300, 0, 100, 2.5],
		["more kits than births are still at most all", 100, 10, 500, 1, 100],
	])("%s", (_what, priorPer100, births, uses, weight, share) => {
		expectWithin(answerOf(kitShare, { priorPer100, births, uses, weight }), share, 1e-12, "kits");
	});

	test("a share beyond all births is refused", () => {
		const inputs = { priorPer100: 101, births: 1, uses: 1, weight: 1 };
		expect(refusalOf(kitShare, inputs).map((p) => p.code)).toEqual(["outside-limits"]);
	});

	test("only days before the plan with both figures count", () => {
		const records = `date,births,kits_used
			2027-02-01,50,10
			2027-02-02,,40
			2027-02-03,90,
			2027-02-04,50,20
			2027-03-01,400,400`;
		const read = readWorkbook(
			unitWith({ kit_share_prior_births: 100 }, { "records.csv": records }),
		);
		// (0.1 × 100 + 30) ÷ (100 + 100)
		expectWithin(
			valueIn(registerFigures(read, "2027-03-01").kitShare) as number,
			20,
			1e-12,
			"kits",
		);
	});
});
