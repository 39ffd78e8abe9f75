import { parseArgs } from "node:util";
import type { Answers } from "../io/fileQuestion.ts";

/** Answers to what the files of a workbook may leave open. */
const ANSWERS = ["numbers", "dates", "encoding"] as const;

export const READING_USAGE = `--numbers point|comma           the decimal mark of numbers, where the files leave it open
--dates day-first|month-first   what stands first in dates like 03/01/2027
--encoding NAME                 of files that are not UTF-8, for example windows-1251`;

/** What a command that reads workbooks and writes to --out is given. */
interface ReadingArguments<Own extends string> {
	readonly paths: readonly string[];
	readonly out: string;
	readonly options: Readonly<Partial<Record<Own, string>>>;
	readonly answers: Answers;
}

/**
 * @param own options of the command beside --out and the answers
 * @returns undefined where the arguments are wrong
 */
export function readingArguments<Own extends string = never>(
	args: string[],
	own: readonly Own[] = [],
): ReadingArguments<Own> | undefined {
	const names = ["out", ...ANSWERS, ...own];
	const options = Object.fromEntries(names.map((name) => [name, { type: "string" as const }]));
	try {
		const { values, positionals } = parseArgs({ args, options, allowPositionals: true });
		const given = values as Partial<Record<string, string>>;
		const answers = answersIn(given);
		return given.out && answers
			? {
					paths: positionals,
					out: given.out,
					options: given as Partial<Record<Own, string>>,
					answers,
				}
			: undefined;
	} catch {
		return undefined;
	}
}

/** Undefined where one is none of those allowed. */
function answersIn({
	numbers,
	dates,
	encoding,
}: Partial<Record<(typeof ANSWERS)[number], string>>): Answers | undefined {
	const mark = oneOf(["point", "comma"] as const, numbers);
	const order = oneOf(["day-first", "month-first"] as const, dates);
	if (mark === "unknown" || order === "unknown" || (encoding && !isEncoding(encoding)))
		return undefined;
	return {
		...(mark && { numbers: mark }),
		...(order && { dates: order }),
		...(encoding && { encoding }),
	};
}

function oneOf<T extends string>(allowed: readonly T[], text: string | undefined) {
	return text === undefined ? undefined : (allowed.find((one) => one === text) ?? "unknown");
}

function isEncoding(name: string): boolean {
	try {
		return new TextDecoder(name).encoding !== "";
	} catch {
		return false;
	}
}
