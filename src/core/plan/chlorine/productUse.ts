import { derive, type Figure, gather } from "../../calculation.ts";
import { measureOut, type Preparation } from "../../chlorine/measureOut.ts";
import { valueIn } from "../../outcome.ts";
import { partOf } from "../../partOf.ts";
import { say } from "../../say.ts";
import { inMeasure } from "../../stock/inMeasure.ts";
import { total } from "../../total.ts";
import { inOrder } from "../../values/inOrder.ts";
import type { Pair } from "../countFigures.ts";
import type { WardUse } from "./wardUses.ts";

const measuredIn = partOf<Preparation, "measure">(
	measureOut,
	"measure",
	say`Product is measured in`,
	"",
);

const withWardUse = total(
	"product_with_ward",
	say`Product, with the ward's other solution`,
	say`mL, g or tablets`,
);

/** No name of a use ends with a space, so that none is taken for the kits. */
const KITS = "kits ";

/** Use of the product in use as the store counts it. */
export function productUse(
	preparation: Figure<Preparation>,
	measure: Figure<string>,
	kits: Pair,
	ward: readonly WardUse[],
): Pair {
	const inStore = (ofKits: Figure) => productInStore(preparation, measure, ofKits, ward);
	return { expected: inStore(kits.expected), setAside: inStore(kits.setAside) };
}

/**
 * Product as the store counts it: the kits' and the ward's together. What is mixed daily for
 * the ward is known, not uncertain.
 *
 * @param preparation any preparation with the product: it says how it is measured
 * @param measure in which the store counts it
 */
export function productInStore(
	preparation: Figure<Preparation>,
	measure: Figure<string>,
	kits: Figure,
	ward: readonly WardUse[],
): Figure {
	// None of it asks for no preparation: the product in use may be too weak for any where rounds mix nothing.
	if (!preparation.outcome.ok && ward.length === 0 && valueIn(kits) === 0)
		return { ...kits, label: inMeasure.label, unit: inMeasure.unit };
	const from = derive(measuredIn, { whole: preparation });
	if (ward.length === 0) return derive(inMeasure, { quantity: kits, from, to: measure });
	// By name, so that the order of the rows changes neither the last digit nor the reason told first.
	const byName = [...ward].sort((one, other) => inOrder(one.use, other.use));
	const others = Object.fromEntries(byName.map(({ use, quantity }) => [use, quantity]));
	const parts = gather(say`Product`, say`mL, g or tablets`, { [KITS]: kits, ...others });
	return derive(inMeasure, { quantity: derive(withWardUse, { parts }), from, to: measure });
}
