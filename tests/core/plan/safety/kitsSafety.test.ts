import { expect, test } from "vitest";
import { valueIn } from "../../../../src/core/outcome.ts";
import { coverFigures } from "../../../../src/core/plan/kits/coverFigures.ts";
import { plannedUnit } from "../../../../src/core/plan/plannedUnit.ts";
import { kitsSafety } from "../../../../src/core/plan/safety/kitsSafety.ts";
import { readWorkbook } from "../../../../src/core/read/readWorkbook.ts";
import { unitWith } from "../../smallUnit.ts";

/** Kits set aside, one fewer where that is offered, whether that is far safer than asked, and what is said of it. */
function kitsNeeded(settings: Record<string, string | number>) {
	const workbook = unitWith({ plan_days: 1, delivery_beds: 1, spare_kits: 0, ...settings });
	const planned = valueIn({ outcome: plannedUnit(readWorkbook(workbook)) });
	if (!planned) throw new Error("the unit has no days");
	const rows = kitsSafety(planned.unit, coverFigures(planned.unit, planned.days));
	return rows.map(({ set_aside, one_less, far_safer, lever }) =>
		[set_aside, one_less, far_safer, lever].map((cell) => valueIn<unknown>(cell)),
	);
}

test.each([
	[
		"by the risk: what one fewer would leave",
		{ births_per_day: 3, unmet_per_1000_uses: 20 },
		[
			2,
			1,
			"yes",
			"A kit comes whole. With one fewer, no kit is ready 74 of 1\u202f000 times one is needed.",
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
	expect(kitsNeeded(settings)).toEqual([expected]);
});
