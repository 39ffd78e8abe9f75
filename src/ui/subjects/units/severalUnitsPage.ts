import type { OwnPage } from "../../page.ts";
import { SeveralUnitsView } from "./severalUnitsView.ts";

/** The units of a district, the worst first, and their order as one. */
export const severalUnitsPage: OwnPage = {
	mount: (place, around) => new SeveralUnitsView(place, around.store),
};
