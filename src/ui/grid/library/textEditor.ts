import type Handsontable from "handsontable";

type Declared = typeof Handsontable.editors.TextEditor;

/** What the library's types leave out of its text editor. */
interface Undeclared {
	readonly state: string;
	readonly textareaParentStyle: CSSStyleDeclaration;
	autoResize: object;
}

/** The library's text editor, from which the workbook's own editors are made. */
export type TextEditor = new (
	...inputs: ConstructorParameters<Declared>
) => InstanceType<Declared> & Undeclared;
