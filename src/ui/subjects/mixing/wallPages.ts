import { isUnreviewed } from "../../../core/language.ts";
import { rowsOf } from "../../../core/plan/rowsOf.ts";
import { wallTableSheet } from "../../../core/sheets/wallTable.ts";
import { partsOf } from "../../print/partsOf.ts";
import { wordIn } from "../../state/numberIn.ts";
import type { State } from "../../state/store.ts";
import { type Mix, mixOf } from "./mix.ts";

/** More would go on to a page without the name of the product and the cautions; with the English beside its words a lot takes twice the room. */
const LOTS_ON_PAGE = isUnreviewed ? 1 : 2;

/** One page: a product, and some of its lots, the one to use first before the others. */
export interface WallPage {
	readonly product: string;
	readonly lots: readonly string[];
	readonly mixes: readonly Mix[];
	/** The lot to use before others, where there are several. */
	readonly useFirst: string | undefined;
}

/** What hangs on the wall, page by page. */
export function wallPages(state: State): WallPage[] {
	const all = rowsOf(state.plan, wallTableSheet).flatMap(
		(row) => mixOf(row, wordIn(row.product)) ?? [],
	);
	const products = [...new Set(all.map(({ product }) => product))];
	return products.flatMap((product) => {
		const mixes = all.filter((mix) => mix.product === product);
		const lots = [...new Set(mixes.map(({ lot }) => lot))];
		return partsOf(lots, LOTS_ON_PAGE).map((onPage) => ({
			product,
			lots: onPage,
			mixes: mixes.filter(({ lot }) => onPage.includes(lot)),
			useFirst: lots.length > 1 ? lots[0] : undefined,
		}));
	});
}
