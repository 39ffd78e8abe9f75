import { say } from "../../../core/say.ts";
import type { PageTitle } from "../../page.ts";

/** Labels for the solution, the rinse buckets and the kits. */
export const labelsTitle: PageTitle = {
	file: "labels",
	title: say`Labels`,
	about: say`Labels for the vessel of solution, the rinse buckets and the kits, six to a sheet of A4 or Letter, to cut out. What is known is printed, the rest is left to write in. Every mixed solution carries a label from the moment it is made.`,
};
