import { describe, expect, test } from "vitest";
import { kitsInLoad } from "../../../src/core/chlorine/kitsInLoad.ts";
import { mixingRemark } from "../../../src/core/chlorine/mixingRemark.ts";
import { strengthAfterCarryIn } from "../../../src/core/chlorine/strengthAfterCarryIn.ts";
import { strengthToStartFrom } from "../../../src/core/chlorine/strengthToStartFrom.ts";
import { expectWithin } from "../../expectWithin.ts";
import { answerOf, refusalOf } from "../answerOf.ts";

describe("wet kits", () => {
	test.each([
		[0.5, 5, 1, 100, 0.490196],
		[0.5, 5, 0, 100, 0.5],
		[0.5, 5, 3, 0, 0.5],
		[0.502727, 5, 3, 30, 0.493838],
	])(
		"%d %% in %d L after %d kits of %d mL: %d %%",
		(strengthMadePct, bathLitres, kits, mlPerKit, after) => {
			expectWithin(
				answerOf(strengthAfterCarryIn, { strengthMadePct, bathLitres, kits, mlPerKit }),
				after,
				1e-6,
				"%",
			);
		},
	);

	test.each([
		[0.5, 5, 3, 30, 0.509],
		[0.1, 4, 6, 50, 0.1075],
		[0.5, 5, 3, 0, 0.5],
	])(
		"%d %% in %d L after %d kits of %d mL: mixed at %d %%, which ends at the strength wanted",
		(targetPct, bathLitres, kits, mlPerKit, start) => {
			const bath = { bathLitres, kits, mlPerKit };
			const made = answerOf(strengthToStartFrom, { ...bath, targetPct, forWetKits: "yes" });
			expectWithin(made, start, 1e-12, "%");
			const after = answerOf(strengthAfterCarryIn, { ...bath, strengthMadePct: made });
			expectWithin(after, targetPct, 1e-12, "%");
			expect(answerOf(strengthToStartFrom, { ...bath, targetPct, forWetKits: "no" })).toBe(
				targetPct,
			);
		},
	);
});

describe("the load in the container", () => {
	const load = { capacityKits: 3, fillLitres: 5, displacementLitres: 0.6, containerLitres: 10 };
	test.each([
		["as set", {}, 3],
		["just to the brim", { containerLitres: 6.8 }, 3],
		["kits that take no space", { displacementLitres: 0, containerLitres: 5 }, 3],
		[
			"tenths that do not add up exactly",
			{ fillLitres: 0.1, displacementLitres: 0.2, capacityKits: 1, containerLitres: 0.3 },
			1,
		],
	])("%s fits", (_name, change, kits) => {
		expect(answerOf(kitsInLoad, { ...load, ...change })).toBe(kits);
	});

	test("one kit that does not fit is not told to be fewer", () => {
		const [found] = refusalOf(kitsInLoad, { ...load, capacityKits: 1, containerLitres: 5 });
		expect(found?.message).toMatch(/^One kit in .* Take a larger container/);
		expect(found?.message).not.toContain("fewer");
	});

	test("too much is refused, with both figures", () => {
		expect(refusalOf(kitsInLoad, { ...load, containerLitres: 6 })).toMatchObject([
			{
				code: "soak-too-small",
				received: "6.8 L",
				allowed: "at most 6 L",
				file: "unit.csv",
				column: "soak_container_litres",
			},
		]);
	});
});

describe("remarks on a mix", () => {
	const good = {
		strengthMadePct: 0.52,
		afterCarryInPct: 0.51,
		targetPct: 0.5,
		wantedPct: 0.5,
		kits: 3,
		ofLot: "",
	};
	test.each([
		["nothing to say", {}, /^$/],
		["just 20 % over", { strengthMadePct: 0.6 }, /^$/],
		["over 20 % over", { strengthMadePct: 0.601 }, /^More than 20 % over 0.5 %/],
		["20 % over what is mixed for wet kits", { strengthMadePct: 0.61, wantedPct: 0.51 }, /^$/],
		["just the strength wanted", { afterCarryInPct: 0.5 }, /^$/],
		[
			"under it after wet kits",
			{ afterCarryInPct: 0.499 },
			/^Under 0.5 % after 3 wet kits.*“Mixed stronger for wet kits”\.$/,
		],
		["of the lot first", { ofLot: "Too little.", strengthMadePct: 0.7 }, /^Too little\. More than/],
		["two things", { strengthMadePct: 0.7, afterCarryInPct: 0.4 }, /^More than.*Under/],
	])("%s", (_name, change, words) => {
		expect(answerOf(mixingRemark, { ...good, ...change })).toMatch(words);
	});
});
