import { type ReadFiles, readFiles } from "../../src/io/readFiles.ts";

/** Opens a workbook from one zip file, as dropping it on the page does. */
export function readZip(bytes: Uint8Array): ReadFiles {
	return readFiles([{ name: "workbook.zip", bytes }]);
}
