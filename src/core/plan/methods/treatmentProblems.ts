import { valueIn } from "../../outcome.ts";
import { advice, type Problem, problem } from "../../problem.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { itemsSheet } from "../../sheets/items.ts";
import { kindsSheet } from "../../sheets/kinds.ts";
import { treatmentsSheet } from "../../sheets/treatments.ts";
import { usageSheet } from "../../sheets/usage.ts";
import type { UnitFigures } from "../unitFigures.ts";

/** What is wrong with the ways that pieces go. */
export function treatmentProblems({ read, treated }: UnitFigures): Problem[] {
	const pieces = (valueIn(treated) ?? []).flatMap((kind) => kind.pieces);
	const thrown = pieces.filter(({ method }) => method === "single_use");
	return [
		...unknownPieces(read),
		...pieces.flatMap((piece) => forbidden(read, piece)),
		...[...new Set(thrown.map(({ piece }) => piece))].flatMap((piece) => ofSingleUse(read, piece)),
	];
}

/** A line for a kind or piece that no list of pieces has would silently do nothing. */
function unknownPieces({ tables: { treatments, kinds } }: ReadWorkbook): Problem[] {
	return treatments.rows
		.filter(
			({ value }) =>
				![...kinds.rows, ...kinds.badRows].some(
					(row) =>
						row.value.kind === value.kind &&
						(value.piece === null || row.value.piece === value.piece),
				),
		)
		.map(({ line, value }) =>
			problem(
				{ file: treatmentsSheet.file, line, column: value.piece === null ? "kind" : "piece" },
				{
					code: "unknown-piece",
					received: value.piece === null ? value.kind : `${value.kind}, ${value.piece}`,
					allowed: say`a kind and piece listed in ${kindsSheet.file}`,
					message:
						value.piece === null
							? say`No piece of the kind "${value.kind}" is listed, so how it is treated is not planned.`
							: say`The kind "${value.kind}" has no piece "${value.piece}", so how it is treated is not planned.`,
				},
			),
		);
}

type Piece = { readonly kind: string; readonly piece: string; readonly method: string };

/** A piece that the plan puts where its maker forbids it. */
function forbidden({ tables }: ReadWorkbook, { kind, piece, method }: Piece): Problem[] {
	return tables.kinds.rows
		.filter(
			({ value }) =>
				value.kind === kind &&
				value.piece === piece &&
				value.never_by.some((never) => never === method),
		)
		.map(({ line, value }) =>
			problem(
				{ file: kindsSheet.file, line, column: "never_by" },
				{
					code: "method-forbidden",
					received: method,
					allowed: say`a method that its maker does not forbid`,
					message: forbiddenWords(value.piece, method),
				},
			),
		);
}

function forbiddenWords(piece: string, method: string): string {
	switch (method) {
		case "chlorine":
			return say`${piece}: the plan puts it into chlorine, and its maker forbids that. Say under “${treatmentsSheet.title}” how it is treated instead.`;
		case "boiling":
			return say`${piece}: the plan boils it, and its maker forbids that. Say under “${treatmentsSheet.title}” how it is treated instead.`;
		case "steam":
			return say`${piece}: the plan steams it, and its maker forbids that. Say under “${treatmentsSheet.title}” how it is treated instead.`;
		case "autoclave":
			return say`${piece}: the plan sends it to the autoclave, and its maker forbids that. Say under “${treatmentsSheet.title}” how it is treated instead.`;
		default:
			return say`${piece}: the plan throws it away after each use, and that is said never to be. Say under “${treatmentsSheet.title}” how it is treated instead.`;
	}
}

/** A piece for single use is an item of the store, and its use is counted once. */
function ofSingleUse({ tables }: ReadWorkbook, piece: string): Problem[] {
	const listed = [...tables.items.rows, ...tables.items.badRows].some(
		({ value }) => value.item === piece,
	);
	if (!listed)
		return [
			problem(
				{ file: itemsSheet.file, line: null, column: "item" },
				{
					code: "single-use-not-listed",
					received: say`no item of this name`,
					allowed: piece,
					message: say`${piece} is for single use and goes with every kit used, but no item of the store has this name: list it, so that it is planned and ordered.`,
				},
			),
		];
	return tables.usage.rows
		.filter(({ value }) => value.item === piece && ["kit", "piece"].includes(value.basis))
		.map(({ line, value }) =>
			advice(
				{ file: usageSheet.file, line, column: "basis" },
				{
					code: "counted-twice",
					received: value.basis,
					allowed: "",
					message: say`${piece} is for single use, so a new one is planned for each kit used; this line counts it once more. Take the line out, unless more of it goes than that.`,
				},
			),
		);
}
