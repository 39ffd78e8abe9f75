import { districtTypedSheets } from "../../../core/sheets/districtSheets.ts";
import { typedSheets } from "../../../core/sheets/typedSheets.ts";
import { unitSheet } from "../../../core/sheets/unit.ts";
import { tellsOfSheets } from "../../../io/descriptionFile.ts";
import { endingIn } from "../../../io/fileEndings.ts";
import { sheetNamed } from "../../../io/sheetNamed.ts";
import type { GivenFile } from "../../files/givenFile.ts";

/** What a unit sent: a workbook, in one file or in several, or its order alone. */
export interface GivenUnit {
	/** Of the file or the folder. */
	readonly path: string;
	readonly kind: "workbook" | "order";
	readonly files: readonly File[];
}

interface Given {
	readonly units: readonly GivenUnit[];
	/** The district's own tables, where they were among the files. */
	readonly names: File | undefined;
	readonly stock: File | undefined;
}

const WORKBOOK = endingIn("zip", "spreadsheet", "otherProgram");
const TEXT = endingIn("text");
/** What systems leave behind, and what a spreadsheet keeps while it is open. */
const CLUTTER = /(^|\/)(\.|~\$|__MACOSX(\/|$))/;
const typed: readonly string[] = typedSheets.map(({ file }) => file);

/**
 * The units in files as they were chosen or dropped, in the order of their paths.
 *
 * A zip or a spreadsheet is a workbook. So are the sheets of a folder in which a unit's
 * settings lie; of files that came without a folder it takes the settings too. Any other
 * text is taken for an order.
 */
export function givenUnits(given: readonly GivenFile[]): Given {
	const { names, stock } = districtTypedSheets;
	const files = given.filter(({ path }) => !CLUTTER.test(path));
	const named = (file: string) => files.filter(({ path }) => baseName(path) === file).at(-1)?.file;
	const own = [names.file, stock.file] as readonly string[];
	const folders = new Map<string, GivenFile[]>();
	for (const file of files.filter(({ path }) => !own.includes(baseName(path)))) {
		const folder = file.path.slice(0, Math.max(0, file.path.lastIndexOf("/")));
		const inside = folders.get(folder) ?? [];
		inside.push(file);
		folders.set(folder, inside);
	}
	const units = [...folders].flatMap(([folder, inside]) => unitsIn(folder, inside));
	units.sort((one, other) => (one.path < other.path ? -1 : Number(one.path > other.path)));
	return { units, names: named(names.file), stock: named(stock.file) };
}

function unitsIn(folder: string, inside: readonly GivenFile[]): GivenUnit[] {
	const isWorkbook = inside.some(({ path }) => sheetOf(path) === unitSheet.file);
	const sheets = isWorkbook ? inside.filter(isSheet) : [];
	const apart = inside.filter((file) => !sheets.includes(file));
	const together: GivenUnit[] = isWorkbook
		? [{ path: folder || unitSheet.file, kind: "workbook", files: sheets.map(({ file }) => file) }]
		: [];
	return [
		...together,
		...apart.flatMap(({ path, file }): GivenUnit[] => {
			if (WORKBOOK.test(path)) return [{ path, kind: "workbook", files: [file] }];
			// What else lies in a folder is nobody's concern; what was given by itself is answered for.
			const isGiven = TEXT.test(path) || folder === "";
			return isGiven ? [{ path, kind: "order", files: [file] }] : [];
		}),
	];
}

/** Whether a file in a workbook's folder is of that workbook: another workbook's zip is not. */
function isSheet({ path }: GivenFile): boolean {
	if (tellsOfSheets(baseName(path))) return true;
	return TEXT.test(path) || typed.includes(sheetOf(path) ?? "");
}

/** The sheet that a file is by its name, also as a spreadsheet. */
function sheetOf(path: string): string | undefined {
	const name = baseName(path);
	return /\.zip$/.test(name) ? undefined : sheetNamed(name.replace(WORKBOOK, ".csv"))?.file;
}

function baseName(path: string): string {
	return path.slice(path.lastIndexOf("/") + 1).toLowerCase();
}
