/** The one page that is the plan itself. */
export const THIS_WEEK = "this-week";

/** Pages that are no sheet of their own, and what a person calls them. */
export const pageTitles: Readonly<Record<string, string>> = {
	[THIS_WEEK]: "The plan",
	labels: "Labels",
	"kit-history": "History of a kit",
	storekeeper: "The storekeeper's page",
	"several-units": "Several units' orders as one",
	disagreements: "Where guidelines disagree",
};
