import { calculation, derive, type Figure, gather, nameFigure } from "../../calculation.ts";
import { WIPE_LITRES } from "../../chlorine/wipeLitres.ts";
import { memoizeByObject } from "../../memoize.ts";
import type { MethodsOfKits } from "../../methods/methodsOfKits.ts";
import { valueIn } from "../../outcome.ts";
import type { ReadWorkbook } from "../../read/readWorkbook.ts";
import { say } from "../../say.ts";
import { estimate } from "../../source.ts";
import { total } from "../../total.ts";
import { kindNames } from "../kits/kindFigures.ts";
import { treatedByKind } from "../methods/treatedKits.ts";
import { isBlank } from "../water/stoveFigures.ts";

const preparationLitres = total("preparation_litres", say`Litres of a preparation`, "L");

const wipeByMethod = calculation<{ kinds: readonly MethodsOfKits[] }, number>({
	key: "wipe_by_method",
	label: say`Solution for wiping`,
	unit: "L",
	formula: say`Left blank: ${WIPE_LITRES} L where some piece goes into chlorine, else none.`,
	source: estimate,
	inputs: { kinds: { label: say`How the pieces are treated`, unit: "" } },
	example: { inputs: { kinds: [{ methods: ["boiling"], pieces: [] }] }, result: 0, within: 0 },
	compute: ({ kinds }) => (goIntoChlorine(kinds) ? WIPE_LITRES : 0),
});

function goIntoChlorine(kinds: readonly MethodsOfKits[]): boolean {
	return kinds.some(({ methods }) => methods.includes("chlorine"));
}

/** Litres of one preparation: the soak, where some piece goes into chlorine, and what is kept for wiping. */
export const litresOfPreparation = memoizeByObject((read: ReadWorkbook): Figure => {
	const { soak_fill_litres: soak, wipe_solution_litres: ownWipe } = read.settings;
	const kinds = treatedByKind(read, kindNames(read));
	const wipe = isBlank(ownWipe) ? derive(wipeByMethod, { kinds }) : ownWipe;
	const parts = goIntoChlorine(valueIn(kinds) ?? [])
		? { soak, wipe }
		: { wipe, ...(kinds.outcome.ok ? {} : { kinds: kinds as Figure<never> }) };
	return derive(preparationLitres, { parts: gather(say`Parts`, "L", parts) });
});

/** Whether rounds mix any solution; where that is not known, they count as if they did. */
export function isMixed(read: ReadWorkbook): boolean {
	return valueIn(litresOfPreparation(read)) !== 0;
}

/** Whether some piece of a kit goes into chlorine, as far as that is known. */
export function soaksPieces(read: ReadWorkbook): boolean {
	return goIntoChlorine(valueIn(treatedByKind(read, kindNames(read))) ?? []);
}

/** Litres by which a product is measured: of a preparation, or one where rounds mix none and only the ward does. */
export function litresToMeasure(read: ReadWorkbook): Figure {
	return isMixed(read) ? litresOfPreparation(read) : nameFigure(say`Make up to`, 1);
}
