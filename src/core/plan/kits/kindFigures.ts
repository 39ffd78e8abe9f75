import { defaultFigure, type Figure, refusedFigure } from "../../calculation.ts";
import type { MethodsOfKits } from "../../methods/methodsOfKits.ts";
import { valueIn } from "../../outcome.ts";
import { type Problem, problem } from "../../problem.ts";
import { cellFigure, givenFigure } from "../../read/cellFigure.ts";
import type { BadRow, GoodRow } from "../../read/goodRow.ts";
import { listFigure } from "../../read/listFigure.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import type { KindsRow } from "../../sheets/kinds.ts";
import { type KindUseRow, kindUseSheet } from "../../sheets/kindUse.ts";
import type { KitsRow } from "../../sheets/kits.ts";
import { readyLifeDaysOf } from "../methods/readyLifeDaysOf.ts";
import { treatedKits } from "../methods/treatedKits.ts";
import { piecesOfKinds } from "./piecesOfKinds.ts";

/** A kind of kit with its own demand and its own kits. */
export interface KindFigures {
	/** "" where all kits are of one sort and share one figure. */
	readonly name: string;
	readonly usesPer100Births: Figure;
	readonly kitsInService: Figure;
	readonly piecesInKit: Figure;
	/** Beds that have one beside them, and the spares beyond those. */
	readonly deliveryBeds: Figure;
	readonly spareKits: Figure;
	readonly treated: Figure<MethodsOfKits>;
	/** Days that a ready kit may be used. */
	readonly readyLifeDays: Figure;
}

/** The names of the kinds planned for apart; one "" where all kits share one figure. */
export function kindNames({ tables: { kindUse } }: ReadWorkbook): string[] {
	const names = [...kindUse.rows, ...kindUse.badRows].map(({ value }) => value.kind ?? "");
	return names.length > 0 ? names : [""];
}

/** The kinds that the unit plans for apart; a single nameless one where no uses by kind are given. */
/** @param usesPer100Births where all kits are alike */
export function kindFigures(
	read: ReadWorkbook,
	usesPer100Births: Figure,
	mayServe: (kit: KitsRow) => boolean,
): KindFigures[] {
	const { kindUse, kits, kinds } = read.tables;
	const inService = (wanted: (kind: string) => boolean) =>
		listFigure(
			say`Kits in service`,
			say`kits`,
			kits,
			(rows) => rows.filter(({ value }) => wanted(value.kind) && mayServe(value)).length,
		);
	if (kindUse.rows.length === 0 && kindUse.badRows.length === 0)
		return [
			{
				name: "",
				usesPer100Births,
				kitsInService: inService(() => true),
				piecesInKit: piecesOfKinds(kits, kinds, () => true, isKept(read, "")),
				deliveryBeds: read.settings.delivery_beds,
				spareKits: read.settings.spare_kits,
				...treatedAs(read, ""),
			},
		];
	const most = mostUsed(kindUse.rows);
	return [...kindUse.rows, ...kindUse.badRows].map((row) => {
		const name = row.value.kind ?? "";
		const { label, unit } = kindUseSheet.columns.uses_per_100_births;
		const place = { file: kindUseSheet.file, line: row.line, column: "uses_per_100_births" };
		return {
			name,
			usesPer100Births:
				"problems" in row
					? refusedFigure(label, unit, place, ...row.problems)
					: cellFigure(kindUseSheet, row, "uses_per_100_births"),
			kitsInService: inService((kind) => kind === name),
			piecesInKit: piecesOfKinds(kits, kinds, (kind) => kind === name, isKept(read, name)),
			...standsBeside(read, row, name === most),
			...treatedAs(read, name),
		};
	});
}

/** How a kind's kits are treated, and how long they then stay ready. */
function treatedAs(
	read: ReadWorkbook,
	kind: string,
): Pick<KindFigures, "treated" | "readyLifeDays"> {
	const treated = treatedKits(read, kind);
	return { treated, readyLifeDays: readyLifeDaysOf(read.settings, valueIn(treated)) };
}

/** Whether a piece of these kits is not for single use; where that is not known it counts as kept. */
export function isKept(read: ReadWorkbook, kinds: string): (row: KindsRow) => boolean {
	const { pieces = [] } = valueIn(treatedKits(read, kinds)) ?? {};
	const thrown = pieces.filter(({ method }) => method === "single_use");
	return ({ kind, piece }) => !thrown.some((one) => one.kind === kind && one.piece === piece);
}

/** The kind that most births use; of several the first listed. */
function mostUsed(rows: readonly GoodRow<KindUseRow>[]): string | undefined {
	return rows.reduce<GoodRow<KindUseRow> | undefined>(
		(most, row) =>
			most && most.value.uses_per_100_births >= row.value.uses_per_100_births ? most : row,
		undefined,
	)?.value.kind;
}

/** As the kind's own row says; left blank, all beds have the kind that most births use, and spares are as in the settings. */
function standsBeside(
	{ settings }: ReadWorkbook,
	row: GoodRow<KindUseRow> | BadRow<KindUseRow>,
	isMostUsed: boolean,
): Pick<KindFigures, "deliveryBeds" | "spareKits"> {
	const own = (column: "beds" | "spares") =>
		"problems" in row ? undefined : givenFigure(kindUseSheet, row, column);
	const { label, unit } = kindUseSheet.columns.beds;
	const place = { file: kindUseSheet.file, line: row.line, column: "beds" };
	const none = defaultFigure(label, unit, 0, place);
	return {
		deliveryBeds: own("beds") ?? (isMostUsed ? settings.delivery_beds : none),
		spareKits: own("spares") ?? settings.spare_kits,
	};
}

/** Kits of a kind for which no uses are given: they would be left out of the plan without a word. */
export function kindsWithoutUse({ tables }: ReadWorkbook): Problem[] {
	const { kindUse, kits } = tables;
	const planned = new Set([...kindUse.rows, ...kindUse.badRows].map((row) => row.value.kind));
	if (planned.size === 0) return [];
	return kits.rows
		.filter(({ value }) => !planned.has(value.kind))
		.map(({ value, line }) =>
			problem(
				{ file: "kits.csv", line, column: "kind" },
				{
					code: "kind-without-use",
					received: value.kind,
					allowed: say`a kind listed in ${kindUseSheet.file}`,
					message: say`Kit ${value.kit} is of the kind "${value.kind}", for which no uses per 100 births are given; it is not planned for.`,
				},
			),
		);
}
