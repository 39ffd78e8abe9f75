import type { Place } from "../../core/problem.ts";
import { BEGIN } from "../shell/pageTitles.ts";
import type { State } from "../state/store.ts";
import { beginPage } from "../subjects/begin/beginPage.ts";
import { whatIfPage } from "../subjects/compare/whatIfPage.ts";
import { kitHistoryPage } from "../subjects/kits/kitHistoryPage.ts";
import { labelsPage } from "../subjects/labels/labelsPage.ts";
import { disagreementsPage } from "../subjects/mixing/disagreementsPage.ts";
import { storekeeperPage } from "../subjects/store/storekeeperPage.ts";
import { severalUnitsPage } from "../subjects/units/severalUnitsPage.ts";
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
