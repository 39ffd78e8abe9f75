import type { Method } from "../../methods/method.ts";
import { type MethodsOfKits, methodsOfKits } from "../../methods/methodsOfKits.ts";
import { valueIn } from "../../outcome.ts";
import { type ReadWorkbook, readWorkbook } from "../../read/readWorkbook.ts";
import { textsOf } from "../../read/textsOf.ts";
import { Refusal } from "../../refusal.ts";
import { itemsSheet } from "../../sheets/items.ts";
import { usageSheet } from "../../sheets/usage.ts";
import { type ProposedUse, proposedUses } from "../../stock/proposedUses.ts";
import { vinegarPerDescale } from "../../vinegar/vinegarPerDescale.ts";
import type { Workbook } from "../../workbook.ts";
import { withRow } from "../withRow.ts";

/** What to propose that a round uses, by the unit's methods, with soap and vinegar by its settings. */
export function usesFor(workbook: Workbook): readonly ProposedUse[] {
	const read = readWorkbook(workbook);
	const { settings } = read;
	const used = methodsIn(read);
	const bathLitres = valueIn(settings.descale_fill_litres);
	const wantedAcidPct = valueIn(settings.descale_acid_pct);
	const vinegarAcidPct = valueIn(settings.vinegar_acid_pct);
	const descales = (valueIn(settings.descale_every_rounds) ?? 0) > 0;
	const vinegar =
		descales && bathLitres && wantedAcidPct && vinegarAcidPct
			? vinegarPerDescale.compute({ bathLitres, wantedAcidPct, vinegarAcidPct })
			: undefined;
	const isMixed = used.includes("chlorine") || (valueIn(settings.wipe_solution_litres) ?? 0) > 0;
	const soapyLitres = valueIn(settings.soapy_water_litres) ?? 0;
	return proposedUses(used, isMixed, soapyLitres, vinegar instanceof Refusal ? undefined : vinegar);
}

/** By which methods the pieces of the kits listed go. */
function methodsIn({ settings, tables }: ReadWorkbook): readonly Method[] {
	const pieces = tables.kinds.rows.map(({ value }) => value);
	const owned = tables.kits.rows.map(({ value }) => value.kind);
	const treated = methodsOfKits.compute({
		kinds: [...new Set(owned.length > 0 ? owned : pieces.map(({ kind }) => kind))],
		pieces,
		treatments: tables.treatments.rows.map(({ value }) => value),
		method: valueIn(settings.method) ?? "chlorine",
	});
	return (treated as MethodsOfKits).methods;
}

/** Whether anything is said of what is used up; what is there is never replaced. */
export function hasUses(workbook: Workbook): boolean {
	const usage = textsOf(workbook, usageSheet);
	return usage.rows.some((row) => row.some((cell) => cell.trim() !== ""));
}

/** Says that no use is taken. */
const NONE = "-";

/** The choice of some uses as text: place in the proposal and quantity of each that is taken. */
export function choiceOf(quantities: readonly (readonly [at: number, quantity: string])[]): string {
	return quantities.map(([at, quantity]) => `${at}:${quantity.trim()}`).join(" ") || NONE;
}

/** The workbook with the uses taken, as lines of usage.csv and items of the store. @param choice absent: all as proposed */
export function withUsesTaken(workbook: Workbook, choice?: string): Workbook {
	if (hasUses(workbook)) return workbook;
	const proposed = usesFor(workbook);
	const taken = choice === undefined ? proposed : chosen(proposed, choice);
	return taken.reduce((book, { item, group, measure, basis, quantity, note, source }) => {
		const known = textsOf(book, itemsSheet);
		const isKnown = known.rows.some((row) => known.cell(row, "item").trim() === item);
		const listed = isKnown ? book : withRow(book, itemsSheet.file, { item, group, measure });
		return withRow(listed, usageSheet.file, {
			item,
			basis,
			quantity: usageSheet.columns.quantity.value.write(quantity),
			note: `${note} (${source.title})`,
		});
	}, workbook);
}

function chosen(proposed: readonly ProposedUse[], choice: string): ProposedUse[] {
	return choice.split(" ").flatMap((each) => {
		const [at, text] = each.split(":");
		const use = proposed[Number(at)];
		const quantity = usageSheet.columns.quantity.value.schema.safeParse(text);
		return use && quantity.success ? [{ ...use, quantity: quantity.data }] : [];
	});
}
