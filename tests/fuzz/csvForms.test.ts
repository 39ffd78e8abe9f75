import fc from "fast-check";
import { expect, test } from "vitest";
import { decode } from "../../src/io/decode.ts";
import { readCsv } from "../../src/io/readCsv.ts";

const always = { seed: 20_270_301, numRuns: 3000 };
/** Text as people and their programs write it, with all that needs care; guarded text has tests of its own. */
const text = fc
	.oneof(
		fc.constantFrom(
			"",
			" ",
			"6,5",
			"1;2",
			"a\tb",
			'5" tube',
			'"',
			'""',
			"x\ny",
			"x\r\ny",
			"x\ry",
			"=1+1",
			"é👶",
			"\ufeff",
		),
		fc.string({
			unit: fc.constantFrom('"', ",", ";", "\t", "\r", "\n", "a", " ", "\ufeff", "\0"),
			maxLength: 8,
		}),
		fc.string({ unit: "binary", maxLength: 8 }),
	)
	.filter((cell) => !cell.startsWith("'"));
const lineEnd = fc.constantFrom("\n", "\r\n", "\r");
const keys = fc.uniqueArray(fc.stringMatching(/^[a-z]{1,6}$/), { minLength: 2, maxLength: 4 });
const line = fc.record({
	cells: fc.array(text, { minLength: 1, maxLength: 5 }),
	/** Whether a cell is quoted also where it need not be. */
	quoted: fc.array(fc.boolean(), { minLength: 5, maxLength: 5 }),
	end: lineEnd,
});

test("one table in any separator, any quoting and any mix of line ends reads the same", () => {
	fc.assert(
		fc.property(
			fc.constantFrom(",", ";", "\t"),
			keys,
			fc.array(line, { maxLength: 6 }),
			lineEnd,
			fc.boolean(),
			fc.boolean(),
			(separator, header, lines, headerEnd, marked, cutLast) => {
				const needsQuotes = new RegExp(`^\\s*"|[${separator}\\r\\n]|^$`);
				const written = lines.map(({ cells, quoted, end }, at) => {
					const parts = cells.map((cell, i) =>
						quoted[i] || needsQuotes.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell,
					);
					return parts.join(separator) + (cutLast && at === lines.length - 1 ? "" : end);
				});
				const body = `${marked ? "\ufeff" : ""}${header.join(separator)}${headerEnd}${written.join("")}`;
				const { table, problems } = readCsv("x.csv", body);
				expect(problems).toEqual([]);
				expect(table.header).toEqual(header);
				expect(table.rows).toEqual(lines.map(({ cells }) => cells));
			},
		),
		always,
	);
});

test("another encoding is read as what it was written from, or refused", () => {
	const encodings = ["latin1", "utf16le"] as const;
	fc.assert(
		fc.property(
			fc.string({ unit: "binary", minLength: 2 }),
			fc.constantFrom(...encodings),
			(words, encoding) => {
				const text = `date,births,note\n2027-03-01,6,${words}\n`;
				const bytes = new Uint8Array(Buffer.from(text, encoding));
				const decoded = decode("x.csv", bytes);
				if (!decoded.ok) {
					expect(decoded.problem).toMatchObject({ code: "not-text", weight: "error" });
				} else if (encoding === "utf16le") {
					expect(decoded.text.replace(/^\ufeff/, "")).toBe(text.replace(/^\ufeff/, ""));
				} else if (decoded.advice) {
					expect(decoded.text).toBe(new TextDecoder("windows-1252").decode(bytes));
				} else {
					expect(Buffer.from(decoded.text, "utf8").equals(bytes)).toBe(true);
				}
			},
		),
		always,
	);
});
