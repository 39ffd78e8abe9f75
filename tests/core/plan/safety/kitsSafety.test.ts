import { expect, test } from "vitest";
import { plan } from "../../../../src/core/plan/plan.ts";
import { contentOf } from "../../contentOf.ts";
import { unitWith } from "../../smallUnit.ts";

const kitsNeeded = (settings: Record<string, string | number>) =>
	contentOf(
		plan(unitWith({ plan_days: 1, delivery_beds: 1, spare_kits: 0, ...settings })),
		"how-safe.csv",
		"promise",
		"set_aside",
		"one_less",
		"far_safer",
		"lever",
	).find(([promise]) => promise === "kits_needed");

test.each([
	[
		"by the risk: what one fewer would leave",
		{ births_per_day: 3, unmet_per_1000_uses: 20 },
		[
			2,
			1,
			"yes",
			"A kit comes whole. With one fewer, no kit is ready 74 of 1,000 times one is needed.",
		],
	],
	["about as safe as asked", { unmet_per_1000_uses: 50 }, [2, 1, "no", ""]],
	[
		"by the beds alone",
		{ births_per_day: 1, unmet_per_1000_uses: 100, delivery_beds: 4 },
		[4, null, "yes", "There is one kit for each delivery bed, 4; keep them all."],
	],
	[
		"by a spare kit, where the risk asks for one",
		{ births_per_day: 1, unmet_per_1000_uses: 100, delivery_beds: 1, spare_kits: 1 },
		[
			2,
			null,
			"yes",
			"Beds and spare kits ask for 2; for the risk alone 1 is enough. Fewer spare kits would ask for fewer.",
		],
	],
])("kits needed %s", (_, settings, expected) => {
	expect(kitsNeeded(settings)?.slice(1)).toEqual(expected);
});
