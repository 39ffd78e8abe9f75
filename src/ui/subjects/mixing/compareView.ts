import { QUARTER } from "../../../core/plan/chlorine/productCompareTable.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { say } from "../../../core/say.ts";
import { productCompareSheet } from "../../../core/sheets/productCompare.ts";
import { el } from "../../dom/el.ts";
import { picturesFigure, pictureWidth } from "../../dom/pictureFigure.ts";
import { shownAs } from "../../format/shownFigure.ts";
import { partsOf } from "../../print/partsOf.ts";
import { numberIn, wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { unitSetting } from "../../state/unitSetting.ts";
import { nameOfProductInUse } from "./mix.ts";

/** As many bars as stand on one sheet of paper. */
const PRODUCTS_TOGETHER = 8;

/** A product over a quarter; what is not known is undefined. */
interface Compared {
	readonly product: string;
	readonly cost: number | undefined;
	readonly weightKg: number | undefined;
}

function compared(state: State): Compared[] {
	return rowsOf(state.plan, productCompareSheet)
		.filter((row) => wordIn(row.period) === QUARTER)
		.map((row) => ({
			product: wordIn(row.product),
			cost: numberIn(row.cost),
			weightKg: numberIn(row.weight_kg),
		}));
}

/** The product with the least of something among those where it is known; undefined with fewer than two. */
function least(products: readonly Compared[], of: "cost" | "weightKg"): Compared | undefined {
	const known = products.filter((product) => product[of] !== undefined);
	return known.length < 2 ? undefined : [...known].sort((a, b) => Number(a[of]) - Number(b[of]))[0];
}

function money(state: State, cost: number): string {
	return `${shownAs(productCompareSheet.columns.cost, cost)} ${unitSetting(state, "currency") ?? ""}`.trim();
}

export function compareHeadline(state: State): string | undefined {
	const cheapest = least(compared(state), "cost");
	return (
		cheapest && say`${cheapest.product} costs least: ${money(state, cheapest.cost ?? 0)} a quarter`
	);
}

/** Which product costs least and which is lightest to carry, and what that leaves out. */
export function compareView(state: State, room: number): HTMLElement | undefined {
	const products = compared(state);
	if (products.length === 0) return undefined;
	const [cheapest, lightest] = [least(products, "cost"), least(products, "weightKg")];
	const unknown = (of: "cost" | "weightKg") =>
		products.filter((product) => product[of] === undefined).map(({ product }) => product);
	const words = [
		cheapest
			? say`Cheapest: ${cheapest.product}, ${money(state, cheapest.cost ?? 0)} a quarter.`
			: say`Which is cheapest is not known: give pack prices for two products at least, under items.`,
		lightest &&
			say`Lightest to carry: ${lightest.product}, ${shownAs(productCompareSheet.columns.weight_kg, lightest.weightKg ?? 0)} kg a quarter.`,
		unknown("cost").length > 0 && say`Without a price: ${unknown("cost").join(", ")}.`,
		unknown("weightKg").length > 0 && say`Weight not known: ${unknown("weightKg").join(", ")}.`,
		say`Not counted: transport and its money, bottles and boxes, time and mistakes in measuring, spills, training, what the store must be like, and whether it can be had at all. Strong powder and tablets are small to carry and dangerous to handle: the maker's instructions come first.`,
	];
	const sentence = el("p", {}, words.filter(Boolean).join(" "));
	const inUse = nameOfProductInUse(state);
	const costs = products.flatMap(({ product, cost }) =>
		cost === undefined ? [] : [{ product, cost, inUse: product === inUse }],
	);
	if (costs.length < 2) return el("section", { class: "said" }, sentence);
	const currency = unitSetting(state, "currency") ?? "";
	return picturesFigure(
		partsOf(costs, PRODUCTS_TOGETHER).map((shown) => ({
			name: say`Cost of each product over a quarter; the table has the numbers.`,
			draw: ({ costPicture }) => costPicture(shown, costs, currency, pictureWidth(room)),
		})),
		sentence,
	);
}
