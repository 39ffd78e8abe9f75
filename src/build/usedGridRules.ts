/** How classes begin of what the grid library can do and this workbook never asks of it. */
const UNUSED = [
	// Menus, comments, a phone's editor, kinds of cell: see what is left out in astro.config.mjs.
	"htContextMenu",
	"htSubmenu",
	"htComment",
	"htMobileEditorContainer",
	"htCheckboxRenderer",
	"htAutocompleteArrow",
	"autocompleteEditor",
	"listbox",
	// Sorting, moving, resizing and folding in the grid itself.
	"columnSorting",
	"collapsibleIndicator",
	"htExpandButton",
	"htCollapseButton",
	"htGroupIndicatorContainer",
	"manualRowResizer",
	"manualColumnResizer",
	"ht__manualRowMove",
	"ht__manualColumnMove",
	// Another library's tables.
	"col-",
	"table",
];
const unused = new RegExp(`\\.(${UNUSED.join("|")})`);

/** What of a rule is looked at here. */
interface Rule {
	selectors: string[];
	readonly source?: { readonly input: { readonly file?: string } };
	remove(): void;
}

/** Leaves out the grid library's rules for what is not in the workbook: a third of its style, which every page would fetch. */
export const usedGridRules = {
	postcssPlugin: "used-grid-rules",
	Rule(rule: Rule): void {
		if (!/[\\/]handsontable\.css$/.test(rule.source?.input.file ?? "")) return;
		const used = rule.selectors.filter((selector) => !unused.test(selector));
		if (used.length === 0) rule.remove();
		else if (used.length < rule.selectors.length) rule.selectors = used;
	},
};
