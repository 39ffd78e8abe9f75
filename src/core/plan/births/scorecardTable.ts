import { calculation, derive, type Figure, nameFigure } from "../../calculation.ts";
import { type ComputedRow, type ComputedTable, onDemand } from "../../computedTable.ts";
import type { DailyCounts } from "../../forecast/dailyCounts.ts";
import type { Forecast } from "../../forecast/forecast.ts";
import { type Scorecard, scorecard } from "../../forecast/scorecard.ts";
import { valueIn } from "../../outcome.ts";
import { say } from "../../say.ts";
import { scorecardSheet } from "../../sheets/scorecard.ts";
import { sources } from "../../sources.ts";
import type { RegisterFigures } from "./registerFigures.ts";

const example: Scorecard = {
	days: 7,
	coverage90: 1,
	coverage50: 1,
	logScore: -1.35679,
	plainMean: -1.30685,
	lastWeek: -1.30685,
};

const scored = calculation<{ register: DailyCounts; forecast: Forecast }, Scorecard | null>({
	key: "scorecard",
	label: say`How good the forecast was`,
	unit: "",
	formula: say`Each recorded day is forecast from the days before it, with the final ω, variation of days and weekday factors, and compared with what came; beside a plain mean of the days before and the same weekday last week (at least half a birth), both Poisson.`,
	source: sources.discounted,
	inputs: {
		register: { label: say`Births in the register`, unit: say`births/day` },
		forecast: { label: say`Forecast from the register`, unit: say`births/day` },
	},
	example: {
		// Two births on each of 14 days. The 8th to the 14th also have a day last week: mean logarithm of
		// the chance of 2, from mean 2 and size 14, 16, … 26; both simple ways say e^−2 × 2² ÷ 2.
		inputs: {
			register: { firstDay: "2027-03-01", counts: Array.from({ length: 14 }, () => 2) },
			forecast: {
				ledBy: "register",
				daySpread: 0,
				discount: 1,
				a: 28,
				b: 14,
				lastDay: "2027-03-14",
				factors: [1, 1, 1, 1, 1, 1, 1],
				logLikelihood: -18.34698,
				recordedDays: 14,
			},
		},
		result: example,
		within: 1e-5,
	},
	compute: ({ register, forecast }) => scorecard(register, forecast) ?? null,
});

/** `ofExample`: what the example's card has of it. */
const figureOf = (
	key: string,
	label: string,
	unit: string,
	of: (card: Scorecard) => number,
	ofExample: number,
) =>
	calculation<{ card: Scorecard | null }, number>({
		key,
		label,
		unit,
		formula: say`From the comparison of past days.`,
		source: sources.discounted,
		inputs: { card: { label: say`How good the forecast was`, unit: "" } },
		example: { inputs: { card: example }, result: ofExample, within: 1e-3 },
		compute: ({ card }) => (card ? of(card) : 0),
	});

const asChance = (logScore: number) => 100 * Math.exp(logScore);
const days = figureOf("days", say`Days`, say`days`, (card) => card.days, 7);
const inside50 = figureOf(
	"inside_50",
	say`Inside the middle half`,
	say`% of days`,
	(card) => 100 * card.coverage50,
	100,
);
const inside90 = figureOf(
	"inside_90",
	say`Inside nine of ten`,
	say`% of days`,
	(card) => 100 * card.coverage90,
	100,
);

const ways = [
	{
		name: say`Forecast`,
		chance: figureOf("chance", say`Chance given`, "%", (card) => asChance(card.logScore), 25.7486),
	},
	{
		name: say`Plain mean`,
		chance: figureOf(
			"chance_mean",
			say`Chance given`,
			"%",
			(card) => asChance(card.plainMean),
			27.0671,
		),
	},
	{
		name: say`Same weekday last week`,
		chance: figureOf(
			"chance_week",
			say`Chance given`,
			"%",
			(card) => asChance(card.lastWeek),
			27.0671,
		),
	},
];

/** The forecast beside the two simple ways; no rows where there is no forecast to score. */
export function scorecardTable({
	register,
	forecast,
}: RegisterFigures): ComputedTable<typeof scorecardSheet> {
	return onDemand(scorecardSheet, () => {
		// Forecast is only what a register teaches.
		if (!forecast) return [];
		const card = derive(scored, { register: register as Figure<DailyCounts>, forecast });
		const known = valueIn(card);
		return known ? ways.map((way, i) => rowOf(way, i === 0, card, known)) : [];
	});
}

function rowOf(
	{ name, chance }: (typeof ways)[number],
	isForecast: boolean,
	card: Figure<Scorecard | null>,
	known: Scorecard,
): ComputedRow<typeof scorecardSheet> {
	return {
		way: nameFigure(say`Way`, name),
		days: derive(days, { card }),
		chance_given: derive(chance, { card }),
		inside_50: isForecast
			? derive(inside50, { card })
			: nameFigure(say`Inside the middle half`, null),
		inside_90: isForecast ? derive(inside90, { card }) : nameFigure(say`Inside nine of ten`, null),
		remark: nameFigure(say`In words`, isForecast ? inWords(known) : ""),
	};
}

function inWords({ days: count, coverage90, logScore, plainMean, lastWeek }: Scorecard): string {
	const best = logScore >= Math.max(plainMean, lastWeek);
	const inside = Math.round(coverage90 * count);
	return best
		? say`Of ${count} past days, ${inside} fell inside the range given for nine of ten. It did at least as well as both simple ways.`
		: say`Of ${count} past days, ${inside} fell inside the range given for nine of ten. A simple way did better: look at the register, or give your own figures.`;
}
