/**
 * The parts of the grid library that the adapter uses, imported one by one: the
 * package's own entry brings plugins, menus and pickers that this workbook leaves out.
 */
declare module "handsontable/es/core.js" {
	const Core: new (
		host: HTMLElement,
		settings: object,
		root: symbol,
	) => import("./libraryView.ts").Hot & { init(): void };
	export default Core;
}

declare module "handsontable/es/utils/rootInstance.js" {
	export const rootInstanceSymbol: symbol;
}

declare module "handsontable/es/editors/textEditor.js" {
	const TextEditor: import("./textEditor.ts").TextEditor;
	export default TextEditor;
}

declare module "handsontable/es/helpers/dom/event.js" {
	export function stopImmediatePropagation(event: Event): void;
}
