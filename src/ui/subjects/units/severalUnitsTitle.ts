import { say } from "../../../core/say.ts";
import type { PageTitle } from "../../page.ts";

/** Several units' order files as one list. */
export const severalUnitsTitle: PageTitle = {
	file: "several-units",
	title: say`Several units' orders as one`,
};
