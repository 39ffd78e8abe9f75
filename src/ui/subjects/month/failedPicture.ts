import { dot, plot, text } from "@observablehq/plot";
import { Grouped } from "../../../core/grouped.ts";
import type { FailuresOverDays } from "../../../core/plan/record/failuresOverDays.ts";
import { say } from "../../../core/say.ts";
import { quietParts } from "../../dom/quietParts.ts";
import { LETTER_PX } from "../../format/letterPx.ts";
import { shownPlain } from "../../format/shownNumber.ts";

const ROW_PX = 46;
const TOP_PX = 34;
const COLUMN_PX = 52;
const SIDES_PX = 16;
const RADIUS_PX = 11;
const MOST_ROWS = 8;

/** How often a kit failed by one finding; the last column holds the sums. */
export interface FailedCell {
	readonly kit: string;
	readonly finding: string;
	readonly times: number;
}

/** What was found wrong, by kit: the kits that failed most, no more than there is room for; the rest are in the sums and the table. */
export function failedCells(
	{ failed, byFinding, byKit }: FailuresOverDays,
	mostKits: number,
): FailedCell[] {
	const all = say`in all`;
	const kits = byKit.slice(0, mostKits).map(({ name }) => name);
	const times = new Grouped<string, string>();
	for (const { kit, finding } of failed) times.add(finding, kit);
	return byFinding.slice(0, MOST_ROWS).flatMap(({ name: finding, times: sum }) => [
		...kits.flatMap((kit) => {
			const count = times.of(finding).filter((each) => each === kit).length;
			return count === 0 ? [] : [{ kit, finding, times: count }];
		}),
		{ kit: all, finding, times: sum },
	]);
}

/** A row for what was found, a column for each kit, and how often where they meet. */
export function failedPicture(failures: FailuresOverDays, width: number): SVGElement {
	const mostKits = Math.max(1, Math.floor(width / COLUMN_PX) - 2);
	const cells = failedCells(failures, mostKits);
	const all = cells.at(-1)?.kit ?? "";
	const kits = [...failures.byKit.slice(0, mostKits).map(({ name }) => name), all];
	const findings = [...new Set(cells.map(({ finding }) => finding))];
	const each = cells.filter(({ kit }) => kit !== all);
	const columnsPx = (kits.length + 1) * COLUMN_PX + 120;
	const longest = Math.max(...findings.map(({ length }) => length));
	const place = { x: "kit", y: "finding", dy: 8 } as const;
	return quietParts(
		plot({
			width: Math.min(width, Math.max(columnsPx, longest * LETTER_PX + SIDES_PX)),
			height: findings.length * ROW_PX + TOP_PX + 4,
			marginLeft: SIDES_PX / 2,
			marginRight: SIDES_PX / 2,
			marginTop: TOP_PX,
			marginBottom: 4,
			x: { type: "band", domain: kits, axis: "top", label: null, tickSize: 0 },
			y: { type: "band", domain: findings, axis: null },
			marks: [
				text(findings, {
					y: (finding: string) => finding,
					frameAnchor: "left",
					dy: -14,
					textAnchor: "start",
					text: (finding: string) => finding,
					className: "kind-label",
				}),
				dot(each, { ...place, r: RADIUS_PX, className: "failed-dot" }),
				text(cells, {
					...place,
					text: ({ times }: FailedCell) => shownPlain(times),
					className: "cover-label",
				}),
			],
		}) as SVGElement,
	);
}
