import { type Figure, refusedFigure, typedFigure } from "../calculation.ts";
import { problem } from "../problem.ts";
import { listFigure } from "../read/listFigure.ts";
import type { ReadTable } from "../read/readTable.ts";
import { type KindsRow, kindsSheet } from "../sheets/kinds.ts";
import { type KitsRow, kitsSheet } from "../sheets/kits.ts";

/** Kits of the register that are in service. */
export function kitsInService(kits: ReadTable<KitsRow>): Figure<number> {
	return listFigure("Kits in service", "kits", kits, (rows) => rows.filter(isInService).length);
}

function isInService({ value }: { value: KitsRow }): boolean {
	return value.status === "in_service";
}

/**
 * Pieces of a kit that are washed, counted and dried: the longest list among the
 * kinds in service, so that where kinds differ nothing runs short.
 */
export function piecesInKit(kits: ReadTable<KitsRow>, kinds: ReadTable<KindsRow>): Figure<number> {
	const label = "Pieces in a kit";
	const unit = "pieces";
	const place = { file: kindsSheet.file, line: null, column: "count" };
	const bad = [kits, kinds].flatMap((table) => table.badRows.flatMap((row) => row.problems));
	if (bad.length > 0) return refusedFigure(label, unit, place, ...bad);
	const counts = new Map<string, number>();
	for (const { value } of kinds.rows)
		counts.set(value.kind, (counts.get(value.kind) ?? 0) + value.count);
	const inService = kits.rows.filter(isInService);
	const unknown = inService.filter(({ value }) => !counts.has(value.kind));
	if (unknown.length > 0)
		return refusedFigure(
			label,
			unit,
			place,
			...unknown.map(({ line, value }) => unknownKind(line, value.kind, counts)),
		);
	const used = inService.length > 0 ? inService.map(({ value }) => value.kind) : [...counts.keys()];
	if (used.length > 0)
		return typedFigure(label, unit, Math.max(...used.map((kind) => counts.get(kind) ?? 0)), place);
	return refusedFigure(
		label,
		unit,
		place,
		problem(place, {
			code: "no-kinds",
			received: "no kinds of kit",
			allowed: "at least one kind with its pieces",
			message:
				"No kind of kit is listed with its pieces, so what goes for each piece is not known.",
		}),
	);
}

function unknownKind(line: number, kind: string, counts: ReadonlyMap<string, number>) {
	return problem(
		{ file: kitsSheet.file, line, column: "kind" },
		{
			code: "unknown-kind",
			received: kind,
			allowed: [...counts.keys()].join(", ") || "a kind listed with its pieces",
			message: `The kind "${kind}" is not listed under kinds of kit, so its pieces are not known.`,
		},
	);
}
