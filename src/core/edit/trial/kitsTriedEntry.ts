import { textsOf } from "../../read/textsOf.ts";
import { say } from "../../say.ts";
import { kitsSheet } from "../../sheets/kits.ts";
import { withTable } from "../../workbook.ts";
import type { BeginEntry } from "../begin/beginEntry.ts";
import { countOfKits, isInService, kitsEntry } from "../begin/kitsEntry.ts";

/** How many kits are in service, more or fewer; of a kit that is taken out nothing is lost. */
export const kitsTriedEntry: BeginEntry = {
	...kitsEntry,
	// Not all that are listed can count: pieces may be missing.
	label: say`Kits listed as in service`,
	help: say`More: new kits get a row each. Fewer: the last in the list are marked out of service and keep their rows.`,
	write(workbook, text) {
		const written = kitsEntry.write(workbook, text);
		const wanted = countOfKits.schema.safeParse(text);
		if (typeof written !== "string" || !wanted.success) return written;
		const kits = textsOf(workbook, kitsSheet);
		let left = wanted.data;
		const rows = kits.rows.map((row) => {
			const isIn = isInService(kits.cell(row, "status"));
			return !isIn || left-- > 0 ? row : kits.row(row, { status: "out_of_service" });
		});
		return withTable(workbook, kitsSheet.file, { header: kits.header, rows });
	},
};
