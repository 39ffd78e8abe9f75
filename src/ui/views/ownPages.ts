import type { Place } from "../../core/problem.ts";
import { beginPage } from "../begin/beginPage.ts";
import { BEGIN } from "../book/pageTitles.ts";
import type { State } from "../book/store.ts";
import { whatIfPage } from "../compare/whatIfPage.ts";
import { kitHistoryPage } from "../kits/kitHistoryPage.ts";
import { labelsPage } from "../labels/labelsPage.ts";
import { disagreementsPage } from "../mixing/disagreementsPage.ts";
import { severalUnitsPage } from "../supplies/severalUnitsPage.ts";
import { storekeeperPage } from "../supplies/storekeeperPage.ts";
import type { Surroundings } from "./sheetView.ts";

/** Something on the screen that is mounted once and painted at every change. */
export interface View {
	readonly file: string;
	paint(state: State): void;
	show(place: Place): void;
	destroy(): void;
}

/** A page that is made of several sheets, or of none. */
export interface OwnPage {
	readonly title: string;
	mount(place: HTMLElement, around: Surroundings): View;
}

/** By name, which stands in the address and in the list of questions like a file's. */
export const ownPages: Readonly<Record<string, OwnPage>> = {
	storekeeper: storekeeperPage,
	"several-units": severalUnitsPage,
	"kit-history": kitHistoryPage,
	labels: labelsPage,
	disagreements: disagreementsPage,
	[BEGIN]: beginPage,
	"what-if": whatIfPage,
};
