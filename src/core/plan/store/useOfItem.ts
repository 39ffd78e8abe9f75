import { derive, type Figure, nameFigure, refusedFigure, typedFigure } from "../../calculation.ts";
import { memoizeByObject } from "../../memoize.ts";
import { firstReasons } from "../../outcome.ts";
import { problem } from "../../problem.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { RoundsOfDay } from "../../rounds/roundsOfDay.ts";
import { say } from "../../say.ts";
import { type ItemGroup, itemsSheet } from "../../sheets/items.ts";
import { type UsageRow, usageSheet } from "../../sheets/usage.ts";
import { type Rates, ratesOfItem } from "../../stock/ratesOfItem.ts";
import type { UseInputs } from "../../stock/useInputs.ts";
import { isCounted, wholePieces } from "../../stock/wholePieces.ts";
import type { Pair } from "../countFigures.ts";
import type { UnitFigures } from "../unitFigures.ts";
import { expectedByDay, setAsideByDay } from "./setAsideByDay.ts";

const usageLabel = say`What is used up`;
const usageUnit = say`in the item's measure`;
/** Where nothing goes by the piece, the kinds' lists of pieces do not matter. */
const noPieces = ({ kinds }: UnitFigures) =>
	nameFigure(
		say`Pieces in a kit of each kind`,
		kinds.map(() => 0),
	);

/** Use of one item over some days, by its lines in usage.csv; in whole pieces where it is counted so. */
export function itemOver(
	unit: UnitFigures,
	item: string,
	days: Figure<RoundsOfDay[]>,
	confidence: Figure,
): Pair {
	const { expected, setAside } = useOver(useOfItem(unit, item, days), confidence);
	const row = unit.read.tables.items.rows.find(({ value }) => value.item === item);
	const parts = setAside.outcome.ok && !Number.isInteger(setAside.outcome.value);
	const counted = row !== undefined && parts && isCounted(row.value.measure);
	return { expected, setAside: counted ? derive(wholePieces, { use: setAside }) : setAside };
}

/** What the use of one item follows from. */
export function useOfItem(
	unit: UnitFigures,
	item: string,
	days: Figure<RoundsOfDay[]>,
): UseFigures {
	const rates = ratesOf(unit, (name) => name === item);
	return useOf(unit, rates, days);
}

/** Use of all items of a group together. */
export function groupOver(unit: UnitFigures, group: ItemGroup, days: Figure<RoundsOfDay[]>): Pair {
	const use = useOf(unit, ratesOfGroups(unit)[group], days);
	return useOver(use, unit.read.settings.plan_confidence);
}

/** The same on every day. */
const ratesOfGroups = memoizeByObject((unit: UnitFigures): Record<ItemGroup, Figure<Rates>> => {
	const { rows } = unit.read.tables.items;
	const rates = (group: ItemGroup) => {
		const items = rows.filter(({ value }) => value.group === group);
		const names = new Set(items.map(({ value }) => value.item));
		return ratesOf(unit, (name) => names.has(name));
	};
	return { gauze: rates("gauze"), gloves: rates("gloves"), other: rates("other") };
});

/** The lines of some items; a line that cannot be read, of those items or of no known one, leaves them without use. */
function linesOf(
	unit: UnitFigures,
	wanted: (item: string) => boolean,
): Figure<readonly UsageRow[]> {
	const { usage, items } = unit.read.tables;
	const place = { file: usageSheet.file, line: null, column: "quantity" };
	const bad = [
		...usage.badRows.filter(({ value }) => value.item === undefined || wanted(value.item)),
		...items.badRows.filter(({ value }) => value.item === undefined || wanted(value.item)),
	]
		.flatMap((row) => row.problems)
		.concat([...usage.problems, ...items.problems].filter((p) => p.weight === "error"));
	if (bad.length > 0) return refusedFigure(usageLabel, usageUnit, place, ...firstReasons(bad));
	const lines = usage.rows.filter(({ value }) => wanted(value.item)).map(({ value }) => value);
	return typedFigure(usageLabel, usageUnit, lines, place);
}

type UseFigures = { readonly [K in keyof UseInputs]: Figure<UseInputs[K]> };

function ratesOf(unit: UnitFigures, wanted: (item: string) => boolean): Figure<Rates> {
	const usage = linesOf(unit, wanted);
	const byPiece = usage.outcome.ok && usage.outcome.value.some((row) => row.basis === "piece");
	return derive(ratesOfItem, {
		usage,
		workers: unit.read.settings.workers_per_round,
		piecesInKits: byPiece ? unit.piecesInKits : noPieces(unit),
	});
}

function useOf(unit: UnitFigures, rates: Figure<Rates>, days: Figure<RoundsOfDay[]>): UseFigures {
	const descaleEvery = unit.read.settings.descale_every_rounds;
	return { rates, days, kitsInLoad: unit.kitsInLoad, descaleEvery };
}

function useOver(use: UseFigures, confidence: Figure): Pair {
	return {
		expected: derive(expectedByDay, use),
		setAside: derive(setAsideByDay, { ...use, confidence }),
	};
}

/** Lines of usage.csv whose item is not in the store's list. */
export function unknownItems({ usage, items }: UnitFigures["read"]["tables"]) {
	const known = new Set([...items.rows, ...items.badRows].map(({ value }) => value.item));
	return usage.rows
		.filter(({ value }) => !known.has(value.item))
		.map(({ line, value }: GoodRow<UsageRow>) =>
			problem(
				{ file: usageSheet.file, line, column: "item" },
				{
					code: "unknown-item",
					received: value.item,
					allowed: say`an item listed in ${itemsSheet.file}`,
					message: say`"${value.item}" is not among the items of the store, so its use is not planned.`,
				},
			),
		);
}
