import { say } from "../../core/say.ts";

/** The one page that is the plan itself. */
export const THIS_WEEK = "this-week";

/** The page on which an empty workbook is begun. */
export const BEGIN = "begin";

/** Pages that are no sheet of their own, and what a person calls them. */
export const pageTitles: Readonly<Record<string, string>> = {
	[THIS_WEEK]: say`The plan`,
	[BEGIN]: say`Begin here`,
	"what-if": say`What if?`,
	labels: say`Labels`,
	"kit-history": say`History of a kit`,
	storekeeper: say`The storekeeper's page`,
	"several-units": say`Several units' orders as one`,
	disagreements: say`Where guidelines disagree`,
};
