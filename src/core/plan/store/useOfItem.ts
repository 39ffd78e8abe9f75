import {
	derive,
	type Figure,
	gather,
	nameFigure,
	refusedFigure,
	typedFigure,
} from "../../calculation.ts";
import { Grouped } from "../../grouped.ts";
import { memoizeByObject } from "../../memoize.ts";
import { firstReasons } from "../../outcome.ts";
import { advice } from "../../problem.ts";
import type { GoodRow, ReadTable } from "../../read/goodRow.ts";
import { unsettlesRows } from "../../read/unsettlesRows.ts";
import type { RoundsOfDay } from "../../rounds/roundsOfDay.ts";
import { say } from "../../say.ts";
import type { ItemGroup, ItemsRow } from "../../sheets/items.ts";
import { type UsageRow, usageSheet } from "../../sheets/usage.ts";
import { type Rates, ratesOfItem } from "../../stock/ratesOfItem.ts";
import type { UseInputs } from "../../stock/useInputs.ts";
import { useExpected, useSetAside } from "../../stock/useSetAside.ts";
import { isCounted, wholePieces, wholePiecesOfGroup } from "../../stock/wholePieces.ts";
import { total } from "../../total.ts";
import type { Pair } from "../countFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { itemsByName } from "./itemsByName.ts";
import { type UsedDay, useOfSingleUse } from "./useOfSingleUse.ts";

const usageLabel = say`What is used up`;
const usageUnit = say`in the item's measure`;
const noLine = { file: usageSheet.file, line: null, column: "item" };
/** Where nothing goes by the piece, the kinds' lists of pieces do not matter. */
const noPieces = ({ kinds }: UnitFigures) =>
	nameFigure(
		say`Pieces in a kit of each kind`,
		kinds.map(() => 0),
	);

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

/** Use of all items of a group together; in whole pieces where all of them are counted so. */
export function groupOver(unit: UnitFigures, group: ItemGroup, days: Figure<RoundsOfDay[]>): Pair {
	const { rates, inParts } = groupsOf(unit)[group];
	const { expected, setAside } = useOver(
		useOf(unit, rates, days),
		unit.read.settings.plan_confidence,
	);
	return { expected, setAside: inParts ? derive(wholePiecesOfGroup, { use: setAside }) : setAside };
}

/** Without a line for it nothing is known of its use: a dash, never 0. The rest of the plan does not wait for it. */
const notKnown = refusedFigure(
	usageLabel,
	usageUnit,
	noLine,
	advice(noLine, {
		code: "use-not-known",
		received: say`no line`,
		allowed: say`a line for each kind of gauze`,
		message: say`No line of “${usageSheet.title}” says how much gauze goes each time, so none is planned.`,
	}),
);

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
		noLine,
		advice(noLine, {
			code: "use-not-listed",
			received: say`no line`,
			allowed: say`a line for each item, with 0 where none goes`,
			message: say`No line of “${usageSheet.title}” says how much goes of ${names}: what the plan uses of that is not known, and a dash stands for it.`,
		}),
	);
});

interface Group {
	readonly rates: Figure<Rates>;
	/** Whether parts of pieces go of what is counted in pieces. */
	readonly inParts: boolean;
}

/** The same on every day. */
const groupsOf = memoizeByObject((unit: UnitFigures): Record<ItemGroup, Group> => {
	const { rows } = unit.read.tables.items;
	const use = (group: ItemGroup): Group => {
		const items = rows.filter(({ value }) => value.group === group);
		const names = new Set(items.map(({ value }) => value.item));
		const lines = unit.read.tables.usage.rows.filter(({ value }) => names.has(value.item));
		const isOfGroup = (value: Partial<ItemsRow>) =>
			value.group === undefined || value.group === group;
		const usage = linesOf(unit, (name) => names.has(name), lines, isOfGroup);
		const isKnown = !usage.outcome.ok || usage.outcome.value.length > 0;
		return {
			rates: ratesOfLines(unit, isKnown ? usage : notKnown),
			inParts:
				items.every(({ value }) => isCounted(value.measure)) &&
				lines.some(({ value }) => !Number.isInteger(value.quantity)),
		};
	};
	return { gauze: use("gauze"), gloves: use("gloves"), other: use("other") };
});

/**
 * The lines of some items; a line that cannot be read, of those items or of no known one, leaves them without use.
 *
 * @param isOne whether an item of the store whose row cannot be read may be one of them
 */
function linesOf(
	unit: UnitFigures,
	wanted: (item: string) => boolean,
	rows: readonly GoodRow<UsageRow>[],
	isOne = ({ item }: Partial<ItemsRow>) => item === undefined || wanted(item),
): Figure<readonly UsageRow[]> {
	const { usage, items } = unit.read.tables;
	const place = { file: usageSheet.file, line: null, column: "quantity" };
	const bad = [
		...usage.badRows.filter(({ value }) => value.item === undefined || wanted(value.item)),
		...items.badRows.filter(({ value }) => isOne(value)),
	]
		.flatMap((row) => row.problems)
		.concat([...usage.problems, ...items.problems].filter(unsettlesRows));
	if (bad.length > 0) return refusedFigure(usageLabel, usageUnit, place, ...firstReasons(bad));
	return typedFigure(
		usageLabel,
		usageUnit,
		rows.map(({ value }) => value),
		place,
	);
}

type UseFigures = { readonly [K in keyof UseInputs]: Figure<UseInputs[K]> };

/** @param rows the lines of usage.csv that are wanted */
function ratesOf(
	unit: UnitFigures,
	wanted: (item: string) => boolean,
	rows: readonly GoodRow<UsageRow>[],
): Figure<Rates> {
	return ratesOfLines(unit, linesOf(unit, wanted, rows));
}

function ratesOfLines(unit: UnitFigures, usage: Figure<readonly UsageRow[]>): Figure<Rates> {
	const byPiece = usage.outcome.ok && usage.outcome.value.some((row) => row.basis === "piece");
	return derive(ratesOfItem, {
		usage,
		workers: unit.read.settings.workers_per_round,
		loads: unit.loads,
		piecesInKits: byPiece ? unit.piecesInKits : noPieces(unit),
	});
}

function useOf(unit: UnitFigures, rates: Figure<Rates>, days: Figure<RoundsOfDay[]>): UseFigures {
	const descaleEvery = unit.read.settings.descale_every_rounds;
	return { rates, days, loads: unit.loads, descaleEvery };
}

function useOver(use: UseFigures, confidence: Figure): Pair {
	return {
		expected: derive(useExpected, use),
		setAside: derive(useSetAside, { ...use, confidence }),
	};
}
