/**
 * Makes the saves of this folder anew: the sample workbook as LibreOffice saves it in nine
 * countries, and whole as .xlsx and .ods. Needs LibreOffice Calc; the tests do not.
 *
 *   node tests/io/locales/make.ts
 */
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { readFolder } from "../../../src/io/readFolder.ts";
import { spreadsheetOf } from "./spreadsheetOf.ts";

const here = fileURLToPath(new URL(".", import.meta.url));
/** By country: the separator and the encoding that are usual there (LibreOffice's numbers for them). */
const COUNTRIES: Readonly<Record<string, readonly [separator: string, encoding: number]>> = {
	"en-US": [",", 76],
	"en-GB": [",", 1],
	"de-DE": [";", 1],
	"fr-FR": [";", 76],
	"es-ES": [";", 1],
	"pt-BR": ["\t", 65535],
	"de-CH": [";", 76],
	"ru-RU": [";", 34],
	"sw-KE": [",", 76],
};

const { workbook } = await readFolder(
	fileURLToPath(new URL("../../../sample-csv", import.meta.url)),
);
const work = mkdtempSync(join(tmpdir(), "saves-"));
const book = join(work, "sample.xlsx");
writeFileSync(book, spreadsheetOf(workbook.tables));

for (const [country, [separator, encoding]] of Object.entries(COUNTRIES)) {
	const folder = join(here, country);
	rmSync(folder, { recursive: true, force: true });
	mkdirSync(folder);
	const csv = `csv:Text - txt - csv (StarCalc):${separator.charCodeAt(0)},34,${encoding},1,,0,false,true,true,false,false,-1`;
	convert(csv, folder, country);
	for (const file of readdirSync(folder))
		renameSync(join(folder, file), join(folder, file.replace("sample-", "")));
}
convert("xlsx:Calc MS Excel 2007 XML", here, "en-US");
convert("ods", here, "de-DE");
rmSync(work, { recursive: true });

function convert(to: string, folder: string, country: string): void {
	const profile = join(work, country);
	mkdirSync(join(profile, "user"), { recursive: true });
	writeFileSync(
		join(profile, "user", "registrymodifications.xcu"),
		`<?xml version="1.0" encoding="UTF-8"?><oor:items xmlns:oor="http://openoffice.org/2001/registry"><item oor:path="/org.openoffice.Setup/L10N"><prop oor:name="ooSetupSystemLocale" oor:op="fuse"><value>${country}</value></prop></item></oor:items>`,
	);
	const options = ["--headless", `-env:UserInstallation=file://${profile}`];
	execFileSync("soffice", [...options, "--convert-to", to, "--outdir", folder, book]);
}
