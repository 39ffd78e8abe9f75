import { say } from "../../say.ts";
import { itemsSheet } from "../../sheets/items.ts";
import { lotsSheet } from "../../sheets/lots.ts";
import { mayBeThousand, readNumber, writeNumber } from "../../values/number.ts";
import { notAllowed, twoWays } from "../notAllowed.ts";
import { withRow } from "../withRow.ts";
import type { BeginEntry } from "./beginEntry.ts";
import { isMixedBy } from "./isMixedBy.ts";
import { CHOOSE_KIND_FIRST } from "./kindEntry.ts";
import { byForm, productOf } from "./productOf.ts";

const LABEL = say`In the store`;
/** "5 x 1000": packs times their size. */
const PACKS = /(.+?)[x×*](.+)/i;

/** How much of the product is on the shelf: a quantity, or packs times their size, which then is the pack for orders. */
export const inStoreEntry: BeginEntry = {
	isAsked: isMixedBy,
	key: "in-store",
	label: LABEL,
	help: say`What is on the shelf of the product in use. Packs times their size also says in what packs it is ordered.`,
	unit(workbook) {
		const { form, measure } = productOf(workbook);
		if (form === undefined) return "";
		return form === "tablet" ? say`tablets` : measure || byForm[form].measure;
	},
	allowed: () => say`a quantity from 0 on, or packs times their size, for example 5 x 1000`,
	read(workbook) {
		const { quantities, packSize } = productOf(workbook);
		const [only, ...others] = quantities;
		if (only === undefined || others.length > 0) return sumOf(quantities);
		const [total, size] = [readNumber(only) ?? Number.NaN, packSize ?? 1];
		if (size <= 1 || !Number.isInteger(total / size)) return only;
		return `${writeNumber(total / size)} x ${writeNumber(size)}`;
	},
	write(workbook, text) {
		const at = productOf(workbook);
		if (at.form === undefined || at.name === "") return CHOOSE_KIND_FIRST;
		if (text.trim() === this.read(workbook) && text.trim() !== "") return workbook;
		if (at.lots.length > 1)
			return say`${at.lots.length} lots are listed: change them in the sheet “${lotsSheet.title}”.`;
		const [, packs = text, size] = PACKS.exec(text) ?? [];
		const unclear = [packs, size ?? ""].find((part) => mayBeThousand(part));
		if (unclear !== undefined) return twoWays(LABEL, unclear);
		const [count, each] = [readNumber(packs), size === undefined ? 1 : readNumber(size)];
		const quantity = (count ?? Number.NaN) * (each ?? Number.NaN);
		const fits =
			lotsSheet.columns.quantity.value.schema.safeParse(String(quantity)).success &&
			itemsSheet.columns.pack_size.value.schema.safeParse(String(each)).success;
		if (!fits) return notAllowed(LABEL, text, this.allowed(workbook));
		const counted = withRow(
			workbook,
			lotsSheet.file,
			{
				item: at.name,
				quantity: writeNumber(quantity),
				...(at.lots.length === 0 ? { lot: say`First count` } : {}),
			},
			at.lotRow,
		);
		if (size === undefined) return counted;
		return withRow(counted, itemsSheet.file, { pack_size: writeNumber(each ?? 1) }, at.itemRow);
	},
};

function sumOf(quantities: readonly string[]): string {
	if (quantities.length === 0) return "";
	const sum = quantities.reduce((all, text) => all + (readNumber(text) ?? Number.NaN), 0);
	return Number.isNaN(sum) ? "" : writeNumber(sum);
}
