/**
 * The parts of the grid library that the adapter uses, imported one by one: the
 * package's own entry brings plugins, menus and pickers that this workbook leaves out.
 */
declare module "handsontable/es/core.js" {
	import type Handsontable from "handsontable";

	const Core: new (
		host: HTMLElement,
		settings: object,
		root: symbol,
	) => Handsontable & { init(): void };
	export default Core;
}

declare module "handsontable/es/utils/rootInstance.js" {
	export const rootInstanceSymbol: symbol;
}

declare module "handsontable/es/editors/textEditor.js" {
	import type Handsontable from "handsontable";

	const TextEditor: typeof Handsontable.editors.TextEditor;
	export default TextEditor;
}

declare module "handsontable/es/helpers/dom/event.js" {
	export function stopImmediatePropagation(event: Event): void;
}
