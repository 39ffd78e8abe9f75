import { renameSync, rmSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { writeFiles } from "../../io/writeFiles.ts";
import { zipFiles } from "../../io/zipFiles.ts";
import { megabytes, sizeOf, stickFiles } from "./stickFiles.ts";

const here = (path: string) => fileURLToPath(new URL(`../../../${path}`, import.meta.url));
const OUT = "dist-usb";
const FOLDER = "Basinbook";

/** npm run usb -- --language pt: also a language that nobody has reviewed. */
const { values } = parseArgs({
	options: { language: { type: "string", multiple: true, default: [] } },
});
const { version } = JSON.parse(await readFile(here("package.json"), "utf8"));
const files = await stickFiles({
	site: here("dist"),
	workbook: here("sample-csv"),
	version,
	askedFor: values.language,
});
const inFolder = Object.fromEntries(
	Object.entries(files).map(([path, content]) => [`${FOLDER}/${path}`, content]),
);
const zip = zipFiles(inFolder);
// The folder of before goes only when the new one is whole.
const begun = here(`${OUT}.part`);
rmSync(begun, { recursive: true, force: true });
await writeFiles(begun, { ...inFolder, [`${FOLDER}.zip`]: zip });
rmSync(here(OUT), { recursive: true, force: true });
renameSync(begun, here(OUT));
process.stdout.write(
	`${OUT}/${FOLDER}: ${Object.keys(files).length} files, ${megabytes(sizeOf(files), "en")}
${OUT}/${FOLDER}.zip: ${megabytes(zip.length, "en")}
Copy the folder onto the stick, or give the zip away.\n`,
);
