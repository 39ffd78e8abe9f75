import { textsOf } from "../../read/textsOf.ts";
import { say } from "../../say.ts";
import { kindsSheet } from "../../sheets/kinds.ts";
import { kitsSheet } from "../../sheets/kits.ts";
import { number } from "../../values/number.ts";
import { type Workbook, withTable } from "../../workbook.ts";
import { meaning } from "../meaning.ts";
import { notAllowed } from "../notAllowed.ts";
import type { BeginEntry } from "./beginEntry.ts";

const LABEL = say`Kits in service`;
const MOST_KITS = 100;
export const countOfKits = number({ min: 1, max: MOST_KITS, whole: true });

/** How many kits the unit has: each gets its row in the register, named K1, K2 … A kit of which more is known is never taken away. */
export const kitsEntry: BeginEntry = {
	key: "kits",
	label: LABEL,
	help: say`Complete kits of bag, masks and suction that the unit can use. Each gets a row of its own, K1, K2 and so on; rename them as they are marked. Leave it open while there is none.`,
	unit: () => say`kits`,
	allowed: () => countOfKits.allowed,
	read(workbook) {
		const kits = inService(workbook);
		return kits.length === 0 ? "" : String(kits.length);
	},
	write(workbook, text) {
		const wanted = countOfKits.schema.safeParse(text);
		if (!wanted.success) return notAllowed(LABEL, text, countOfKits.allowed);
		const kits = textsOf(workbook, kitsSheet);
		const more = wanted.data - inService(workbook).length;
		if (more === 0) return workbook;
		if (more > 0)
			return withTable(workbook, kitsSheet.file, {
				header: kits.header,
				rows: [...kits.rows, ...fresh(workbook, more)],
			});
		const bare = new Set(
			inService(workbook)
				.filter((row) => isBare(workbook, row))
				.slice(more),
		);
		if (bare.size < -more)
			return say`More kits than that are listed with their dates or notes: delete a row, or take a kit out of service, in the sheet “${kitsSheet.title}”.`;
		return withTable(workbook, kitsSheet.file, {
			header: kits.header,
			rows: kits.rows.filter((row) => !bare.has(row)),
		});
	},
};

/** Whether a kit of this status is in service, in whatever words it stands there. */
export function isInService(status: string): boolean {
	return meaning(kitsSheet.columns.status, status) === "in_service";
}

function inService(workbook: Workbook): (readonly string[])[] {
	const kits = textsOf(workbook, kitsSheet);
	return kits.rows.filter((row) => isInService(kits.cell(row, "status")));
}

/** Of a bare row nothing is known but what this entry wrote. */
function isBare(workbook: Workbook, row: readonly string[]): boolean {
	const kits = textsOf(workbook, kitsSheet);
	const more = kits.header.filter((key) => !["kit", "kind", "status"].includes(key));
	return more.every((key) => kits.cell(row, key).trim() === "");
}

function fresh(workbook: Workbook, howMany: number): string[][] {
	const kits = textsOf(workbook, kitsSheet);
	const kinds = textsOf(workbook, kindsSheet);
	const names = new Set(kits.rows.map((row) => kits.cell(row, "kit").trim()));
	const kind =
		kits.rows.map((row) => kits.cell(row, "kind").trim()).find(Boolean) ??
		kinds.rows.map((row) => kinds.cell(row, "kind").trim()).find(Boolean) ??
		say`Newborn resuscitation kit`;
	const free = Array.from({ length: names.size + howMany }, (_, i) => `K${i + 1}`)
		.filter((name) => !names.has(name))
		.slice(0, howMany);
	return free.map((kit) => kits.row(undefined, { kit, kind, status: "in_service" }));
}
