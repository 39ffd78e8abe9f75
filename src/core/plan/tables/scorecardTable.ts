import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import type { DailyCounts } from "../../forecast/dailyCounts.ts";
import type { Forecast } from "../../forecast/forecast.ts";
import type { RegisterFigures } from "../../forecast/registerFigures.ts";
import { type Scorecard, scorecard } from "../../forecast/scorecard.ts";
import { valueIn } from "../../outcome.ts";
import { scorecardSheet } from "../../sheets/scorecard.ts";
import { sources } from "../../sources.ts";

const scored = calculation<{ register: DailyCounts; forecast: Forecast }, Scorecard | null>({
	key: "scorecard",
	label: "How good the forecast was",
	unit: "",
	formula:
		"Each recorded day is forecast from the days before it, with the final ω and weekday factors, and compared with what came; beside a plain mean of the days before and the same weekday last week (at least half a birth), both Poisson.",
	source: sources.discounted,
	inputs: {
		register: { label: "Births in the register", unit: "births/day" },
		forecast: { label: "Forecast from the register", unit: "births/day" },
	},
	compute: ({ register, forecast }) => scorecard(register, forecast) ?? null,
});

const figureOf = (key: string, label: string, unit: string, of: (card: Scorecard) => number) =>
	calculation<{ card: Scorecard | null }, number>({
		key,
		label,
		unit,
		formula: "From the comparison of past days.",
		source: sources.discounted,
		inputs: { card: { label: "How good the forecast was", unit: "" } },
		compute: ({ card }) => (card ? of(card) : 0),
	});

const asChance = (logScore: number) => 100 * Math.exp(logScore);
const days = figureOf("days", "Days", "days", (card) => card.days);
const inside50 = figureOf(
	"inside_50",
	"Inside the middle half",
	"% of days",
	(card) => 100 * card.coverage50,
);
const inside90 = figureOf(
	"inside_90",
	"Inside nine of ten",
	"% of days",
	(card) => 100 * card.coverage90,
);

const ways = [
	{
		name: "Forecast",
		chance: figureOf("chance", "Chance given", "%", (card) => asChance(card.logScore)),
	},
	{
		name: "Plain mean",
		chance: figureOf("chance_mean", "Chance given", "%", (card) => asChance(card.plainMean)),
	},
	{
		name: "Same weekday last week",
		chance: figureOf("chance_week", "Chance given", "%", (card) => asChance(card.lastWeek)),
	},
];

/** The forecast beside the two simple ways; no rows where there is no forecast to score. */
export function scorecardTable({ register, forecast }: RegisterFigures): ComputedTable {
	return onDemand(scorecardSheet, () => {
		if (!register || !forecast?.outcome.ok) return [];
		const card = derive(scored, { register, forecast });
		const known = valueIn(card);
		return known ? ways.map((way, i) => rowOf(way, i === 0, card, known)) : [];
	});
}

function rowOf(
	{ name, chance }: (typeof ways)[number],
	isForecast: boolean,
	card: Figure<Scorecard | null>,
	known: Scorecard,
): ComputedRow {
	return {
		way: nameFigure("Way", name),
		days: derive(days, { card }),
		chance_given: derive(chance, { card }),
		inside_50: isForecast ? derive(inside50, { card }) : nameFigure("Inside the middle half", ""),
		inside_90: isForecast ? derive(inside90, { card }) : nameFigure("Inside nine of ten", ""),
		remark: nameFigure("In words", isForecast ? inWords(known) : ""),
	};
}

function inWords({ days: count, coverage90, logScore, plainMean, lastWeek }: Scorecard): string {
	const best = logScore >= Math.max(plainMean, lastWeek);
	return `Of ${count} past days, ${Math.round(coverage90 * count)} fell inside the range given for nine of ten. ${
		best
			? "It did at least as well as both simple ways."
			: "A simple way did better: look at the register, or give your own figures."
	}`;
}
