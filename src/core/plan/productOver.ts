import { derive, type Figure } from "../calculation.ts";
import { measureOut, type Preparation } from "../chlorine/measureOut.ts";
import { memoized } from "../memoize.ts";
import { partOf } from "../partOf.ts";
import { say } from "../say.ts";
import { productExpected, productSetAside } from "../stock/productSetAside.ts";
import { byDate } from "./byDate.ts";
import { isMixed } from "./chlorine/litresOfPreparation.ts";
import type { Pair } from "./countFigures.ts";
import type { DayFigures } from "./dayFigures.ts";
import { noNeed } from "./methods/noNeed.ts";
import type { UnitFigures } from "./unitFigures.ts";

type MixingUnit = Pick<UnitFigures, "read" | "treated">;
type MixingDays = readonly Pick<DayFigures, "date" | "preparationCounts" | "preparation">[];

const quantityMeasured = partOf<Preparation, "quantity">(
	measureOut,
	"quantity",
	say`Product for one preparation`,
	say`mL, g or tablets`,
);

const productOfDay = {
	expected: memoized(productExpected),
	setAside: memoized(productSetAside),
};
const productOfPeriod = { expected: productExpected, setAside: productSetAside };

/** Product for the preparations of some days. */
export function productOver(unit: MixingUnit, days: MixingDays, confidence: Figure): Pair {
	if (!isMixed(unit.read)) return noNeed("product", quantityMeasured, unit.treated);
	const { expected, setAside } = days.length === 1 ? productOfDay : productOfPeriod;
	const inputs = mixed(days);
	return {
		expected: derive(expected, inputs),
		setAside: derive(setAside, { ...inputs, confidence }),
	};
}

/** The same on average, without what is set aside: what it costs needs no more. */
export function productExpectedOver(unit: MixingUnit, days: MixingDays): Figure {
	if (!isMixed(unit.read)) return noNeed("product", quantityMeasured, unit.treated).expected;
	const { expected } = days.length === 1 ? productOfDay : productOfPeriod;
	return derive(expected, mixed(days));
}

function mixed(days: MixingDays) {
	return {
		preparations: byDate(
			say`Preparations of each day`,
			say`preparations`,
			days,
			(day) => day.preparationCounts,
		),
		quantities: byDate(
			say`Product for one preparation on each day`,
			say`mL, g or tablets`,
			days,
			(day) => derive(quantityMeasured, { whole: day.preparation }),
		),
	};
}
