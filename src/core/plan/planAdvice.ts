import type { Figure } from "../calculation.ts";
import { advice, type Problem } from "../problem.ts";
import { usableLots } from "../stock/usableLots.ts";
import type { PlanTables } from "./planTables.ts";
import type { UnitFigures } from "./unitFigures.ts";

/** What the reader should know although every number stands. */
export function planAdvice(unit: UnitFigures, { days, cover }: PlanTables): Problem[] {
	return [
		...tooFewKits(unit, cover.kitsNeeded),
		...mostlyExpiries(days),
		...shortSoak(unit),
		...productWithoutLot(unit, days[0]?.date ?? ""),
		...productsNotInStore(unit),
	];
}

const valueOf = <T>(figure: Figure<T>): T | undefined =>
	figure.outcome.ok ? figure.outcome.value : undefined;

function tooFewKits({ kitsInService }: UnitFigures, kitsNeeded: Figure): Problem[] {
	const have = valueOf(kitsInService);
	const need = valueOf(kitsNeeded);
	if (have === undefined || need === undefined || have >= need) return [];
	return [
		advice(
			{ file: "kits.csv", line: null, column: "status" },
			{
				code: "too-few-kits",
				received: `${have} kits in service`,
				allowed: `at least ${need}`,
				message:
					have === 0
						? `No kit is in service; ${need} are needed.`
						: `${have} kits are in service and ${need} are needed.`,
			},
		),
	];
}

function mostlyExpiries(days: PlanTables["days"]): Problem[] {
	const sum = (of: (day: PlanTables["days"][number]) => Figure) =>
		days.reduce((all, day) => all + (valueOf(of(day)) ?? Number.NaN), 0);
	const expired = sum((day) => day.expiries);
	const all = sum((day) => day.toReprocess);
	if (!(expired > all / 2)) return [];
	return [
		advice(
			{ file: "kits.csv", line: null, column: "status" },
			{
				code: "mostly-expiries",
				received: `${expired.toFixed(1)} of ${all.toFixed(1)} kits`,
				allowed: "",
				message: `More than half of the kits to reprocess (${expired.toFixed(1)} of ${all.toFixed(1)}) were not used but went out of date. Fewer kits kept ready would mean less work; never fewer than are needed.`,
			},
		),
	];
}

function shortSoak({ steps, read }: UnitFigures): Problem[] {
	const list = valueOf(steps);
	const shortest = valueOf(read.settings.soak_minutes);
	if (!list || shortest === undefined || list.length === 0) return [];
	const soaks = list.filter((step) => step.basis === "load").map((step) => step.minutes);
	if (soaks.some((minutes) => minutes >= shortest)) return [];
	return [
		advice(
			{ file: "steps.csv", line: null, column: "minutes" },
			{
				code: "short-soak",
				received: soaks.length === 0 ? "no step counted by load" : `${Math.max(...soaks)} minutes`,
				allowed: `at least ${shortest} minutes`,
				message: `No step counted by load lasts the ${shortest} minutes of a soak; look at the steps of a round.`,
			},
		),
	];
}

function productWithoutLot({ productInUse, read }: UnitFigures, firstDay: string): Problem[] {
	const product = valueOf(productInUse.name);
	if (product === undefined || usableLots(read.tables.lots, product, firstDay).length > 0)
		return [];
	return [
		advice(
			{ file: "lots.csv", line: null, column: "lot" },
			{
				code: "no-usable-lot",
				received: "no lot",
				allowed: "a lot in the store that is not out of date",
				message: `No lot of ${product} can be used on ${firstDay}; the plan goes by the strength on its label.`,
			},
		),
	];
}

function productsNotInStore({ read }: UnitFigures): Problem[] {
	const { chlorine, items } = read.tables;
	const known = new Set([...items.rows, ...items.badRows].map((row) => row.value.item));
	return chlorine.rows
		.filter(({ value }) => !known.has(value.product))
		.map(({ value, line }) =>
			advice(
				{ file: "chlorine.csv", line, column: "product" },
				{
					code: "unknown-item",
					received: value.product,
					allowed: "an item listed in items.csv",
					message: `${value.product} is not among the items of the store, so it cannot be counted or ordered.`,
				},
			),
		);
}
