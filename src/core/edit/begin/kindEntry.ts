import { say } from "../../say.ts";
import { chlorineSheet } from "../../sheets/chlorine.ts";
import { itemsSheet } from "../../sheets/items.ts";
import { lotsSheet } from "../../sheets/lots.ts";
import { withRow } from "../withRow.ts";
import type { BeginEntry } from "./beginEntry.ts";
import { isMixedBy } from "./isMixedBy.ts";
import { byForm, type Form, productOf } from "./productOf.ts";

/** Form and what the label counts, as one choice; its value is the two words of chlorine.csv. */
export const kinds: readonly (readonly [value: string, words: string, unit: string])[] = [
	["liquid pct_w_v", say`Liquid, label in % available chlorine`, say`% (g in 100 mL)`],
	["liquid pct_naocl_w_v", say`Liquid, label in % sodium hypochlorite`, say`% (g in 100 mL)`],
	["liquid chlorometric_degree", say`Liquid, label in chlorometric degrees`, say`degrees`],
	["liquid g_per_l", say`Liquid, label in grams of available chlorine per litre`, "g/L"],
	["powder pct_w_w", say`Powder, label in % available chlorine`, "%"],
	["tablet g_per_tablet", say`Tablets, label in grams of available chlorine each`, say`g/tablet`],
];

export const CHOOSE_KIND_FIRST = say`Choose the kind of chlorine product first.`;

/** Which chlorine product the unit uses. A name that the unit gave it stays. */
export const kindEntry: BeginEntry = {
	isAsked: isMixedBy,
	key: "product-kind",
	label: say`Chlorine product in use`,
	help: say`Look at the label. Where it does not say what its % counts, take sodium hypochlorite: the solution is then up to 5 % stronger than meant, never weaker for it.`,
	options: kinds.map(([value, words]) => [value, words] as const),
	unit: () => "",
	allowed: () => say`one of the list`,
	read(workbook) {
		const { cell, form, strengthMeasure } = productOf(workbook);
		return [form ?? cell("form"), strengthMeasure ?? cell("strength_measure")].join(" ").trim();
	},
	write(workbook, text) {
		if (!kinds.some(([value]) => value === text))
			return text === this.read(workbook) && text !== "" ? workbook : CHOOSE_KIND_FIRST;
		const [form, measure] = text.split(" ") as [Form, string];
		const at = productOf(workbook);
		const isOurs = at.name === "" || Object.values(byForm).some(({ name }) => name === at.name);
		const name = isOurs ? byForm[form].name : at.name;
		const cells = { product: name, form, strength_measure: measure, in_use: "yes" };
		const listed = withRow(workbook, chlorineSheet.file, cells, at.row);
		// A measure that the unit chose for this form stays.
		const measured = at.form === form && at.hasItem ? {} : { measure: byForm[form].measure };
		const item = withRow(listed, itemsSheet.file, { item: name, ...measured }, at.itemRow);
		return at.lots.reduce((book, lot) => withRow(book, lotsSheet.file, { item: name }, lot), item);
	},
};
