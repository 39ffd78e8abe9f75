import { derive, type Figure, gather, refusedFigure } from "../../calculation.ts";
import { Grouped } from "../../grouped.ts";
import { memoizeByObject } from "../../memoize.ts";
import { advice } from "../../problem.ts";
import type { GoodRow, ReadTable } from "../../read/goodRow.ts";
import { unsettlesRows } from "../../read/unsettlesRows.ts";
import type { RoundsOfDay } from "../../rounds/roundsOfDay.ts";
import { say } from "../../say.ts";
import type { ItemsRow } from "../../sheets/items.ts";
import { type UsageRow, usageSheet } from "../../sheets/usage.ts";
import type { Rates } from "../../stock/ratesOfItem.ts";
import type { UseInputs } from "../../stock/useInputs.ts";
import { useExpected, useSetAside } from "../../stock/useSetAside.ts";
import { isCounted, wholePieces } from "../../stock/wholePieces.ts";
import { total } from "../../total.ts";
import type { Pair } from "../countFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { itemsByName } from "./itemsByName.ts";
import { noUsageLine, ratesOfUsage, usageLabel, usageLines, usageUnit } from "./ratesOfUsage.ts";
import { type UsedDay, useOfSingleUse } from "./useOfSingleUse.ts";

/** Days over which use is asked: their rounds, and the kits used on them. */
export interface OverDays {
	readonly rounds: Figure<RoundsOfDay[]>;
	readonly days: readonly UsedDay[];
}

/** Use of one item of the store over some days, by its lines in usage.csv and as a piece for single use; in whole pieces where it is counted so. */
export function itemOver(
	unit: UnitFigures,
	item: string,
	over: OverDays,
	confidence: Figure,
): Pair {
	const byLines = useOver(useOfItem(unit, item, over.rounds), confidence);
	const single = useOfSingleUse(unit, item, over.days);
	const { expected, setAside } = single ? bothWays(byLines, useOver(single, confidence)) : byLines;
	const { value } = itemsByName(unit.read.tables.items).get(item) as GoodRow<ItemsRow>;
	const parts = setAside.outcome.ok && !Number.isInteger(setAside.outcome.value);
	const counted = parts && isCounted(value.measure);
	return { expected, setAside: counted ? derive(wholePieces, { use: setAside }) : setAside };
}

/** Use of one item where something says what it goes for; a dash with the reason where nothing does, never 0. */
export function itemIfKnown(
	unit: UnitFigures,
	item: string,
	over: OverDays,
	confidence: Figure,
): Pair {
	if (isUseKnown(unit, item)) return itemOver(unit, item, over, confidence);
	const unknown = useNotSaid(unit);
	return { expected: unknown, setAside: unknown };
}

/** Whether something says what an item goes for; a line of it that cannot be read may, or one of no known item. */
export function isUseKnown(unit: UnitFigures, item: string): boolean {
	const { usage, chlorine } = unit.read.tables;
	return (
		usage.badRows.some(({ value }) => (value.item ?? item) === item) ||
		usage.problems.some(unsettlesRows) ||
		usageByItem(usage).of(item).length > 0 ||
		useOfSingleUse(unit, item, []) !== undefined ||
		// A product that no round is mixed from goes for nothing else.
		chlorine.rows.some(({ value }) => value.product === item)
	);
}

/** By lines and for single use together. */
function bothWays(byLines: Pair, single: Pair): Pair {
	const both = (part: keyof Pair) =>
		derive(useBothWays, {
			parts: gather(say`Use`, usageUnit, { lines: byLines[part], single: single[part] }),
		});
	return { expected: both("expected"), setAside: both("setAside") };
}

const useBothWays = total("use_both_ways", say`Use`, usageUnit);

/** What the use of one item follows from. */
export function useOfItem(
	unit: UnitFigures,
	item: string,
	days: Figure<RoundsOfDay[]>,
): UseFigures {
	const rows = usageByItem(unit.read.tables.usage).of(item);
	const rates = ratesOf(unit, (name) => name === item, rows);
	return useOf(unit, rates, days);
}

/** Mean use of one item over some days. */
export function expectedOfItem(unit: UnitFigures, item: string, over: OverDays): Figure {
	const lines = derive(useExpected, useOfItem(unit, item, over.rounds));
	const single = useOfSingleUse(unit, item, over.days);
	if (!single) return lines;
	const parts = { lines, single: derive(useExpected, single) };
	return derive(useBothWays, { parts: gather(say`Use`, usageUnit, parts) });
}

/** With thousands of items, each would search all lines for its own. */
const usageByItem = memoizeByObject(({ rows }: ReadTable<UsageRow>) => {
	const byItem = new Grouped<string, GoodRow<UsageRow>>();
	for (const row of rows) byItem.add(row.value.item, row);
	return byItem;
});

/** Most items that are named; all have a dash in their rows. */
const MOST_NAMED = 5;

/** One advice for all items that nothing is said of. */
export const useNotSaid = memoizeByObject((unit: UnitFigures) => {
	const items = unit.read.tables.items.rows
		.map(({ value }) => value.item)
		.filter((item) => !isUseKnown(unit, item));
	const more = items.length > MOST_NAMED ? ["…"] : [];
	const named = items.slice(0, MOST_NAMED).map((item) => say`"${item}"`);
	const names = [...named, ...more].join(", ");
	return refusedFigure(
		usageLabel,
		usageUnit,
		noUsageLine,
		advice(noUsageLine, {
			code: "use-not-listed",
			received: say`no line`,
			allowed: say`a line for each item, with 0 where none goes`,
			message: say`No line of “${usageSheet.title}” says how much goes of ${names}: what the plan uses of that is not known, and a dash stands for it.`,
		}),
	);
});

/** What the use of some items follows from, each with where it came from. */
export type UseFigures = { readonly [K in keyof UseInputs]: Figure<UseInputs[K]> };

/** @param rows the lines of usage.csv that are wanted */
function ratesOf(
	unit: UnitFigures,
	wanted: (item: string) => boolean,
	rows: readonly GoodRow<UsageRow>[],
): Figure<Rates> {
	return ratesOfUsage(unit, usageLines(unit, wanted, rows));
}

/** Use by the rates of some items over some days. */
export function useOf(
	unit: UnitFigures,
	rates: Figure<Rates>,
	days: Figure<RoundsOfDay[]>,
): UseFigures {
	const descaleEvery = unit.read.settings.descale_every_rounds;
	return { rates, days, loads: unit.loads, descaleEvery };
}

/** What is expected of a use, and what is set aside. */
export function useOver(use: UseFigures, confidence: Figure): Pair {
	return {
		expected: derive(useExpected, use),
		setAside: derive(useSetAside, { ...use, confidence }),
	};
}
