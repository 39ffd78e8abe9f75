import { type LabelPlace, labelPlaces } from "../../format/labelPlaces.ts";
import { LETTER_PX } from "../../format/letterPx.ts";
import { shortened } from "../../format/shortened.ts";
import type { CoverPoint } from "./coverPoint.ts";

/** Where a point of the curve lies, in px. */
export type PxOf = (point: CoverPoint) => { readonly x: number; readonly y: number };

/** Numbers nearer to each other than this, across and down, cannot be read. */
const [ACROSS_PX, DOWN_PX] = [40, 14];

/** Of the points those whose numbers can be written without touching one before. */
export function withRoom(points: readonly CoverPoint[], pxOf: PxOf): CoverPoint[] {
	const kept: { readonly x: number; readonly y: number }[] = [];
	return points.filter((point) => {
		const { x, y } = pxOf(point);
		const touches = kept.some(
			(one) => Math.abs(one.x - x) < ACROSS_PX && Math.abs(one.y - y) < DOWN_PX,
		);
		if (!touches) kept.push({ x, y });
		return !touches;
	});
}

/** The last point of each kind's curve, and where under it the kind's name stands; none where there is only one kind. */
export function kindNames(
	shown: readonly CoverPoint[],
	pxOf: PxOf,
	width: number,
): (CoverPoint & LabelPlace)[] {
	const lasts = shown.filter((point, at) => point.kind !== shown[at + 1]?.kind);
	if (lasts.length === 1) return [];
	const fromRight = lasts
		.toSorted((a, b) => b.kits - a.kits)
		.map((point) => {
			const { x } = pxOf(point);
			const kind = shortened(point.kind, Math.floor(Math.max(x, width - x) / LETTER_PX));
			return { ...point, kind, at: x, wide: kind.length * LETTER_PX };
		});
	const places = labelPlaces(fromRight, width);
	return fromRight.map((point, i) => ({ ...point, ...(places[i] as LabelPlace) }));
}
