import { wardSolutionSheet } from "../../../core/sheets/wardSolution.ts";
import type { SheetPage } from "../../page.ts";
import { wardView } from "./wardView.ts";

/** What the ward asks for, typed by the unit. */
export const wardSolutionPage: SheetPage = {
	sheet: wardSolutionSheet,
	over: (state) => wardView(state, true),
};
