import { unusedOfGrid } from "./unusedOfGrid.ts";

const unused = new RegExp(`\\.(${unusedOfGrid.classes.join("|")})`);

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
