import { wardUseSheet } from "../../../core/sheets/wardUse.ts";
import type { SheetPage } from "../../page.ts";
import { mixingCautions } from "./mixingCautions.ts";
import { wardHeadline, wardView } from "./wardView.ts";

/** What the ward uses of the solution. */
export const wardUsePage: SheetPage = {
	sheet: wardUseSheet,
	headline: wardHeadline,
	over: (state) => wardView(state, false),
	cautions: mixingCautions,
};
