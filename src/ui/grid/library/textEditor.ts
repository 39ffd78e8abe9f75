import type Handsontable from "handsontable";

/** The library's text editor, from which the workbook's own editors are made. */
export type TextEditor = typeof Handsontable.editors.TextEditor;
