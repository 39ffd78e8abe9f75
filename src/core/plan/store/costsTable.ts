import { calculation, derive, type Figure, gather, nameFigure } from "../../calculation.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import { problemsOf, valueIn } from "../../outcome.ts";
import { say } from "../../say.ts";
import { costsSheet } from "../../sheets/costs.ts";
import { commonPractice } from "../../source.ts";
import { sumOfAll } from "../../sumOfAll.ts";
import { DAYS_PER_WEEK } from "../../values/date.ts";
import { inOrder } from "../../values/inOrder.ts";
import type { DayFigures } from "../dayFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { type CostFigures, costsOf, planCosted, ruleChanges } from "./costFigures.ts";
import { signed } from "./stockTable.ts";

const weekly = calculation<{ costs: readonly number[]; days: number }, number>({
	key: "cost_per_week",
	label: say`Cost a week`,
	unit: say`currency`,
	formula: say`Average use × price of a pack ÷ pack size, all items added up, × ${DAYS_PER_WEEK} ÷ days of the plan.`,
	source: commonPractice,
	inputs: {
		costs: { label: say`Cost of each item over the plan`, unit: say`currency` },
		days: { label: say`Days in the plan`, unit: say`days`, min: 1 },
	},
	example: { inputs: { costs: [10, 4], days: 14 }, result: 7, within: 1e-12 },
	compute: ({ costs, days }) => (sumOfAll(costs) * DAYS_PER_WEEK) / days,
});

const each = (key: string, label: string, counted: string, formula: string) =>
	calculation<{ costs: readonly number[]; count: number }, number>({
		key,
		label,
		unit: say`currency`,
		formula,
		source: commonPractice,
		inputs: {
			costs: { label: say`Cost of each item over the plan`, unit: say`currency` },
			count: { label: counted, unit: "", min: 1e-9 },
		},
		example: { inputs: { costs: [10, 4], count: 35 }, result: 0.4, within: 1e-12 },
		compute: ({ costs, count }) => sumOfAll(costs) / count,
	});

const perBirth = each(
	"cost_per_birth",
	say`Cost a birth`,
	say`Births over the plan, average`,
	say`Cost over the plan ÷ average births over the plan.`,
);
const perKit = each(
	"cost_per_kit",
	say`Cost a kit reprocessed`,
	say`Kits to reprocess over the plan, average`,
	say`Cost over the plan ÷ average kits to reprocess over the plan.`,
);

/** Things as they are, then each change, the one that saves most first. */
export function costsTable(
	unit: UnitFigures,
	days: readonly DayFigures[],
): ComputedTable<typeof costsSheet> {
	return onDemand(costsSheet, () => {
		const costed = planCosted(unit, days);
		const now = withWeek(unit, say`As it is now`, costsOf(unit, costed));
		const changed = ruleChanges(unit)
			.map((change) => withWeek(unit, change.name, costsOf(change.unit, costed)))
			.sort(
				(a, b) =>
					(valueIn(a.week) ?? Number.POSITIVE_INFINITY) -
					(valueIn(b.week) ?? Number.POSITIVE_INFINITY),
			);
		return [now, ...changed].map((row) => rowOf(row, row === now ? undefined : now));
	});
}

interface Costed {
	readonly name: string;
	readonly costs: CostFigures;
	readonly each: Figure<number[]>;
	readonly week: Figure;
}

function withWeek(unit: UnitFigures, name: string, costs: CostFigures): Costed {
	const all = gather(say`Cost of each item over the plan`, say`currency`, costs.byItem);
	return {
		name,
		costs,
		each: all,
		week: derive(weekly, { costs: all, days: unit.read.settings.plan_days }),
	};
}

function rowOf(
	{ name, costs, each: all, week }: Costed,
	now: Costed | undefined,
): ComputedRow<typeof costsSheet> {
	const before = now && valueIn(now.week);
	const after = valueIn(week);
	const saved =
		before === undefined || after === undefined ? "" : signed(Number((before - after).toFixed(2)));
	const { withoutPrice } = costs;
	const missing =
		withoutPrice.length === 0 ? "" : say`Without a price: ${withoutPrice.join(", ")}.`;
	// Of several reasons the first by its words, for the same cause.
	const [why = ""] = problemsOf(week.outcome)
		.map(({ message }) => message)
		.sort(inOrder);
	return {
		what: nameFigure(say`What`, name),
		per_week: week,
		per_birth: hasSome(costs.births)
			? derive(perBirth, { costs: all, count: costs.births })
			: nameFigure(say`Cost a birth`, null),
		per_kit: hasSome(costs.kits)
			? derive(perKit, { costs: all, count: costs.kits })
			: nameFigure(say`Cost a kit`, null),
		saved_per_week: nameFigure(say`Saved a week`, saved),
		remark: nameFigure(say`Remark`, [missing, why].filter(Boolean).join(" ")),
	};
}

/** Where nobody is born there is no cost of a birth. */
function hasSome(count: Figure): boolean {
	return valueIn(count) !== 0;
}
