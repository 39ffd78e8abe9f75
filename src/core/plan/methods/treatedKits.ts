import { derive, type Figure, gather, typedFigure } from "../../calculation.ts";
import { type MethodsOfKits, methodsOfKits } from "../../methods/methodsOfKits.ts";
import { listFigure } from "../../read/listFigure.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { kindsSheet } from "../../sheets/kinds.ts";
import { byName } from "../kits/together.ts";

/**
 * How the kits of a kind are treated.
 *
 * A piece that cannot be read matters only where pieces go different ways.
 *
 * @param kind "" for all kits together
 */
export function treatedKits(
	{ settings, tables }: ReadWorkbook,
	kind: string,
): Figure<MethodsOfKits> {
	const { kinds, kits, treatments } = tables;
	const owned = new Set(kits.rows.map(({ value }) => value.kind));
	const listed = new Set(kinds.rows.map(({ value }) => value.kind));
	const all = owned.size > 0 ? owned : listed;
	const place = { file: kindsSheet.file, line: null, column: "piece" };
	const pieces = kinds.rows.map(({ value }) => value);
	const label = say`Pieces in a kit`;
	const alike = treatments.rows.length === 0 && treatments.badRows.length === 0;
	return derive(methodsOfKits, {
		kinds: typedFigure(say`Kinds of kit`, "", kind === "" ? [...all] : [kind], place),
		pieces: alike
			? typedFigure(label, say`pieces`, pieces, place)
			: listFigure(label, say`pieces`, kinds, () => pieces),
		treatments: listFigure(say`How pieces are treated`, "", treatments, (rows) =>
			rows.map(({ value }) => value),
		),
		method: settings.method,
	});
}

/** The same of each kind planned for. */
export function treatedByKind(
	read: ReadWorkbook,
	kinds: readonly string[],
): Figure<MethodsOfKits[]> {
	const each = kinds.map((name) => ({ name, treated: treatedKits(read, name) }));
	return gather(
		say`How the pieces are treated`,
		"",
		byName(each, ({ treated }) => treated),
	);
}
