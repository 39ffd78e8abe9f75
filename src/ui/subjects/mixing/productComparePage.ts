import { productCompareSheet } from "../../../core/sheets/productCompare.ts";
import type { SheetPage } from "../../page.ts";
import { compareHeadline, compareView } from "./compareView.ts";

/** The products beside each other. */
export const productComparePage: SheetPage = {
	sheet: productCompareSheet,
	headline: compareHeadline,
	over: compareView,
};
