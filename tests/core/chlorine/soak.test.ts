import { describe, expect, test } from "vitest";
import { kitsInLoad } from "../../../src/core/chlorine/kitsInLoad.ts";
import { mixingRemark } from "../../../src/core/chlorine/mixingRemark.ts";
import {
	strengthAfterCarryIn,
	strengthToStartFrom,
} from "../../../src/core/chlorine/strengthAfterCarryIn.ts";
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

	test("the strength to start from ends at the strength wanted", () => {
		const bath = { bathLitres: 5, kits: 3, mlPerKit: 30 };
		const start = strengthToStartFrom({ ...bath, strengthMadePct: 0.5 });
		expectWithin(start, 0.509, 1e-12, "%");
		expectWithin(
			answerOf(strengthAfterCarryIn, { ...bath, strengthMadePct: start }),
			0.5,
			1e-12,
			"%",
		);
	});
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
		bathLitres: 5,
		kits: 3,
		mlPerKit: 30,
		ofLot: "",
	};
	test.each([
		["nothing to say", {}, /^$/],
		["just 20 % over", { strengthMadePct: 0.6 }, /^$/],
		["over 20 % over", { strengthMadePct: 0.601 }, /^More than 20 % over 0.5 %/],
		["just the strength wanted", { afterCarryInPct: 0.5 }, /^$/],
		[
			"under it after wet kits",
			{ afterCarryInPct: 0.499 },
			/^Under 0.5 % after 3 wet kits.*start from 0.509 %\.$/,
		],
		["of the lot first", { ofLot: "Too little.", strengthMadePct: 0.7 }, /^Too little\. More than/],
		["two things", { strengthMadePct: 0.7, afterCarryInPct: 0.4 }, /^More than.*Under/],
	])("%s", (_name, change, words) => {
		expect(answerOf(mixingRemark, { ...good, ...change })).toMatch(words);
	});
});
