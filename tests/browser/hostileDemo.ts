import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { strToU8, zipSync } from "fflate";

const sample = join(import.meta.dirname, "../../sample-csv");

/** Renames the page where any of it is ever taken for markup. */
export const PAYLOAD = "<img src=x onerror=document.title='broken'>";

/** Names and notes of the demo to which the payload is added, wherever they stand. */
const CARRIERS = [
	"Willow Ford delivery unit \\(invented\\)",
	"Bag and mask kit",
	"\\bK[1-4]\\b",
	"Inlet valve",
	"Gauze swab",
	"Liquid bleach 3\\.5 %",
	"\\bB-0211\\b",
	"\\bMorning\\b",
	"Wash every piece in soapy water",
	"Referrals from the next unit",
	"Leak at the mask connector",
	"own count over two weeks",
	"\\bAma\\b",
	"Two kits in the round",
	"Renewed before its days were over",
	"By the health post driver",
];

/** The demo's files, every name in them carrying markup. */
export function hostileFiles(): Record<string, string> {
	const carrier = new RegExp(CARRIERS.join("|"), "g");
	const names = readdirSync(sample).filter((name) => name.endsWith(".csv"));
	return Object.fromEntries(
		names.map((name) => {
			const text = readFileSync(join(sample, name), "utf8");
			return [name, text.replace(carrier, `$& ${PAYLOAD}`)];
		}),
	);
}

/** The same as a zip, with markup in its comments, in the name of a file and in a header. */
export function hostileZip(): Uint8Array {
	const { "hours.csv": hours = "", ...files } = hostileFiles();
	const entries = Object.entries({
		...files,
		"hours.csv": hours.replace("hour,share", `hour,share,${PAYLOAD}`),
		[`${PAYLOAD}.csv`]: `${PAYLOAD},${PAYLOAD}\n`,
	}).map(([name, text]) => [name, [strToU8(text), { comment: PAYLOAD }]]);
	const zip = zipSync(Object.fromEntries(entries));
	const comment = strToU8(PAYLOAD);
	const commented = new Uint8Array([...zip, ...comment]);
	// The last two bytes of a zip without a comment say how long its comment is.
	new DataView(commented.buffer).setUint16(zip.length - 2, comment.length, true);
	return commented;
}
