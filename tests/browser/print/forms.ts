/** Words of the caution that stands on each page of a form whose act can hurt someone. */
const CHLORINE = /Never let chlorine meet vinegar/;
const DAY = /Chlorine and vinegar never in the same basin/;
const STORE = /Keep chlorine apart from vinegar/;
const READY = /When in doubt do not use/;
const LABEL = /Hot water scalds|NEVER with vinegar|wet or torn: do not use/;
const OF_SOME_ACT = new RegExp(
	[DAY, STORE, /Boiling water scalds/, LABEL].map(({ source }) => source).join("|"),
);

export interface Form {
	/** The page of the workbook that prints it. */
	readonly on: string;
	/** The words on its button; "" for the browser's own print. */
	readonly button: string;
	readonly caution?: RegExp;
	/** Whose it says it is; the unit's where left out. */
	readonly whose?: RegExp;
	readonly lies?: true;
	/** Words of those of its pages that have no end: labels are cut out. */
	readonly endless?: RegExp;
}

/** Every form of one unit, and pages that print as they stand. */
export const forms: readonly Form[] = [
	{ on: "run-sheet.csv", button: "Print this day’s work sheet", caution: DAY },
	{ on: "run-sheet.csv", button: "Print every day", caution: DAY },
	{ on: "run-sheet.csv", button: "", caution: DAY },
	{ on: "order.csv", button: "Print the order form", caution: STORE },
	{ on: "order.csv", button: "", caution: STORE },
	{ on: "mixing.csv", button: "Print the mixing sheet", caution: CHLORINE },
	{
		on: "mixing.csv",
		button: "Print first aid for the wall",
		caution: /Never chlorine with vinegar/,
	},
	{ on: "wall-table.csv", button: "Print the wall tables", caution: CHLORINE },
	{ on: "boiling.csv", button: "Print the boiling sheet", caution: /Boiling water scalds/ },
	{ on: "stock.csv", button: "Print a count sheet", caution: STORE },
	{ on: "stock.csv", button: "Print one with what the books say", caution: STORE },
	{ on: "storekeeper", button: "Print this page", caution: STORE },
	{ on: "month", button: "Print this page" },
	{ on: "month", button: "Print the pictures" },
	// Each label carries its own caution.
	{ on: "labels", button: "Print these labels" },
	{ on: "kit-history", button: "Print this history", caution: READY },
	{
		on: "kit-history",
		button: "Print check sheets for all kits",
		caution: /When in doubt do not use/,
	},
	{ on: "disagreements", button: "Print this page" },
	{ on: "words", button: "Print the words" },
	{ on: "what-if", button: "Print this page" },
	// Each paper of the week has the caution of its own act.
	{ on: "monday", button: "Print these papers", caution: OF_SOME_ACT, endless: /Cut along the/ },
	{ on: "today", button: "Print a log for the bench", caution: /No name or number/, lies: true },
	{ on: "today", button: "", caution: DAY, lies: true },
	{ on: "this-week", button: "", caution: DAY, lies: true },
	{ on: "births.csv", button: "", lies: true },
	{ on: "items.csv", button: "", lies: true },
	{ on: "kits.csv", button: "", lies: true },
];

const TOGETHER = /Combined order of \d/;

/** Those of a district. */
export const districtForms: readonly Form[] = [
	{ on: "several-units", button: "Print the order", caution: STORE, whose: TOGETHER, lies: true },
	{
		on: "several-units",
		button: "Print with each unit's share",
		caution: STORE,
		whose: TOGETHER,
		lies: true,
	},
	{ on: "several-units", button: "Print the units", whose: /units? of the district/, lies: true },
	{ on: "several-units", button: "", caution: STORE, whose: TOGETHER, lies: true },
];
