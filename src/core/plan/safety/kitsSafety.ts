import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { farSafer } from "../../counts/enoughOf100.ts";
import { type Cover, oneByOne } from "../../kits/cover.ts";
import type { Reprocessing } from "../../kits/reprocessing.ts";
import { unmetPer1000 } from "../../kits/unmetPer1000.ts";
import { valueIn } from "../../outcome.ts";
import { say } from "../../say.ts";
import { definition } from "../../source.ts";
import { sources } from "../../sources.ts";
import type { CoverFigures } from "../kits/coverFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { short } from "./leverWords.ts";
import { blank, type SafetyRow } from "./safetyRow.ts";

const PER_1000_OF_100 = 10;

const asked = calculation<{ unmetAllowed: number }, number>({
	key: "needs_met_asked",
	label: say`Asked`,
	unit: say`of 100`,
	formula: say`100 − times no kit may be ready when needed, of 1\u202f000, ÷ 10.`,
	source: definition,
	inputs: {
		unmetAllowed: {
			label: say`Times no kit may be ready when needed, at most`,
			unit: say`per 1\u202f000 uses`,
		},
	},
	example: { inputs: { unmetAllowed: 1 }, result: 99.9, within: 1e-9 },
	compute: ({ unmetAllowed }) => 100 - unmetAllowed / PER_1000_OF_100,
});

const met = calculation<{ reprocessing: Reprocessing; kits: number | null }, number | null>({
	key: "needs_met",
	label: say`Needs that find a kit ready`,
	unit: say`of 100`,
	formula: say`100 − times no kit is ready when needed, of 1\u202f000, ÷ 10.`,
	source: sources.palm,
	inputs: {
		reprocessing: { label: say`When used kits come back`, unit: "" },
		kits: { label: say`Kits`, unit: say`kits` },
	},
	example: { inputs: { reprocessing: oneByOne, kits: 2 }, result: 99.89812, within: 1e-6 },
	compute: ({ reprocessing, kits }) =>
		kits === null ? null : 100 - unmetPer1000(kits, reprocessing) / PER_1000_OF_100,
});

/** Kits needed of each kind, beside the most needs that may find none ready. */
export function kitsSafety({ read }: UnitFigures, { kinds }: CoverFigures): SafetyRow[] {
	const allowed = read.settings.unmet_per_1000_uses;
	const asked_of_100 = derive(asked, { unmetAllowed: allowed });
	return kinds.flatMap(({ cover, kitsNeeded, name, reprocessing }) => {
		if (!cover.outcome.ok) return [];
		const { kitsNeeded: needed, decidedBy } = cover.outcome.value;
		// Fewer than one for each bed and the spares is not the unit's to choose by a chance.
		const less = decidedBy === "beds" ? 0 : needed - 1;
		const oneLess = nameFigure(say`The next smaller`, less > 0 ? less : null);
		const enough = derive(met, { reprocessing, kits: kitsNeeded });
		const far = derive(farSafer, { asked: asked_of_100, enough: enough as typeof asked_of_100 });
		const withOneLess = derive(met, { reprocessing, kits: oneLess });
		const lever =
			valueIn(far) === "yes"
				? words(cover.outcome.value, valueIn(withOneLess) ?? null, hasSpares(cover))
				: "";
		return [
			{
				promise: nameFigure(say`What`, "kits_needed" as const),
				of: nameFigure(say`Of`, name),
				day: blank(say`Day`),
				set_aside: kitsNeeded,
				expected: blank(say`Average`),
				unit: nameFigure(say`Unit`, say`kits`),
				asked_of_100,
				enough_of_100: enough,
				one_less: oneLess,
				one_less_of_100: withOneLess,
				beyond: blank(say`Beyond the average`),
				cost: blank(say`That costs`),
				far_safer: far,
				lever: nameFigure(say`What would change it`, lever),
			},
		];
	});
}

/** Whether a number of the unit's own, and not its beds alone, asks for kits. */
function hasSpares({ origin }: Figure<Cover>): boolean {
	const spares = origin.kind === "computed" && (origin.inputs.spareKits as Figure | undefined);
	return spares ? (valueIn(spares) ?? 0) > 0 : false;
}

function words(
	{ decidedBy, kitsNeeded, byRisk }: Cover,
	metOf100: number | null,
	hasSpareKits: boolean,
): string {
	if (decidedBy === "beds" && !hasSpareKits)
		return say`There is one kit for each delivery bed, ${kitsNeeded}; keep them all.`;
	if (decidedBy === "beds")
		return byRisk === 1
			? say`Beds and spare kits ask for ${kitsNeeded}; for the risk alone 1 is enough. Fewer spare kits would ask for fewer.`
			: say`Beds and spare kits ask for ${kitsNeeded}; for the risk alone ${byRisk} are enough. Fewer spare kits would ask for fewer.`;
	if (metOf100 === null) return "";
	const unmet = (100 - metOf100) * PER_1000_OF_100;
	return say`A kit comes whole. With one fewer, no kit is ready ${short(unmet)} of 1\u202f000 times one is needed.`;
}
