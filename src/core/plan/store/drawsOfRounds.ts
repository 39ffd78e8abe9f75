import { measureOut } from "../../chlorine/measureOut.ts";
import { memoizeByObject } from "../../memoize.ts";
import { valueIn } from "../../outcome.ts";
import type { GoodRow } from "../../read/goodRow.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { Refusal } from "../../refusal.ts";
import type { JournalRow } from "../../sheets/journal.ts";
import type { LotsRow } from "../../sheets/lots.ts";
import type { RoundsDoneRow } from "../../sheets/roundsDone.ts";
import { inMeasure } from "../../stock/inMeasure.ts";
import type { JournalEntry } from "../../stock/onHand.ts";
import { dosingFor } from "../chlorine/dosing.ts";
import { litresOfPreparation } from "../chlorine/litresOfPreparation.ts";
import { nameInUse } from "../chlorine/nameInUse.ts";
import { strengthOfLot } from "../chlorine/strengthOfLot.ts";
import { strengthOnLabel } from "../chlorine/strengthOnLabel.ts";
import { countsByNow } from "../countsByNow.ts";
import { plannedUnit } from "../plannedUnit.ts";
import { servedRounds } from "./servedRounds.ts";

/** What a round that was done took from a lot of the store. */
export interface Draw {
	/** Line of the round in its file. */
	readonly line: number;
	readonly lot: GoodRow<LotsRow>;
	/** In the item's measure. */
	readonly entry: JournalEntry & { readonly entry: "issue" };
}

/** Whether rounds draw their product, and not the journal. */
export function isDrawnByRounds({ settings }: ReadWorkbook): boolean {
	return valueIn(settings.product_drawn_by) === "rounds";
}

/** Every draw of a round that names a lot of the store; none where the unit issues by the journal. */
export const drawsOfRounds = memoizeByObject((read: ReadWorkbook): readonly Draw[] =>
	isDrawnByRounds(read) ? dosesOfRounds(read) : [],
);

/** What every round that names a lot of the store took from it, whoever writes that down. */
export const dosesOfRounds = memoizeByObject((read: ReadWorkbook): readonly Draw[] => {
	const served = servedRounds(read);
	return read.tables.roundsDone.rows.flatMap((row) =>
		served.has(row.line) ? [] : drawOf(read, row),
	);
});

/** Whether an entry issues what a round of that day has drawn: the item's day, looked up among those of the draws. */
export function isDrawnAlready(
	{ item, day, entry }: JournalRow,
	drawnDays: ReadonlySet<string>,
): boolean {
	return entry === "issue" && drawnDays.has(JSON.stringify([item, day]));
}

/** The items and days of some draws. */
export function drawnDaysOf(draws: readonly Draw[]): ReadonlySet<string> {
	return new Set(draws.map(({ lot, entry }) => JSON.stringify([lot.value.item, entry.day])));
}

/** Strength that is mixed, %: as the mixing sheets have it, which dose for the plan's fullest round; for one load where there is no plan. */
const mixedPct = memoizeByObject((read: ReadWorkbook): number | undefined => {
	const planned = plannedUnit(read);
	return valueIn((planned.ok ? planned.value.unit : dosingFor(read)).startPct);
});

/** The litres made at the strength that is mixed, by the lot's strength that day; without litres the dose of a preparation. */
function drawOf(read: ReadWorkbook, { line, value }: GoodRow<RoundsDoneRow>): Draw[] {
	const { settings, tables } = read;
	const name = value.product || nameInUse(tables);
	const product = tables.chlorine.rows.find((row) => row.value.product === name);
	const lot = tables.lots.rows.find(
		(row) => row.value.item === name && row.value.lot === value.lot,
	);
	const measure = tables.items.rows.find((row) => row.value.item === name)?.value.measure;
	if (!product || !lot || measure === undefined || !countsByNow(read, value.date)) return [];
	const labelled = { row: product, strength: strengthOnLabel(product) };
	const strength = valueIn(strengthOfLot(read, labelled, lot, value.date));
	const litres = value.litres ?? valueIn(litresOfPreparation(read));
	const targetPct = mixedPct(read);
	const stepMl = valueIn(settings.measure_step_ml);
	const stepGrams = valueIn(settings.measure_step_g);
	if (!strength || !litres || !targetPct || !stepMl || !stepGrams) return [];
	const dose = measureOut.compute({ strength, litres, targetPct, stepMl, stepGrams });
	if (dose instanceof Refusal) return [];
	const quantity = inMeasure.compute({ quantity: dose.quantity, from: dose.measure, to: measure });
	if (quantity instanceof Refusal) return [];
	return [{ line, lot, entry: { day: value.date, entry: "issue", quantity } }];
}
