import { type LabelPlace, labelPlaces } from "../../format/labelPlaces.ts";
import { LETTER_PX } from "../../format/letterPx.ts";
import { shortened } from "../../format/shortened.ts";
import type { CoverPoint } from "./coverPoint.ts";

/** The last point of each kind's curve, and where under it the kind's name stands; none where there is only one kind. */
export function kindNames(
	shown: readonly CoverPoint[],
	pxOf: (point: CoverPoint) => { readonly x: number },
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
