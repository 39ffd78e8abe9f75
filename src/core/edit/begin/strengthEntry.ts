import { say } from "../../say.ts";
import { chlorineSheet } from "../../sheets/chlorine.ts";
import { wrongFor } from "../notAllowed.ts";
import { withRow } from "../withRow.ts";
import type { BeginEntry } from "./beginEntry.ts";
import { isMixedBy } from "./isMixedBy.ts";
import { CHOOSE_KIND_FIRST, kindEntry, kinds } from "./kindEntry.ts";
import { productOf } from "./productOf.ts";

const { product, strength } = chlorineSheet.columns;

export const strengthEntry: BeginEntry = {
	isAsked: isMixedBy,
	key: "strength",
	label: strength.label,
	help: say`The number on the label. For tablets: grams of available chlorine in one tablet, not its weight.`,
	unit(workbook) {
		const kind = kindEntry.read(workbook);
		return kinds.find(([value]) => value === kind)?.[2] ?? "";
	},
	allowed: () => strength.value.allowed,
	read: (workbook) => productOf(workbook).cell("strength"),
	write(workbook, text) {
		const wrong = wrongFor(strength, text);
		if (wrong !== undefined) return wrong;
		const { row, name } = productOf(workbook);
		if (!product.value.schema.safeParse(name).success) return CHOOSE_KIND_FIRST;
		return withRow(workbook, chlorineSheet.file, { strength: text.trim() }, row);
	},
};
