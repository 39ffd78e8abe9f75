import { type Figure, refusedFigure, typedFigure } from "../../calculation.ts";
import { firstReasons } from "../../outcome.ts";
import { type Problem, problem } from "../../problem.ts";
import type { GoodRow, ReadTable } from "../../read/goodRow.ts";
import { say } from "../../say.ts";
import { type KindsRow, kindsSheet } from "../../sheets/kinds.ts";
import { type KitsRow, kitsSheet } from "../../sheets/kits.ts";

/** How many pieces belong to a kit of each kind. @param counted which of them are counted; all where left out */
export function piecesByKind(
	kinds: ReadTable<KindsRow>,
	counted: (row: KindsRow) => boolean = () => true,
): Map<string, number> {
	const counts = new Map<string, number>();
	for (const { value } of kinds.rows)
		counts.set(value.kind, (counts.get(value.kind) ?? 0) + (counted(value) ? value.count : 0));
	return counts;
}

/**
 * Pieces by which a kit of a kind is checked: 0 where nothing is listed, undefined where a line that
 * may be of its list cannot be read, because a kit without the piece of that line must not pass.
 */
export function piecesToCheck(kinds: ReadTable<KindsRow>): (kind: string) => number | undefined {
	const counts = piecesByKind(kinds);
	const unread = new Set(kinds.badRows.map(({ value }) => value.kind));
	return (kind) =>
		unread.has(kind) || unread.has(undefined) ? undefined : (counts.get(kind) ?? 0);
}

/**
 * Pieces of a kit that are washed, counted and dried: the longest list among the
 * kinds wanted, so that where kinds differ nothing runs short.
 *
 * @param isKept not thrown away after a use
 */
export function piecesOfKinds(
	kits: ReadTable<KitsRow>,
	kinds: ReadTable<KindsRow>,
	wanted: (kind: string) => boolean,
	isKept: (row: KindsRow) => boolean,
): Figure<number> {
	const label = say`Pieces in a kit`;
	const unit = say`pieces`;
	const place = { file: kindsSheet.file, line: null, column: "count" };
	const bad = [kits, kinds].flatMap((table) => table.badRows.flatMap((row) => row.problems));
	if (bad.length > 0) return refusedFigure(label, unit, place, ...firstReasons(bad));
	const counts = piecesByKind(kinds, isKept);
	const owned = kits.rows.filter(({ value }) => wanted(value.kind));
	const unknown = owned.filter(({ value }) => !counts.has(value.kind));
	if (unknown.length > 0)
		return refusedFigure(
			label,
			unit,
			place,
			...firstReasons(unknown.map((row) => unknownKind(row, counts))),
		);
	const named =
		owned.length > 0 ? owned.map(({ value }) => value.kind) : [...counts.keys()].filter(wanted);
	if (named.length > 0)
		return typedFigure(label, unit, Math.max(...named.map((kind) => counts.get(kind) ?? 0)), place);
	return refusedFigure(
		label,
		unit,
		place,
		problem(place, {
			code: "no-kinds",
			received: say`no kinds of kit`,
			allowed: say`at least one kind with its pieces`,
			message: say`No kind of kit is listed with its pieces, so what goes for each piece is not known.`,
		}),
	);
}

function unknownKind(
	{ line, value }: GoodRow<KitsRow>,
	counts: ReadonlyMap<string, number>,
): Problem {
	return problem(
		{ file: kitsSheet.file, line, column: "kind" },
		{
			code: "unknown-kind",
			received: value.kind,
			allowed: [...counts.keys()].join(", ") || say`a kind listed with its pieces`,
			message: say`The kind "${value.kind}" is not listed under kinds of kit, so its pieces are not known.`,
		},
	);
}
