import type { Column } from "../column.ts";
import { decimalSign } from "../language.ts";
import { say } from "../say.ts";
import { mayBeThousand } from "../values/number.ts";

/** What is wrong with a text that a person enters. */
export function notAllowed(label: string, text: string, allowed: string): string {
	return text.trim() === ""
		? say`${label} is blank; allowed is ${allowed}.`
		: say`${label}: “${text}” was found; allowed is ${allowed}.`;
}

/** What is wrong with a text for a cell; undefined where nothing is. */
export function wrongFor(
	{ label, value }: Pick<Column<unknown>, "label" | "value">,
	text: string,
	sign = decimalSign,
): string | undefined {
	if (!value.schema.safeParse(text).success) return notAllowed(label, text, value.allowed);
	return value.numeric && mayBeThousand(text, sign) ? twoWays(label, text, sign) : undefined;
}

/** Of a number that is a thousand to some: both as nobody reads them in two ways. @example 5.000 → 5000 or 5; 1.125 → 1125 or 1,1250 */
export function twoWays(label: string, text: string, sign = decimalSign): string {
	const typed = text.trim();
	const short = String(Number(typed));
	const clear = short === typed ? `${short}0` : short;
	return say`${label}: “${typed}” can be read in two ways; write ${typed.replace(".", "")} or ${clear.replace(".", sign)}.`;
}
