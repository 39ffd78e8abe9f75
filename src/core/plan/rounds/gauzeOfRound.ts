import { valueIn } from "../../outcome.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { soaks } from "../../rounds/loads.ts";
import { ratesOfItem } from "../../stock/ratesOfItem.ts";
import { useOfRound } from "../../stock/useOfRound.ts";
import { isKept } from "../kits/kindFigures.ts";
import { piecesOfKinds } from "../kits/piecesOfKinds.ts";

/** What is known of a round before it begins. */
export interface KnownRound {
	readonly kits: number;
	readonly loads: number;
	readonly descalings: number;
}

/** Gauze for one round, in whole pieces; undefined where something it follows from cannot be read. */
export function gauzeOfRound(read: ReadWorkbook, round: KnownRound): number | undefined {
	const { tables, settings } = read;
	const { items, usage, kits, kinds } = tables;
	const workers = valueIn(settings.workers_per_round);
	if (workers === undefined || items.badRows.length > 0 || usage.badRows.length > 0)
		return undefined;
	const gauze = new Set(
		items.rows.filter(({ value }) => value.group === "gauze").map(({ value }) => value.item),
	);
	const lines = usage.rows.map(({ value }) => value).filter(({ item }) => gauze.has(item));
	const pieces = valueIn(piecesOfKinds(kits, kinds, () => true, isKept(read, "")));
	if (pieces === undefined && lines.some(({ basis }) => basis === "piece")) return undefined;
	const piecesInKits = [pieces ?? 0];
	const rates = ratesOfItem.compute({ usage: lines, workers, piecesInKits, loads: soaks(1) });
	const use = useOfRound.compute({ rates: rates as never, ...round }) as number;
	return Math.ceil(Number(use.toFixed(6)));
}
