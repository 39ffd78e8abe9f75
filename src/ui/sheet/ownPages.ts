import type { OwnPage } from "../page.ts";
import { BEGIN } from "../shell/pageTitles.ts";
import { beginPage } from "../subjects/begin/beginPage.ts";
import { whatIfPage } from "../subjects/compare/whatIfPage.ts";
import { kitHistoryPage } from "../subjects/kits/kitHistoryPage.ts";
import { labelsPage } from "../subjects/labels/labelsPage.ts";
import { disagreementsPage } from "../subjects/mixing/disagreementsPage.ts";
import { storekeeperPage } from "../subjects/store/storekeeperPage.ts";
import { severalUnitsPage } from "../subjects/units/severalUnitsPage.ts";

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
