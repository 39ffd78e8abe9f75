/** Whole packages that the grid library asks for. */
const packages = ["@babel/polyfill/lib/noConflict", "moment", "numbro", "pikaday"];

/**
 * What the grid library brings and this workbook never asks of it: dates, pickers, its own numbers,
 * menus and their words, comments, old browsers, kinds of cell, a layer to look for its faults.
 */
export const unusedOfGrid = {
	packages,
	/** As the library imports them; an empty file takes their place. */
	modules: [
		...packages,
		/^\.\/(autocomplete|checkbox|date|dropdown|handsontable|numeric|password|select|time)(Editor|Type|Validator)$/,
		/^\.\/(autocomplete|checkbox|html|numeric|password)Renderer$/,
		"./languages/en-US",
		"./overlay/debug",
	],
	/** How classes begin whose style is left out. */
	classes: [
		// Menus, comments, a phone's editor, kinds of cell.
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
	],
};
